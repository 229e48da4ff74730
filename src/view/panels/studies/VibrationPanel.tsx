/** Study: drum and frame on the soil, in the linear answer and in time. */
import { useDeferredValue, useEffect, useMemo } from 'react';
import { SOILS, vibrationStudy, type VibrationStudy } from '../../../core/studies';
import { createStudyCommands, shakeOf } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Signal } from '../common/Signal';
import { Plot } from './Plot';
import { QuantityField } from './QuantityField';
import { StageSwitch } from './StageSwitch';
import { DirectionChoice, NumberRows, StudyNotes, UnknownUnbalance } from './StudyParts';
import { frequencyOf, type StudyBase, unbalanceOf } from './use-study-base';

const DEGREE = Math.PI / 180;

export function VibrationPanel({ base }: { readonly base: StudyBase }) {
  const { t } = useSpeech();
  const { change, reset } = usePlaceCommands(createStudyCommands);
  const set = useApp((s) => s.studies.vibration);
  // the motion in time takes longer than a slider's step: the panel stays ahead of it
  const used = useDeferredValue(set);
  const unbalance_kgm = unbalanceOf(base, used.direction);
  const frequency_Hz = used.frequency_Hz ?? frequencyOf(base, used.direction);
  const hardness_IRHD = used.hardness_IRHD ?? base.basis.isolation.hardness_IRHD;
  const study = useMemo(
    () =>
      unbalance_kgm === null
        ? null
        : vibrationStudy(base.basis, {
            unbalance_kgm,
            frequency_Hz,
            hardness_IRHD,
            soil_stiffness_N_m: used.soil_stiffness_N_m,
            soil_damping_Ns_m: used.soil_damping_Ns_m,
          }),
    [base.basis, unbalance_kgm, frequency_Hz, hardness_IRHD, used.soil_stiffness_N_m, used.soil_damping_Ns_m],
  );
  const soil = SOILS.find(
    (each) => each.stiffness_N_m === set.soil_stiffness_N_m && each.damping_Ns_m === set.soil_damping_Ns_m,
  );
  return (
    <>
      {study !== null && <VibrationPicture study={study} />}
      <section aria-label={t('studies.set')}>
        <DirectionChoice value={set.direction} onChange={(direction) => change('vibration', { direction })} />
        <label className="study-select">
          <span>{t('studies.ground')}</span>
          <select
            value={soil?.id ?? 'own'}
            onChange={(event) => {
              const next = SOILS.find((each) => each.id === event.currentTarget.value);
              if (next !== undefined)
                change('vibration', {
                  soil_stiffness_N_m: next.stiffness_N_m,
                  soil_damping_Ns_m: next.damping_Ns_m,
                });
            }}
          >
            {SOILS.map((each) => (
              <option key={each.id} value={each.id}>
                {t(`studies.soil.${each.id}`)}
              </option>
            ))}
            {soil === undefined && <option value="own">{t('studies.soil.own')}</option>}
          </select>
        </label>
        <QuantityField
          label={t('studies.frequency')}
          value={set.frequency_Hz ?? frequencyOf(base, set.direction)}
          min={5}
          max={50}
          step={0.5}
          quantity="frequency"
          onChange={(next) => change('vibration', { frequency_Hz: next })}
        />
        <QuantityField
          label={t('studies.soil-stiffness')}
          value={set.soil_stiffness_N_m}
          min={0}
          max={200e6}
          step={1e6}
          quantity="stiffness"
          figures={6}
          onChange={(next) => change('vibration', { soil_stiffness_N_m: next })}
        />
        <QuantityField
          label={t('studies.soil-damping')}
          value={set.soil_damping_Ns_m}
          min={0}
          max={400e3}
          step={5e3}
          quantity="damping"
          onChange={(next) => change('vibration', { soil_damping_Ns_m: next })}
        />
        <QuantityField
          label={t('studies.hardness')}
          value={set.hardness_IRHD ?? base.basis.isolation.hardness_IRHD}
          min={40}
          max={75}
          step={1}
          quantity="hardness"
          onChange={(next) => change('vibration', { hardness_IRHD: next })}
        />
        <button type="button" className="button" onClick={() => reset('vibration')}>
          {t('studies.reset')}
        </button>
      </section>
      {unbalance_kgm === null ? (
        <UnknownUnbalance />
      ) : study === null ? (
        <p className="limit">{t('studies.refused')}</p>
      ) : (
        <VibrationResult study={study} unbalance_kgm={unbalance_kgm} />
      )}
    </>
  );
}

