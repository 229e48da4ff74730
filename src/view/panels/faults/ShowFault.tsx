/** Show a fault: what it changes in the machine, what would be measured and seen, the housing, the part on the stage. */
import { kindSolids } from '../../../core/document';
import { useMemo, useState } from 'react';
import {
  errorOf,
  faultyInputs,
  inSteps,
  type InputName,
  type Measurement,
  type ReadingName,
  readingsOf,
  signChances,
} from '../../../core/faults';
import { findPart, findUnit, type Machine, partsOfRef } from '../../../core/machine';
import { exciterStudy } from '../../../core/studies';
import { createFaultCommands, DEFAULT_EXCITER, type FaultBench } from '../../../store';
import { type Speech, useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { kindName, unitName } from '../common/names';
import { RangeField } from '../common/RangeField';
import { Segmented } from '../common/Segmented';
import { ExciterDrawing } from '../exciter/ExciterDrawing';
import { faultName, inputText, measureName, quantityOf, readingText } from './fault-words';
import '../exciter/exciter.css';

/** Inputs that show in the drawing of the housing. */
const DRAWN: readonly string[] = ['shot_share', 'baffle_fitted', 'hoses_swapped'];
/** A change of so many standard deviations is out of the ordinary. */
const CLEAR_SD = 2;

export function ShowFault({ bench }: { readonly bench: FaultBench }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const { show } = usePlaceCommands(createFaultCommands);
  const shown = useApp((s) => s.faults.shown);
  const document = useApp((s) => s.document);
  const [all, setAll] = useState(false);
  const { plant, signatures } = bench;
  const fault = plant.book.faults.find((f) => f.id === shown.fault) ?? plant.book.faults[0]!;
  const now = useMemo(() => {
    const inputs = faultyInputs(plant, plant.sound, fault, shown.severity);
    return { inputs, readings: readingsOf(plant, inputs) };
  }, [plant, fault, shown.severity]);
  const sound = useMemo(() => readingsOf(plant, plant.sound), [plant]);
  const study = useMemo(() => {
    if (document === null) return null;
    const own = exciterStudy(
      document.machine,
      kindSolids(document),
      document.masses,
      DEFAULT_EXCITER,
      document.fit,
    );
    const fill = own === null ? null : own.own.fill * now.inputs.shot_share;
    const baffleOn = now.inputs.baffle_fitted > 0.5;
    const choice = { ...DEFAULT_EXCITER, fill, baffleOn };
    return exciterStudy(document.machine, kindSolids(document), document.masses, choice, document.fit);
  }, [document, now]);
  const soundState = signatures.states[0]!;
  const rows = signatures.measurements.flatMap((m, at) => {
    if (m.kind !== 'number') return [];
    const before = sound.numbers[m.id as ReadingName];
    const after = now.readings.numbers[m.id as ReadingName];
    const slope = soundState.numbers[at]?.slope ?? [];
    const sd = Math.hypot(errorOf(m, before ?? 0), ...slope);
    const clear = after === null || (before !== null && Math.abs(after - before) > CLEAR_SD * sd);
    return [{ m, before, after, clear }];
  });
  const visible = all ? rows : rows.filter((row) => row.clear);
  const signs = signatures.measurements.flatMap((m) => {
    if (m.kind !== 'look') return [];
    const before = signChances(m, null, 0, sound.signs);
    const after = signChances(m, fault, shown.severity, now.readings.signs);
    if (before === null || after === null) return [];
    // Outcomes that the fault makes much likelier than they are on a sound machine.
    return m.outcomes
      .map((outcome, i) => ({ m, outcome, share: after[i]!, more: after[i]! - before[i]! }))
      .filter((s) => s.more > 0.1);
  });
  const choices = plant.book.faults
    .map(({ id }) => ({ id, name: faultName(speech, id) }))
    .sort((a, b) => a.name.localeCompare(b.name, speech.language));
  const swapped = now.inputs.hoses_swapped > 0.5;
  const turned = swapped ? (shown.lever === 'high' ? 'low' : 'high') : shown.lever;
  const parts = fault.parts.flatMap((ref) => partsOfRef(plant.machine, ref));
  return (
    <>
      <p>{t('fault-bench.show.lead')}</p>
      <section>
        <label className="field">
          <span className="field-name">{t('fault-bench.show.fault')}</span>
          <select value={fault.id} onChange={(event) => show({ fault: event.currentTarget.value })}>
            {choices.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <p>{t(`fault-bench.fault.${fault.id}.does`)}</p>
        {fault.levels > 1 && (
          <RangeField
            label={t('fault-bench.show.severity')}
            value={shown.severity}
            min={0}
            max={1}
            step={inSteps(fault) ? 1 / (fault.levels - 1) : 0.05}
            text={t(
              `fault-bench.severity.${shown.severity < 1 / 3 ? 'mild' : shown.severity < 2 / 3 ? 'middle' : 'severe'}`,
            )}
            onChange={(severity) => show({ severity })}
          />
        )}
        <div className="buttons" role="group" aria-label={t('fault-bench.show.parts')}>
          {fault.parts.map((ref) => (
            <button
              key={ref}
              type="button"
              className="button"
              onClick={() => {
                const [first] = partsOfRef(plant.machine, ref);
                if (first === undefined) return;
                commands.isolate(null);
                commands.ghost([...parts], false);
                commands.select(first);
                commands.lookAt('fit', first);
              }}
            >
              {refName(speech, plant.machine, ref)}
            </button>
          ))}
        </div>
      </section>
      <section aria-labelledby="fault-changes">
        <h3 id="fault-changes">{t('fault-bench.show.changes')}</h3>
        <ul className="fault-changes">
          {fault.effects.map((effect) => (
            <li key={effect.input}>
              {t('fault-bench.show.from-to', {
                name: t(`fault-bench.input.${effect.input}`),
                from: inputText(speech, effect.input, plant.sound[effect.input as InputName]),
                to: inputText(speech, effect.input, now.inputs[effect.input as InputName]),
              })}
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="fault-would-read">
        <h3 id="fault-would-read">{t('fault-bench.show.readings')}</h3>
        <table className="exciter-table fault-table">
          <thead>
            <tr>
              <th scope="col" className="first">
                <span className="visually-hidden">{t('fault-bench.readings')}</span>
              </th>
              <th scope="col">{t('fault-bench.show.sound')}</th>
              <th scope="col">{t('fault-bench.show.now')}</th>
            </tr>
          </thead>
          <tbody>
            {visible.map(({ m, before, after, clear }) => (
              <tr key={m.id} data-reading={m.id} className={clear ? 'strong' : undefined}>
                <th scope="row">
                  {measureName(speech, m.id)} <span className="unit">{speech.symbol(quantityOf(m.id))}</span>
                  {clear && <span className="visually-hidden"> ({t('fault-bench.show.clear-change')})</span>}
                </th>
                <td className="number mono">{speech.number(before, quantityOf(m.id), 3)}</td>
                <td className="number mono">
                  {after === null ? t('fault-bench.show.unknown') : speech.number(after, quantityOf(m.id), 3)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
        {rows.some((r) => r.after === null) && (
          <p className="small limit">{t('fault-bench.show.unknown-why')}</p>
        )}
        <label className="check">
          <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />
          <span>{t('fault-bench.show.all')}</span>
        </label>
      </section>
      {signs.length > 0 && (
        <section aria-labelledby="fault-signs">
          <h3 id="fault-signs">{t('fault-bench.show.signs')}</h3>
          <dl className="facts">
            {signs.map(({ m, outcome, share }) => (
              <SignRow key={`${m.id} ${outcome}`} m={m} outcome={outcome} share={share} />
            ))}
          </dl>
        </section>
      )}
      {study !== null && (
        <section aria-labelledby="fault-housing">
          <h3 id="fault-housing">{t('fault-bench.show.drawing', { direction: t(`exciter.${turned}`) })}</h3>
          <Segmented
            legend={t('fault-bench.show.direction')}
            choices={(['high', 'low'] as const).map((value) => ({ value, label: t(`exciter.${value}`) }))}
            value={shown.lever}
            onChange={(lever) => show({ lever })}
          />
          <ExciterDrawing study={study} direction={turned} />
          {!fault.effects.some((e) => DRAWN.includes(e.input)) && (
            <p className="small faint">{t('fault-bench.show.drawing-sound')}</p>
          )}
        </section>
      )}
      <p className="small faint">{t('fault-bench.honest')}</p>
    </>
  );
}

/** A unit's name, or for a pattern's own id the name of the kind that its copies are. */
function refName(speech: Speech, machine: Machine, ref: string): string {
  const [first] = partsOfRef(machine, ref);
  const kind = first === undefined ? undefined : findPart(machine, first)?.kind;
  return findUnit(machine, ref) !== undefined || kind === undefined
    ? unitName(speech, machine, ref)
    : kindName(speech, machine, kind);
}

function SignRow({
  m,
  outcome,
  share,
}: {
  readonly m: Measurement;
  readonly outcome: string;
  readonly share: number;
}) {
  const speech = useSpeech();
  return (
    <>
      <dt>{measureName(speech, m.id)}</dt>
      <dd>
        {speech.t('fault-bench.show.sign', {
          outcome: readingText(speech, m, outcome),
          share: speech.quantity(share, 'share'),
        })}
      </dd>
    </>
  );
}
