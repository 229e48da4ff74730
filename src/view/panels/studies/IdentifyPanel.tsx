/** Study: how the trade describes the machine, and how it bends and rolls. */
import { useEffect, useMemo, useRef } from 'react';
import { identifyStudy } from '../../../core/studies';
import { createStudyCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { QuantityField } from './QuantityField';
import { StageSwitch } from './StageSwitch';
import { NumberRows, StudyNotes } from './StudyParts';
import type { StudyBase } from './use-study-base';

const DEGREE = Math.PI / 180;

export function IdentifyPanel({ base }: { readonly base: StudyBase }) {
  const { t, quantity, number } = useSpeech();
  const commands = useCommands();
  const { change, reset, show } = usePlaceCommands(createStudyCommands);
  const set = useApp((s) => s.studies.identify);
  const on = useApp((s) => s.studies.stage?.kind === 'joint');
  const options = useApp((s) => s.optionsOn);
  const { machine } = base.document;
  const padOption =
    machine.parts.find((p) => machine.kinds[p.kind]?.params.builder === 'pad-segment')?.option ?? null;
  const padsOn = padOption !== null && options[padOption] === true;
  const study = useMemo(() => identifyStudy(machine, base.basis, padsOn), [machine, base.basis, padsOn]);
  const { steering_deg, oscillation_deg } = set;
  useEffect(() => {
    if (on) show({ kind: 'joint', steering_deg, oscillation_deg });
  }, [on, steering_deg, oscillation_deg, show]);
  // the light ghost of the rear comes for the picture, and goes with it where it was not there before
  const context = useApp((s) => s.showContext);
  const before = useRef<boolean | null>(null);
  useEffect(
    () => () => {
      if (before.current !== null) commands.setContext(before.current);
    },
    [commands],
  );
  const showJoint = (next: boolean): void => {
    if (next) before.current ??= context;
    commands.setContext(next || before.current === true);
    show(next ? { kind: 'joint', steering_deg, oscillation_deg } : null);
    commands.lookAt('home');
  };
  const { turning } = study;
  return (
    <>
      <p className="study-verdict" data-testid="trade-words">
        {t('studies.trade-words', {
          width: number(study.width_class_in, 'count'),
          drum: t(`studies.drum-type.${study.drum_type}`),
          mass: number(study.mass_class_t, 'count'),
          kind: t(`studies.mass-class.${study.mass_class}`),
        })}
      </p>
      {padOption !== null && (
        <label className="check">
          <input
            type="checkbox"
            checked={padsOn}
            onChange={(event) => commands.setOption(padOption, event.currentTarget.checked)}
          />
          <span>{t('studies.pads-on')}</span>
        </label>
      )}
      <NumberRows
        caption={t('studies.result')}
        rows={[
          {
            name: t('studies.drum-width'),
            value: t('studies.width-value', {
              width: quantity(study.drum_width_m, 'length'),
              inches: study.width_class_in,
            }),
          },
          {
            name: t('studies.operating-mass'),
            value: quantity(study.operating_mass_kg, 'mass', 4),
            id: 'operating-mass',
            si: study.operating_mass_kg,
          },
          {
            name: t('studies.drum-axle-mass'),
            value: t('studies.axle-value', {
              mass: quantity(study.drum_axle_kg, 'mass', 4),
              share: quantity(study.drum_share, 'share', 3),
            }),
          },
          { name: t('studies.rear-axle-mass'), value: quantity(study.rear_axle_kg, 'mass', 4) },
          { name: t('studies.static-linear'), value: quantity(study.static_linear_N_m, 'linear-load') },
          ...(turning === null
            ? []
            : [
                { name: t('studies.steers'), value: `± ${number(turning.steering_deg, 'plain')}°` },
                { name: t('studies.oscillates'), value: `± ${number(turning.oscillation_deg, 'plain')}°` },
                {
                  name: t('studies.turn-radius'),
                  value: quantity(turning.outside_m, 'length'),
                  id: 'turn-radius',
                  si: turning.outside_m,
                },
                { name: t('studies.end-rise'), value: quantity(turning.drum_end_rise_m, 'length', 2) },
              ]),
        ]}
      />
      {study.articulation !== null && (
        <section aria-label={t('studies.joint')}>
          <h3>{t('studies.joint')}</h3>
          <p>{t('studies.joint-text')}</p>
          <StageSwitch
            on={on}
            name={t('studies.joint-stage')}
            note={t('studies.joint-note')}
            onChange={showJoint}
          />
          <QuantityField
            label={t('studies.steering')}
            value={steering_deg * DEGREE}
            min={-study.articulation.steering_limit_deg * DEGREE}
            max={study.articulation.steering_limit_deg * DEGREE}
            step={DEGREE}
            quantity="angle"
            onChange={(next) => change('identify', { steering_deg: next / DEGREE })}
          />
          <QuantityField
            label={t('studies.oscillation')}
            value={oscillation_deg * DEGREE}
            min={-study.articulation.oscillation_limit_deg * DEGREE}
            max={study.articulation.oscillation_limit_deg * DEGREE}
            step={DEGREE}
            quantity="angle"
            onChange={(next) => change('identify', { oscillation_deg: next / DEGREE })}
          />
          <button type="button" className="button" onClick={() => reset('identify')}>
            {t('studies.straight')}
          </button>
        </section>
      )}
      <StudyNotes assumptions={study.assumptions} limits={study.limits} checked="studies.checked.identify" />
    </>
  );
}