/** In which way it runs, and the picture on the stage. */
function VibrationPicture({ study }: { readonly study: VibrationStudy }) {
  const { t, quantity } = useSpeech();
  const { show } = usePlaceCommands(createStudyCommands);
  const on = useApp((s) => s.studies.stage?.kind === 'shake');
  const shake = useMemo(() => shakeOf(study), [study]);
  useEffect(() => {
    if (on) show(shake.stage);
  }, [on, shake, show]);
  const { linear, time } = study;
  return (
    <>
      <p className="study-verdict" role="status">
        {time === null ? t('studies.regime.hung') : t(`studies.regime.${time.regime}`)}{' '}
        {t('studies.moves', {
          drum: quantity((time ?? linear).drum_amplitude_m, 'length-small', 3),
          frame: quantity((time ?? linear).frame_amplitude_m, 'length-small', 2),
        })}
      </p>
      <StageSwitch
        on={on}
        name={t('studies.shake-stage')}
        note={t('studies.shake-scale', { times: shake.times })}
        onChange={(next) => show(next ? shake.stage : null)}
      />
    </>
  );
}

function VibrationResult(props: { readonly study: VibrationStudy; readonly unbalance_kgm: number }) {
  const { study, unbalance_kgm } = props;
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { linear, time, natural, sweep, input } = study;
  const lost = linear.contact === 'lost';
  const regime = time?.regime ?? null;
  const jumps = regime === 'double-jump' || regime === 'long-repeat' || regime === 'irregular';
  const wide = [
    ...(time === null || natural.lower_Hz === 0
      ? []
      : [{ at: natural.lower_Hz, name: t('studies.natural-lower') }]),
    { at: natural.upper_Hz, name: t(time === null ? 'studies.natural-free' : 'studies.natural-upper') },
    { at: input.frequency_Hz, name: t('studies.now') },
  ];
  const frequency = {
    name: t('studies.frequency'),
    key: 'frequency_Hz',
    quantity: 'frequency' as const,
    values: sweep.map((point) => point.frequency_Hz),
  };
  const nowhere = { name: t('studies.void'), at: sweep.map((point) => !point.holds) };
  return (
    <>
      <section aria-label={t('studies.result')}>
        {lost && (
          <p className="limit" data-testid="linear-void">
            {t('studies.linear-void')}
          </p>
        )}
        {jumps && (
          <Signal word="caution">
            <p>{t('studies.jump-caution')}</p>
          </Signal>
        )}
        <table className="study-table" aria-label={t('studies.result')}>
          <thead>
            <tr>
              <td />
              <th scope="col">{t('studies.in-time')}</th>
              <th scope="col">{t(lost ? 'studies.linear-only' : 'studies.linear')}</th>
            </tr>
          </thead>
          <tbody>
            {(
              [
                ['drum-amplitude', time?.drum_amplitude_m, linear.drum_amplitude_m, 'length-small', 3],
                ['frame-amplitude', time?.frame_amplitude_m, linear.frame_amplitude_m, 'length-small', 3],
                ['drum-phase', scaled(time?.drum_phase_deg), scaled(linear.drum_phase_deg), 'angle', 3],
                [
                  'soil-force',
                  time?.soil_force_max_N,
                  sum(linear.static_load_N, linear.soil_force_amplitude_N),
                  'force-large',
                  3,
                ],
                ['contact-share', time?.contact_share, linear.contact === 'kept' ? 1 : null, 'share', 3],
                ['half-share', rounded(time?.half_frequency_share), null, 'share', 3],
                ['exciter-power', time?.exciter_power_W, null, 'power', 3],
              ] as const
            ).map(([word, inTime, ofLinear, kind, figures]) => (
              <tr key={word}>
                <th scope="row">{t(`studies.${word}`)}</th>
                <td className="mono number" data-testid={`${word}-time`} data-si={inTime ?? undefined}>
                  {quantity(inTime, kind, figures)}
                </td>
                <td
                  className={lost ? 'mono number faint' : 'mono number'}
                  data-testid={`${word}-linear`}
                  data-si={ofLinear ?? undefined}
                >
                  {quantity(ofLinear, kind, figures)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        <NumberRows
          caption={t('studies.inputs-used')}
          rows={[
            { name: t('studies.unbalance'), value: quantity(unbalance_kgm, 'unbalance', 4) },
            { name: t('studies.nominal'), value: quantity(linear.nominal_amplitude_m, 'length-small', 3) },
            { name: t('studies.drum-mass'), value: quantity(input.drum_mass_kg, 'mass', 4) },
            { name: t('studies.frame-mass'), value: quantity(input.frame_mass_kg, 'mass', 4) },
            {
              name: t('studies.mount-stiffness'),
              value: quantity(input.mount_stiffness_N_m, 'stiffness', 4),
            },
            { name: t('studies.static-load'), value: quantity(linear.static_load_N, 'force-large', 3) },
            { name: t('studies.natural-lower-long'), value: quantity(natural.lower_Hz, 'frequency', 3) },
            { name: t('studies.natural-upper-long'), value: quantity(natural.upper_Hz, 'frequency', 3) },
          ]}
        />
      </section>
      <Plot
        title={t('studies.plot.amplitude')}
        file="vibration-amplitude"
        x={frequency}
        y={{
          name: t('studies.amplitude'),
          key: 'amplitude_m',
          quantity: 'length-small',
          log: true,
          low: 1e-5,
        }}
        lines={[
          { name: t('studies.drum'), key: 'drum_m', values: sweep.map((p) => p.drum_m) },
          { name: t('studies.frame'), key: 'frame_m', values: sweep.map((p) => p.frame_m) },
        ]}
        marks={wide}
        void={nowhere}
      />
      <Plot
        title={t('studies.plot.phase')}
        file="vibration-phase"
        x={frequency}
        y={{ name: t('studies.phase'), key: 'phase_rad', quantity: 'angle' }}
        lines={[
          { name: t('studies.drum'), key: 'drum_rad', values: lagging(sweep.map((p) => p.drum_phase_deg)) },
          {
            name: t('studies.frame'),
            key: 'frame_rad',
            values: lagging(sweep.map((p) => p.frame_phase_deg)),
          },
        ]}
        marks={wide}
        void={nowhere}
      />
      <Plot
        title={t('studies.plot.soil-force')}
        file="vibration-ground-force"
        x={frequency}
        y={{ name: t('studies.force'), key: 'force_N', quantity: 'force-large' }}
        lines={[
          {
            name: t('studies.soil-force-swing'),
            key: 'soil_force_N',
            values: sweep.map((p) => p.soil_force_N),
          },
        ]}
        levels={[{ at: linear.static_load_N, name: t('studies.static-load') }]}
        marks={wide}
        void={nowhere}
      />
      {time !== null && (
        <>
          <Plot
            title={t('studies.plot.time')}
            file="vibration-time"
            x={{ name: t('studies.time'), key: 'time_s', quantity: 'time', values: time.trace.time_s }}
            y={{ name: t('studies.down'), key: 'down_m', quantity: 'length-small' }}
            lines={[
              { name: t('studies.drum'), key: 'drum_m', values: time.trace.drum_m },
              { name: t('studies.frame'), key: 'frame_m', values: time.trace.frame_m },
            ]}
          />
          <Plot
            title={t('studies.plot.force-time')}
            file="vibration-force-time"
            x={{ name: t('studies.time'), key: 'time_s', quantity: 'time', values: time.trace.time_s }}
            y={{ name: t('studies.force'), key: 'force_N', quantity: 'force-large' }}
            lines={[
              { name: t('studies.ground-force'), key: 'soil_force_N', values: time.trace.soil_force_N },
            ]}
            levels={[{ at: linear.static_load_N, name: t('studies.static-load') }]}
          />
        </>
      )}
      <StudyNotes assumptions={study.assumptions} limits={study.limits} checked="studies.checked.vibration" />
    </>
  );
}

const scaled = (deg: number | null | undefined): number | null =>
  deg === null || deg === undefined ? null : deg * DEGREE;

/** What is less than a thousandth is rounding. */
const rounded = (share: number | null | undefined): number | null =>
  share === null || share === undefined ? null : share < 1e-3 ? 0 : share;

const sum = (a: number, b: number | null): number | null => (b === null ? null : a + b);

/** Degrees to radians as one unbroken lag: a frame that has gone round past -180 degrees goes on to -360. */
function lagging(degrees: readonly (number | null)[]): (number | null)[] {
  let turns = 0;
  let last: number | null = null;
  return degrees.map((deg) => {
    if (deg === null) return null;
    if (last !== null && deg - last > 180) turns--;
    if (last !== null && deg - last < -180) turns++;
    last = deg;
    return (deg + 360 * turns) * DEGREE;
  });
}
