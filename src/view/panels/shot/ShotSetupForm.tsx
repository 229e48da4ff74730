/** Everything of a run that may be set. */
import type { BaffleState, ShotSetup, SpinDirection, SpinUpKind } from '../../../store';
import { useCommands, useSpeech } from '../../bind';
import { RangeField } from '../common/RangeField';
import { Segmented } from '../common/Segmented';

export function ShotSetupForm({ setup }: { readonly setup: ShotSetup }) {
  const { t, quantity, number } = useSpeech();
  const commands = useCommands();
  const change = commands.changeDraft;
  return (
    <div className="shot-form">
      <Segmented<SpinDirection>
        legend={t('exciter.direction')}
        fill
        choices={(['high', 'low'] as const).map((value) => ({ value, label: t(`exciter.${value}`) }))}
        value={setup.direction}
        onChange={(direction) => change({ direction })}
      />
      <RangeField
        label={t('exciter.fill')}
        value={setup.fill}
        min={0.05}
        max={0.6}
        step={0.01}
        text={quantity(setup.fill, 'share')}
        onChange={(fill) => change({ fill })}
      />
      <Segmented<SpinUpKind>
        legend={t('shot.spin-up')}
        fill
        choices={[
          { value: 'quadratic', label: t('shot.spin-up-quadratic') },
          { value: 'linear', label: t('shot.spin-up-linear') },
        ]}
        value={setup.spinUp}
        onChange={(spinUp) => change({ spinUp })}
      />
      <RangeField
        label={t('shot.spin-up-time')}
        value={setup.spinUpTime_s}
        min={1}
        max={8}
        step={0.5}
        text={quantity(setup.spinUpTime_s, 'time')}
        onChange={(spinUpTime_s) => change({ spinUpTime_s })}
      />
      <RangeField
        label={t('shot.friction')}
        value={setup.friction}
        min={0.05}
        max={1}
        step={0.05}
        text={number(setup.friction, 'plain', 2)}
        onChange={(friction) => change({ friction })}
      />
      <Segmented<BaffleState>
        legend={t('shot.baffle')}
        fill
        choices={(['fitted', 'mirrored', 'off'] as const).map((value) => ({
          value,
          label: t(`shot.baffle-${value}`),
        }))}
        value={setup.baffle}
        onChange={(baffle) => change({ baffle })}
      />
      <label className="check">
        <input
          type="checkbox"
          checked={setup.gravity}
          onChange={(event) => change({ gravity: event.currentTarget.checked })}
        />
        <span>{t('shot.gravity')}</span>
      </label>
      <label className="shot-seed">
        <span className="range-name">{t('shot.seed')}</span>
        <input
          type="number"
          className="mono"
          min={1}
          max={9999}
          step={1}
          value={setup.seed}
          onChange={(event) => {
            const seed = event.currentTarget.valueAsNumber;
            if (Number.isInteger(seed)) change({ seed: Math.min(9999, Math.max(1, seed)) });
          }}
        />
        <span className="small faint">{t('shot.seed-note')}</span>
      </label>
    </div>
  );
}
