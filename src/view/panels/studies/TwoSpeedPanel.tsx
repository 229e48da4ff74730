/** Study: two-speed traction on a slope, with the circuit and a worked example. */
import { useMemo } from 'react';
import type { Quantity } from '../../../core/kernel';
import {
  type Combination,
  GROUNDS,
  HEARD_DRUM_SHARE,
  twoSpeedStudy,
  WORKED_EXAMPLE,
  workedExample,
} from '../../../core/studies';
import { pullPerPressure } from '../../../core/mechanics';
import { createStudyCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Circuit } from './Circuit';
import { Plot } from './Plot';
import { QuantityField } from './QuantityField';
import { NumberRows, StudyNotes } from './StudyParts';
import type { StudyBase } from './use-study-base';

export function TwoSpeedPanel({ base }: { readonly base: StudyBase }) {
  const { t, quantity } = useSpeech();
  const { change, reset } = usePlaceCommands(createStudyCommands);
  const set = useApp((s) => s.studies['two-speed']);
  const { machine } = base.document;
  const relief_Pa = set.relief_Pa ?? machine.drive?.relief_Pa ?? 0;
  const study = useMemo(
    () => (relief_Pa > 0 ? twoSpeedStudy(machine, { ...set, relief_Pa }) : null),
    [machine, set, relief_Pa],
  );
  if (study === null) return <p className="limit">{t('studies.no-drive')}</p>;
  const now = study.combinations.find(
    (each) => each.drum_range === set.drum_range && each.axle_range === set.axle_range,
  )!;
  const ground = GROUNDS.find((each) => each.id === set.ground);
  const field = (
    key: 'grade_percent' | 'drum_adhesion' | 'axle_adhesion' | 'rolling_resistance_N_per_N' | 'speed_m_s',
    min: number,
    max: number,
    step: number,
    kind: Quantity,
  ) => (
    <QuantityField
      label={t(`studies.${key}`)}
      value={set[key]}
      min={min}
      max={max}
      step={step}
      quantity={kind}
      onChange={(next) => change('two-speed', { [key]: next })}
    />
  );
  return (
    <>
      <p className="study-verdict" role="status">
        {t('studies.way', {
          drum: t(`studies.range-${now.drum_range}`),
          axle: t(`studies.range-${now.axle_range}`),
        })}{' '}
        {outcome(now)}
      </p>
      <section aria-label={t('studies.set')}>
        {field('grade_percent', 0, 60, 1, 'percent')}
        <label className="study-select">
          <span>{t('studies.ground')}</span>
          <select
            value={set.ground}
            onChange={(event) => {
              const next = GROUNDS.find((each) => each.id === event.currentTarget.value);
              if (next !== undefined)
                change('two-speed', {
                  ground: next.id,
                  drum_adhesion: next.drum,
                  axle_adhesion: next.tyre,
                  rolling_resistance_N_per_N: next.rolling_resistance,
                });
            }}
          >
            {GROUNDS.map((each) => (
              <option key={each.id} value={each.id}>
                {t(`studies.ground.${each.id}`)}
              </option>
            ))}
          </select>
        </label>
        {ground !== undefined && (
          <p className="small faint">
            {t('studies.adhesion-span', {
              tyre_low: ground.tyre_span[0],
              tyre_high: ground.tyre_span[1],
              drum_low: ground.drum_span[0],
              drum_high: ground.drum_span[1],
            })}
          </p>
        )}
        {field('drum_adhesion', 0.05, 1, 0.01, 'plain')}
        {field('axle_adhesion', 0.05, 1, 0.01, 'plain')}
        {field('rolling_resistance_N_per_N', 0, 0.2, 0.005, 'share')}
        <QuantityField
          label={t('studies.relief')}
          value={relief_Pa}
          min={5e6}
          max={50e6}
          step={5e5}
          quantity="pressure"
          onChange={(next) => change('two-speed', { relief_Pa: next })}
        />
        {field('speed_m_s', 0.1, 3.5, 0.05, 'speed')}
        <button type="button" className="button" onClick={() => reset('two-speed')}>
          {t('studies.reset')}
        </button>
      </section>
      <section aria-label={t('studies.result')}>
        <h3>{t('studies.four-ways')}</h3>
        <fieldset className="four-ways">
          <legend className="visually-hidden">{t('studies.four-ways')}</legend>
          {study.combinations.map((each) => {
            const ways = `${each.drum_range}-${each.axle_range}`;
            return (
              <label key={ways} className={each === now ? 'now' : ''}>
                <input
                  type="radio"
                  name="combination"
                  checked={each === now}
                  onChange={() =>
                    change('two-speed', { drum_range: each.drum_range, axle_range: each.axle_range })
                  }
                />
                <span>
                  <b>
                    {t('studies.way', {
                      drum: t(`studies.range-${each.drum_range}`),
                      axle: t(`studies.range-${each.axle_range}`),
                    })}
                  </b>
                  <b>{outcome(each)}</b>
                  <span className="small">
                    {t('studies.way-needs')}{' '}
                    <span
                      className="mono"
                      data-testid={`needs-${ways}`}
                      data-si={each.traction.pressure_needed_Pa}
                    >
                      {quantity(each.traction.pressure_needed_Pa, 'pressure')}
                    </span>
                    {' · '}
                    {t('studies.way-slips', {
                      drum: quantity(each.drum_slip_Pa, 'pressure'),
                      axle: quantity(each.axle_slip_Pa, 'pressure'),
                    })}
                    {' · '}
                    {t('studies.way-more', {
                      share: quantity(each.traction.drum_share, 'share', 3),
                      speed: quantity(each.top_speed_m_s, 'speed'),
                    })}
                  </span>
                </span>
              </label>
            );
          })}
        </fieldset>
        <p>{t('studies.relief-at', { pressure: quantity(relief_Pa, 'pressure') })}</p>
      </section>
      <Circuit study={study} now={now} relief_Pa={relief_Pa} />
      <NumberRows
        caption={t('studies.result')}
        rows={[
          {
            name: t('studies.pull-needed'),
            value: quantity(now.traction.pull_needed_N, 'force-large', 3),
            id: 'pull-needed',
            si: now.traction.pull_needed_N,
          },
          { name: t('studies.drum-pull'), value: quantity(now.traction.drum_pull_N, 'force-large', 3) },
          { name: t('studies.axle-pull'), value: quantity(now.traction.axle_pull_N, 'force-large', 3) },
          {
            name: t('studies.pull-available'),
            value: quantity(now.traction.pull_available_N, 'force-large', 3),
          },
          { name: t('studies.speed-driven'), value: quantity(now.speed_m_s, 'speed') },
        ]}
      />
      <PullPlot
        now={now}
        relief_Pa={relief_Pa}
        drumPer={pullPerPressure(study.drum, now.drum_range)}
        axlePer={pullPerPressure(study.axle, now.axle_range)}
      />
      <WorkedExample />
      <StudyNotes assumptions={study.assumptions} limits={study.limits} checked="studies.checked.two-speed" />
    </>
  );

  function outcome({ traction }: Combination): string {
    if (traction.climbs) return t('studies.climbs');
    return traction.limit === 'relief'
      ? t('studies.stops-relief')
      : t(`studies.stops-${traction.slips_first}`);
  }
}

