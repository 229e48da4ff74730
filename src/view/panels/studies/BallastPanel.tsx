/** Study: liquid in the drum, as a question of what if. */
import { kindSolids } from '../../../core/document';
import { useMemo } from 'react';
import type { Quantity } from '../../../core/kernel';
import { ballastStudy, drumRoom } from '../../../core/studies';
import { createStudyCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Signal } from '../common/Signal';
import { Plot } from './Plot';
import { QuantityField } from './QuantityField';
import { NumberRows, StudyNotes, UnknownUnbalance } from './StudyParts';
import { type StudyBase, unbalanceOf } from './use-study-base';

const FILLS = Array.from({ length: 21 }, (_, i) => i / 20);

export function BallastPanel({ base }: { readonly base: StudyBase }) {
  const { t, quantity, say } = useSpeech();
  const { change, reset } = usePlaceCommands(createStudyCommands);
  const set = useApp((s) => s.studies.ballast);
  const { machine } = base.document;
  const room = useMemo(() => drumRoom(machine, kindSolids(base.document)), [machine, base.document]);
  const high = unbalanceOf(base, 'high');
  const low = unbalanceOf(base, 'low');
  const study = useMemo(() => {
    if (room === null || high === null || low === null) return null;
    const at = (fill_share: number) =>
      ballastStudy(machine, base.basis, room, {
        ...set,
        fill_share,
        unbalance_high_kgm: high,
        unbalance_low_kgm: low,
      });
    const now = at(set.fill_share);
    return now === null ? null : { now, fills: FILLS.map(at) };
  }, [machine, base.basis, room, high, low, set]);
  if (room === null) return <p className="limit">{t('studies.no-room')}</p>;
  const field = (
    key: 'fill_share' | 'salt_mass_percent' | 'temperature_C',
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
      onChange={(next) => change('ballast', { [key]: next })}
    />
  );
  return (
    <>
      {study?.now.amplitude_loss != null && (
        <p className="study-verdict" data-testid="amplitude-loss" data-si={study.now.amplitude_loss}>
          {t('studies.amplitude-cost', { loss: quantity(study.now.amplitude_loss, 'share', 2) })}
        </p>
      )}
      <Signal word="notice">
        <p>{t('studies.ballast-notice', { name: machine.name })}</p>
      </Signal>
      <section aria-label={t('studies.set')}>
        {field('fill_share', 0, 1, 0.05, 'share')}
        {field('salt_mass_percent', 0, 30, 1, 'percent')}
        {field('temperature_C', -40, 40, 1, 'temperature')}
        <button type="button" className="button" onClick={() => reset('ballast')}>
          {t('studies.reset')}
        </button>
      </section>
      {study === null ? (
        <UnknownUnbalance />
      ) : (
        <>
          {study.now.notes.length > 0 && (
            <ul className="limit">
              {study.now.notes.map((note) => (
                <li key={note.key}>{say(note)}</li>
              ))}
            </ul>
          )}
          <NumberRows
            caption={t('studies.result')}
            rows={[
              { name: t('studies.room'), value: quantity(study.now.room_m3, 'volume', 4) },
              { name: t('studies.fill'), value: quantity(study.now.volume_m3, 'volume', 4) },
              { name: t('studies.density'), value: quantity(study.now.density_kg_m3, 'density') },
              { name: t('studies.freezing'), value: quantity(study.now.freezing_C, 'temperature') },
              {
                name: t('studies.added'),
                value: quantity(study.now.total_kg, 'mass', 4),
                id: 'added',
                si: study.now.total_kg,
              },
              {
                name: t('studies.salt-water'),
                value: `${quantity(study.now.salt_kg, 'mass')} / ${quantity(study.now.water_kg, 'mass', 4)}`,
              },
              {
                name: t('studies.static-linear'),
                value: `${quantity(study.now.linear_before_N_m, 'linear-load')} → ${quantity(study.now.linear_after_N_m, 'linear-load')}`,
              },
              ...(['high', 'low'] as const).map((direction) => ({
                name: t(`studies.amplitude-${direction}`),
                value: `${quantity(study.now.amplitude_before_m[direction], 'length-small', 3)} → ${quantity(study.now.amplitude_after_m?.[direction], 'length-small', 3)}`,
              })),
              { name: t('studies.plugs'), value: String(study.now.plugs) },
            ]}
          />
          <Plot
            title={t('studies.plot.ballast')}
            file="ballast"
            x={{ name: t('studies.fill_share'), key: 'fill_share', quantity: 'share', values: FILLS }}
            y={{ name: t('studies.of-dry'), key: 'share_of_dry', quantity: 'share' }}
            lines={[
              {
                name: t('studies.static-linear'),
                key: 'linear_load',
                values: study.fills.map((f) =>
                  f?.linear_after_N_m == null ? null : f.linear_after_N_m / f.linear_before_N_m,
                ),
              },
              {
                name: t('studies.amplitude'),
                key: 'amplitude',
                values: study.fills.map((f) => (f?.amplitude_loss == null ? null : 1 - f.amplitude_loss)),
              },
            ]}
            marks={[{ at: set.fill_share, name: t('studies.now') }]}
          />
          <Signal word="warning">
            <p>{t('studies.ballast-warning')}</p>
          </Signal>
          <StudyNotes
            assumptions={study.now.assumptions}
            limits={study.now.limits}
            checked="studies.checked.ballast"
          />
        </>
      )}
    </>
  );
}
