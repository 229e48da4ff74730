/** Study: what the drum does to the ground, and what is guidance only. */
import { useMemo } from 'react';
import type { Quantity } from '../../../core/kernel';
import {
  ASPHALT_BLOWS_PER_FOOT,
  CLAIMED_DEPTH_m,
  compactionStudy,
  FADED_SHARE,
  GUIDANCE,
  TYPICAL_LIFT_m,
} from '../../../core/studies';
import { createStudyCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Plot } from './Plot';
import { QuantityField } from './QuantityField';
import { DirectionChoice, NumberRows, StudyNotes, UnknownUnbalance } from './StudyParts';
import { frequencyOf, type StudyBase } from './use-study-base';

export function CompactionPanel({ base }: { readonly base: StudyBase }) {
  const { t, quantity, number } = useSpeech();
  const { change, reset } = usePlaceCommands(createStudyCommands);
  const set = useApp((s) => s.studies.compaction);
  const force_N = base.exciter?.[set.direction].value?.force_N ?? null;
  const frequency_Hz = frequencyOf(base, set.direction);
  const { machine } = base.document;
  const study = useMemo(
    () => (force_N === null ? null : compactionStudy(machine, base.basis, { ...set, force_N, frequency_Hz })),
    [machine, base.basis, set, force_N, frequency_Hz],
  );
  const field = (
    key: 'speed_m_s' | 'soil_modulus_Pa' | 'soil_density_kg_m3' | 'lift_m' | 'pad_sink_m',
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
      onChange={(next) => change('compaction', { [key]: next })}
    />
  );
  return (
    <>
      {study !== null && (
        <p className="study-verdict" role="status">
          {t('studies.compaction-verdict', {
            linear: quantity(study.static_linear_N_m, 'linear-load'),
            foot: number(study.impacts.per_foot, 'plain'),
          })}
        </p>
      )}
      <section aria-label={t('studies.set')}>
        <DirectionChoice
          value={set.direction}
          onChange={(direction) => change('compaction', { direction })}
        />
        {field('speed_m_s', 0.3, 3, 0.05, 'speed')}
        {field('lift_m', 0.1, 1, 0.05, 'length')}
        {field('soil_modulus_Pa', 5e6, 200e6, 1e6, 'stress')}
        {field('soil_density_kg_m3', 1400, 2300, 50, 'density')}
        {field('pad_sink_m', 0, 0.04, 0.001, 'length-small')}
        <button type="button" className="button" onClick={() => reset('compaction')}>
          {t('studies.reset')}
        </button>
      </section>
      {study === null ? (
        force_N === null ? (
          <UnknownUnbalance />
        ) : (
          <p className="limit">{t('studies.refused')}</p>
        )
      ) : (
        <>
          <NumberRows
            caption={t('studies.result')}
            rows={[
              {
                name: t('studies.static-linear'),
                value: quantity(study.static_linear_N_m, 'linear-load'),
                id: 'static-linear',
                si: study.static_linear_N_m,
              },
              {
                name: t('studies.total-force'),
                value: quantity(study.total_force_N, 'force-large'),
                id: 'total-force',
                si: study.total_force_N,
              },
              { name: t('studies.total-linear'), value: quantity(study.total_linear_N_m, 'linear-load') },
              {
                name: t('studies.spacing'),
                value: quantity(study.impacts.spacing_m, 'length-small', 3),
                id: 'spacing',
                si: study.impacts.spacing_m,
              },
              {
                name: t('studies.blows'),
                value: t('studies.blows-value', {
                  metre: number(study.impacts.per_metre, 'plain'),
                  foot: number(study.impacts.per_foot, 'plain'),
                }),
              },
              { name: t('studies.contact-width'), value: quantity(study.contact_width_m, 'length-small', 2) },
              {
                name: t('studies.contact-smooth'),
                value: quantity(study.contact_pressure_Pa, 'pressure-soil', 2),
              },
              ...(study.pads === null
                ? []
                : [
                    {
                      name: t('studies.contact-padded', { count: study.pads.in_contact }),
                      value: quantity(study.pads.static_Pa, 'pressure-soil', 2),
                    },
                  ]),
              {
                name: t('studies.at-lift', { depth: quantity(set.lift_m, 'length') }),
                value: t('studies.two-stresses', {
                  standing: quantity(study.at_lift.strip_static_Pa, 'pressure-soil'),
                  total: quantity(study.at_lift.strip_total_Pa, 'pressure-soil'),
                }),
              },
            ]}
          />
          <section aria-label={t('studies.blows')}>
            <h3>{t('studies.blows-soil')}</h3>
            <p>{t('studies.blows-soil-text')}</p>
            <h3>{t('studies.blows-asphalt')}</h3>
            <p>
              {t('studies.blows-asphalt-text', {
                from: ASPHALT_BLOWS_PER_FOOT[0],
                to: ASPHALT_BLOWS_PER_FOOT[1],
              })}
            </p>
          </section>
          <Plot
            title={t('studies.plot.depth')}
            file="compaction-depth"
            downwards
            x={{
              name: t('studies.depth'),
              key: 'depth_m',
              quantity: 'length',
              values: study.depths.map((d) => d.depth_m),
            }}
            y={{
              name: t('studies.stress'),
              key: 'stress_Pa',
              quantity: 'pressure-soil',
              log: true,
              low: 1e3,
            }}
            lines={[
              {
                name: t('studies.line-static'),
                key: 'line_static_Pa',
                values: study.depths.map((d) => d.line_static_Pa),
              },
              {
                name: t('studies.strip-static'),
                key: 'strip_static_Pa',
                values: study.depths.map((d) => d.strip_static_Pa),
              },
              {
                name: t('studies.line-total'),
                key: 'line_total_Pa',
                values: study.depths.map((d) => d.line_total_Pa),
              },
              {
                name: t('studies.strip-total'),
                key: 'strip_total_Pa',
                values: study.depths.map((d) => d.strip_total_Pa),
              },
              {
                name: t('studies.own-weight'),
                key: 'own_weight_Pa',
                values: study.depths.map((d) => d.own_weight_Pa),
              },
            ]}
            marks={[{ at: set.lift_m, name: t('studies.lift_m') }]}
          />
          <section aria-label={t('studies.claims')}>
            <h3>{t('studies.claims')}</h3>
            <p>
              {t('studies.claims-text', {
                claim: quantity(CLAIMED_DEPTH_m, 'length', 2),
                stress: quantity(study.at_claim.line_total_Pa, 'pressure-soil', 2),
                own: quantity(study.at_claim.own_weight_Pa, 'pressure-soil', 2),
                standing: quantity(study.fade_static_m, 'length', 2),
                total: quantity(study.fade_total_m, 'length', 2),
                share: quantity(FADED_SHARE, 'share'),
              })}
            </p>
            <p className="limit">{t('studies.claims-limit')}</p>
          </section>
          <section aria-label={t('studies.guidance')}>
            <h3>{t('studies.guidance')}</h3>
            <p>
              {t('studies.guidance-lift', {
                from: quantity(TYPICAL_LIFT_m[0], 'length'),
                to: quantity(TYPICAL_LIFT_m[1], 'length'),
              })}
            </p>
            <table className="study-table">
              <thead>
                <tr>
                  <th scope="col">{t('studies.roller')}</th>
                  <th scope="col">{t('studies.lift_m')}</th>
                  <th scope="col">{t('studies.passes')}</th>
                </tr>
              </thead>
              <tbody>
                {GUIDANCE.map((row) => (
                  <tr key={row.roller}>
                    <th scope="row">{t(`studies.roller.${row.roller}`)}</th>
                    <td className="mono">{`${number(row.lift_from_m, 'length', 2)}–${quantity(row.lift_to_m, 'length', 2)}`}</td>
                    <td className="mono">{`${row.passes[0]}–${row.passes[1]}`}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p className="small faint">{t('studies.guidance-source')}</p>
          </section>
          <StudyNotes
            assumptions={study.assumptions}
            limits={study.limits}
            checked="studies.checked.compaction"
          />
        </>
      )}
    </>
  );
}