interface PullProps {
  readonly now: Combination;
  readonly relief_Pa: number;
  readonly drumPer: number;
  readonly axlePer: number;
}

/** Pull of both ends as pressure rises, up to relief: the end that spins holds the pressure where it is. */
function PullPlot({ now, relief_Pa, drumPer, axlePer }: PullProps) {
  const { t } = useSpeech();
  const most = relief_Pa * 1.1;
  const pressures = Array.from({ length: 56 }, (_, i) => (most * i) / 55);
  const top = Math.min(now.traction.slip_pressure_Pa, relief_Pa);
  const rising = (per: number) => pressures.map((Pa) => (Pa <= top ? per * Pa : null));
  return (
    <Plot
      title={t('studies.plot.pull')}
      file="two-speed-pull"
      x={{ name: t('studies.pressure'), key: 'pressure_Pa', quantity: 'pressure', values: pressures }}
      y={{ name: t('studies.pull'), key: 'pull_N', quantity: 'force-large' }}
      lines={[
        { name: t('studies.drum-pull'), key: 'drum_N', values: rising(drumPer) },
        { name: t('studies.axle-pull'), key: 'axle_N', values: rising(axlePer) },
        { name: t('studies.both-pull'), key: 'both_N', values: rising(drumPer + axlePer) },
      ]}
      levels={[{ at: now.traction.pull_needed_N, name: t('studies.pull-needed') }]}
      marks={[
        { at: now.drum_slip_Pa, name: t('studies.drum-slips') },
        { at: now.axle_slip_Pa, name: t('studies.axle-slips') },
        { at: relief_Pa, name: t('studies.relief') },
      ]}
    />
  );
}

function WorkedExample() {
  const { t, quantity, number } = useSpeech();
  const example = workedExample();
  const p = (Pa: number) => quantity(Pa, 'pressure', 4);
  return (
    <section className="worked" aria-label={t('studies.example')}>
      <h3>{t('studies.example')}</h3>
      <p>
        {t('studies.example-given', {
          low: p(WORKED_EXAMPLE.pressure_low_Pa),
          slip: p(WORKED_EXAMPLE.slip_low_Pa),
          high: p(WORKED_EXAMPLE.pressure_high_Pa),
        })}
      </p>
      <NumberRows
        caption={t('studies.example')}
        rows={[
          {
            name: t('studies.example-ratio'),
            value: number(example.displacement_ratio, 'plain', 3),
            id: 'example-ratio',
            si: example.displacement_ratio,
          },
          {
            name: t('studies.example-shares'),
            value: `${number(example.changed_share, 'share', 3)} / ${quantity(example.other_share, 'share', 3)}`,
            id: 'example-shares',
          },
          { name: t('studies.example-slip-high'), value: p(example.slip_high_Pa) },
          {
            name: t('studies.example-heard'),
            value: `${number(HEARD_DRUM_SHARE, 'share')} / ${quantity(1 - HEARD_DRUM_SHARE, 'share')}`,
          },
        ]}
      />
      <p className="small">{t('studies.example-why')}</p>
    </section>
  );
}
