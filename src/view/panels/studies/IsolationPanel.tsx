/** Study: what the isolators let through, and which parts are on which side. */
import { useDeferredValue, useMemo } from 'react';
import { type EndIsolation, isolationSides, isolationStudy } from '../../../core/studies';
import { createStudyCommands, type IsolatorCondition } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { partName } from '../common/names';
import { Plot } from './Plot';
import { QuantityField } from './QuantityField';
import { StageSwitch } from './StageSwitch';
import { DirectionChoice, StudyNotes, UnknownUnbalance } from './StudyParts';
import { frequencyOf, type StudyBase, unbalanceOf } from './use-study-base';
import { SOILS } from '../../../core/studies';

const CONDITIONS: readonly IsolatorCondition[] = ['sound', 'cracked', 'missing'];
/** The drum stands on loose fill here: the linear answer holds, so that the isolators alone are compared. */
const LOOSE = SOILS[1];

export function IsolationPanel({ base }: { readonly base: StudyBase }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { change, reset, show } = usePlaceCommands(createStudyCommands);
  const commands = useCommands();
  const set = useApp((s) => s.studies.isolation);
  const on = useApp((s) => s.studies.stage?.kind === 'sides');
  const used = useDeferredValue(set);
  const own = base.basis.isolation.hardness_IRHD;
  const unbalance_kgm = unbalanceOf(base, used.direction);
  const frequency_Hz = frequencyOf(base, used.direction);
  const study = useMemo(
    () =>
      unbalance_kgm === null
        ? null
        : isolationStudy(base.basis, {
            unbalance_kgm,
            frequency_Hz,
            soil_stiffness_N_m: LOOSE.stiffness_N_m,
            soil_damping_Ns_m: LOOSE.damping_Ns_m,
            hardness_left_IRHD: used.hardness_left_IRHD ?? own,
            hardness_right_IRHD: used.hardness_right_IRHD ?? own,
            states: used.conditions,
            crack_share: used.crack_share,
            hours_a_day: used.hours_a_day,
          }),
    [base.basis, own, unbalance_kgm, frequency_Hz, used],
  );
  const { machine } = base.document;
  const sides = useMemo(() => isolationSides(machine), [machine]);
  return (
    <>
      {study !== null && (
        <p className="study-verdict" role="status">
          {t('studies.passes-on', {
            left: quantity(study.ends[0]?.transmissibility, 'share', 2),
            right: quantity(study.ends[1]?.transmissibility, 'share', 2),
          })}
        </p>
      )}
      <section aria-label={t('studies.sides')}>
        <StageSwitch
          on={on}
          name={t('studies.sides-stage')}
          note={t('studies.sides-count', {
            inside: sides.inside.length,
            isolators: sides.isolators.length,
            outside: sides.outside.length,
          })}
          onChange={(next) => show(next ? { kind: 'sides' } : null)}
        />
        <ul className="sides-key">
          {(['inside', 'isolators', 'outside'] as const).map((side) => (
            <li key={side}>
              <span className={`side-swatch ${side}`} aria-hidden="true" />
              <span>{t(`studies.side.${side}`)}</span>
            </li>
          ))}
        </ul>
        <details>
          <summary>{t('studies.side-list')}</summary>
          {(['inside', 'isolators', 'outside'] as const).map((side) => (
            <div key={side}>
              <h4>{t(`studies.side-name.${side}`)}</h4>
              <p className="small">{names(sides[side])}</p>
            </div>
          ))}
        </details>
      </section>
      <section aria-label={t('studies.set')}>
        <DirectionChoice value={set.direction} onChange={(direction) => change('isolation', { direction })} />
        {(['left', 'right'] as const).map((end) => (
          <QuantityField
            key={end}
            label={t(`studies.hardness-${end}`)}
            value={(end === 'left' ? set.hardness_left_IRHD : set.hardness_right_IRHD) ?? own}
            min={40}
            max={75}
            step={1}
            quantity="hardness"
            onChange={(next) =>
              change(
                'isolation',
                end === 'left' ? { hardness_left_IRHD: next } : { hardness_right_IRHD: next },
              )
            }
          />
        ))}
        {base.basis.isolators.map((group) => (
          <fieldset key={`${group.kind} ${group.end}`} className="isolator-list">
            <legend className="field-name">{t(`studies.isolators-${group.end}`)}</legend>
            {group.partIds.map((id) => (
              <label key={id}>
                <span>{partName(speech, machine, id)}</span>
                <select
                  value={set.conditions[id] ?? 'sound'}
                  onFocus={() => commands.select(id)}
                  onChange={(event) =>
                    change('isolation', {
                      conditions: {
                        ...set.conditions,
                        [id]: event.currentTarget.value as IsolatorCondition,
                      },
                    })
                  }
                >
                  {CONDITIONS.map((each) => (
                    <option key={each} value={each}>
                      {t(`studies.condition.${each}`)}
                    </option>
                  ))}
                </select>
              </label>
            ))}
          </fieldset>
        ))}
        <QuantityField
          label={t('studies.crack-share')}
          value={set.crack_share}
          min={0}
          max={0.95}
          step={0.05}
          quantity="share"
          onChange={(next) => change('isolation', { crack_share: next })}
        />
        <QuantityField
          label={t('studies.hours')}
          value={set.hours_a_day}
          min={0}
          max={12}
          step={0.5}
          quantity="hours"
          onChange={(next) => change('isolation', { hours_a_day: next })}
        />
        <button type="button" className="button" onClick={() => reset('isolation')}>
          {t('studies.reset')}
        </button>
      </section>
      {study === null ? (
        unbalance_kgm === null ? (
          <UnknownUnbalance />
        ) : (
          <p className="limit">{t('studies.refused')}</p>
        )
      ) : (
        <>
          <EndsTable ends={study.ends} levelDifference_m={study.level_difference_m} />
          <Plot
            title={t('studies.plot.transmissibility')}
            file="isolation-transmissibility"
            x={{
              name: t('studies.frequency'),
              key: 'frequency_Hz',
              quantity: 'frequency',
              values: study.curve.map((p) => p.frequency_Hz),
            }}
            y={{
              name: t('studies.transmissibility'),
              key: 'transmissibility',
              quantity: 'plain',
              log: true,
              low: 0.01,
            }}
            lines={[
              { name: t('studies.end-left'), key: 'left', values: study.curve.map((p) => p.left) },
              { name: t('studies.end-right'), key: 'right', values: study.curve.map((p) => p.right) },
            ]}
            levels={[{ at: 1, name: t('studies.passes-all') }]}
            marks={[{ at: frequency_Hz, name: t('studies.now') }]}
          />
          <StudyNotes
            assumptions={study.assumptions}
            limits={study.limits}
            checked="studies.checked.isolation"
          />
        </>
      )}
    </>
  );

  function names(ids: readonly string[]): string {
    const kinds = new Map<string, number>();
    const all = new Set(ids);
    for (const part of machine.parts)
      if (all.has(part.id)) kinds.set(part.kind, (kinds.get(part.kind) ?? 0) + 1);
    return [...kinds]
      .map(([kind, count]) => {
        const key = `part.${machine.kinds[kind]?.word ?? kind}.name`;
        const name = speech.has(key) ? t(key) : kind;
        return count > 1 ? `${name} × ${count}` : name;
      })
      .join(' · ');
  }
}

