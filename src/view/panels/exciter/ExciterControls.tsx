/** What can be set on the exciter: both speeds, fill, baffle. */
import type { ExciterStudy } from '../../../core/studies';
import { useApp, useCommands, useSpeech } from '../../bind';
import { RangeField } from '../common/RangeField';

const DEGREE = Math.PI / 180;

export function ExciterControls({ study }: { readonly study: ExciterStudy }) {
  const { t, quantity, number } = useSpeech();
  const commands = useCommands();
  const exciter = useApp((s) => s.exciter);
  const { inputs, own } = study;
  const changed =
    [exciter.frequencyHigh_Hz, exciter.frequencyLow_Hz, exciter.fill, exciter.bafflePsi_deg].some(
      (value) => value !== null,
    ) || !exciter.baffleOn;
  const speed = (Hz: number): string =>
    t('exciter.speed-value', {
      frequency: quantity(Hz, 'frequency'),
      vpm: number(Hz * 60, 'count', 4),
    });
  return (
    <section aria-labelledby="exciter-set">
      <h3 id="exciter-set">{t('exciter.set')}</h3>
      <RangeField
        label={t('exciter.speed-high')}
        value={inputs.frequencyHigh_Hz}
        min={15}
        max={45}
        step={0.5}
        text={speed(inputs.frequencyHigh_Hz)}
        onChange={(frequencyHigh_Hz) => commands.setExciter({ frequencyHigh_Hz })}
      />
      <RangeField
        label={t('exciter.speed-low')}
        value={inputs.frequencyLow_Hz}
        min={15}
        max={45}
        step={0.5}
        text={speed(inputs.frequencyLow_Hz)}
        onChange={(frequencyLow_Hz) => commands.setExciter({ frequencyLow_Hz })}
      />
      <RangeField
        label={t('exciter.fill')}
        value={inputs.fill}
        min={0}
        max={1}
        step={0.01}
        text={t('exciter.fill-value', {
          share: quantity(inputs.fill, 'share'),
          mass: quantity(study.shotMass_kg, 'mass'),
        })}
        onChange={(fill) => commands.setExciter({ fill })}
      />
      <label className="check">
        <input
          type="checkbox"
          checked={exciter.baffleOn}
          onChange={(event) => commands.setExciter({ baffleOn: event.currentTarget.checked })}
        />
        <span>{t('exciter.baffle-on')}</span>
      </label>
      <RangeField
        label={t('exciter.baffle')}
        value={inputs.bafflePsi_deg}
        min={-180}
        max={180}
        step={1}
        disabled={!exciter.baffleOn}
        text={quantity(inputs.bafflePsi_deg * DEGREE, 'angle')}
        onChange={(bafflePsi_deg) => commands.setExciter({ bafflePsi_deg })}
      />
      <button type="button" className="button" disabled={!changed} onClick={commands.resetExciter}>
        {t('exciter.reset', {
          high: number(own.frequencyHigh_Hz, 'frequency'),
          low: number(own.frequencyLow_Hz, 'frequency'),
          fill: quantity(own.fill, 'share'),
          psi: quantity(own.bafflePsi_deg * DEGREE, 'angle'),
        })}
      </button>
    </section>
  );
}