function EndsTable(props: {
  readonly ends: readonly EndIsolation[];
  readonly levelDifference_m: number | null;
}) {
  const { t, quantity } = useSpeech();
  const rows = [
    ['standing', (e) => e.standing, 'count'],
    ['stiffness-rest', (e) => e.static_N_m, 'stiffness'],
    ['sag', (e) => e.sag_m, 'length-small'],
    ['natural', (e) => e.natural_Hz, 'frequency'],
    ['transmissibility', (e) => e.transmissibility, 'plain'],
    ['frame-amplitude', (e) => e.frame_amplitude_m, 'length-small'],
    ['frame-peak', (e) => e.frame_peak_m_s2, 'acceleration'],
    ['weighted', (e) => e.exposure?.weighted_m_s2 ?? null, 'acceleration'],
    ['a8', (e) => e.exposure?.A8_m_s2 ?? null, 'acceleration'],
  ] as const satisfies readonly (readonly [
    string,
    (e: EndIsolation) => number | null,
    'count' | 'stiffness' | 'length-small' | 'frequency' | 'plain' | 'acceleration',
  ])[];
  return (
    <section aria-label={t('studies.result')}>
      <table className="study-table" aria-label={t('studies.result')}>
        <thead>
          <tr>
            <td />
            {props.ends.map((end) => (
              <th key={end.end} scope="col">
                {t(`studies.end-${end.end}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([word, of, kind]) => (
            <tr key={word}>
              <th scope="row">{t(`studies.${word}`)}</th>
              {props.ends.map((end) => (
                <td
                  key={end.end}
                  className="mono number"
                  data-testid={`${word}-${end.end}`}
                  data-si={of(end) ?? undefined}
                >
                  {quantity(of(end), kind, 3)}
                </td>
              ))}
            </tr>
          ))}
          <tr>
            <th scope="row">{t('studies.exposure')}</th>
            {props.ends.map((end) => (
              <td key={end.end}>
                {end.exposure === null ? '–' : t(`studies.exposure.${end.exposure.level}`)}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
      <p>{t('studies.level-difference', { value: quantity(props.levelDifference_m, 'length-small', 3) })}</p>
      <p className="limit">{t('studies.exposure-note')}</p>
    </section>
  );
}
