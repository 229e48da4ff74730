/** Training: a hidden fault, measurements that cost minutes, a diagnosis with a confidence, and what came of it. */
import { useMemo, useState } from 'react';
import { minutesOf, SOMETHING_ELSE, type TrainingRun } from '../../../core/faults';
import { createFaultCommands, type FaultBench } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { RangeField } from '../common/RangeField';
import { faultName, grouped, measureName, quantityOf, readingText } from './fault-words';
import { TrainingFeedback } from './TrainingFeedback';

export function Training({ bench }: { readonly bench: FaultBench }) {
  const { t } = useSpeech();
  const run = useApp((s) => s.faults.run);
  const feedback = useApp((s) => s.faults.feedback);
  const lasting = useApp((s) => s.faults.lasting);
  return (
    <>
      {run === null ? (
        <>
          <p>{t('fault-bench.train.lead')}</p>
          <StartCase />
          <Rounds />
        </>
      ) : (
        <>
          <OpenCase bench={bench} run={run} />
          {feedback !== null && <TrainingFeedback bench={bench} run={run} feedback={feedback} />}
          {run.committed !== null && (
            <>
              <StartCase />
              <Rounds />
            </>
          )}
        </>
      )}
      {!lasting && <p className="small limit">{t('fault-bench.train.not-kept')}</p>}
    </>
  );
}

function StartCase() {
  const { t } = useSpeech();
  const { startCase } = usePlaceCommands(createFaultCommands);
  const [number, setNumber] = useState('');
  const wanted = number.trim() === '' ? null : Number(number);
  const good = wanted === null || (Number.isSafeInteger(wanted) && wanted >= 0);
  return (
    <form
      className="fault-start"
      onSubmit={(event) => {
        event.preventDefault();
        if (good) startCase(wanted);
      }}
    >
      <label className="field">
        <span className="field-name">{t('fault-bench.train.number')}</span>
        <input
          className="mono"
          inputMode="numeric"
          autoComplete="off"
          aria-invalid={!good}
          value={number}
          onChange={(event) => setNumber(event.currentTarget.value)}
        />
      </label>
      <button type="submit" className="button act" disabled={!good}>
        {t('fault-bench.train.start')}
      </button>
    </form>
  );
}

function Rounds() {
  const { t, number } = useSpeech();
  const closed = useApp((s) => s.faults.closed);
  if (closed.length === 0) return null;
  const right = closed.filter((c) => c.right).length;
  const brier = closed.reduce((sum, c) => sum + c.brier, 0) / closed.length;
  return (
    <section aria-labelledby="fault-rounds">
      <h3 id="fault-rounds">{t('fault-bench.train.rounds')}</h3>
      <p>
        {t('fault-bench.train.rounds-line', {
          right,
          count: closed.length,
          brier: number(brier, 'plain', 2),
        })}
      </p>
    </section>
  );
}

function OpenCase({ bench, run }: { readonly bench: FaultBench; readonly run: TrainingRun }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const { act, leaveCase, ownReadings } = usePlaceCommands(createFaultCommands);
  const { plant, signatures } = bench;
  // the readings follow from the run alone
  // eslint-disable-next-line react-hooks/exhaustive-deps
  const readings = useMemo(() => ownReadings(), [run, ownReadings]);
  const [methods, setMethods] = useState<Readonly<Record<string, number>>>({});
  const open = run.committed === null;
  const measure = (id: string): void => {
    act({ type: 'measure', measurement: id, method: methods[id] ?? 0 });
    const m = signatures.measurements.find((each) => each.id === id)!;
    const read = ownReadings().find((r) => r.measurement === id);
    const value = readingText(speech, m, read?.value ?? null);
    commands.announce('fault-bench.said.measured', { name: measureName(speech, id), value });
  };
  return (
    <>
      <div className="fault-line case-head">
        <b>{t('fault-bench.train.case', { number: run.seed })}</b>
        <span className="mono" data-minutes={minutesOf(plant, run)}>
          {t('fault-bench.train.spent', { minutes: minutesOf(plant, run) })}
        </span>
      </div>
      <section aria-labelledby="fault-own">
        <h3 id="fault-own">{t('fault-bench.train.taken')}</h3>
        {readings.length === 0 ? (
          <p className="faint">{t('fault-bench.train.nothing')}</p>
        ) : (
          <dl className="facts">
            {readings.map((r) => {
              const m = signatures.measurements.find((each) => each.id === r.measurement)!;
              return (
                <div key={r.measurement} className="fact" data-own={r.measurement}>
                  <dt>{measureName(speech, r.measurement)}</dt>
                  <dd className={m.kind === 'number' ? 'mono' : undefined}>
                    {readingText(speech, m, r.value)}
                    {r.sd !== undefined && m.kind === 'number' && (
                      <span className="faint"> ± {errorText(speech, m.id, r.sd)}</span>
                    )}
                  </dd>
                </div>
              );
            })}
          </dl>
        )}
      </section>
      {open && (
        <section aria-labelledby="fault-take">
          <h3 id="fault-take">{t('fault-bench.train.take')}</h3>
          {grouped(signatures.measurements).map(([group, measurements], i) => (
            <details key={group} className="fault-group" open={i === 0 ? true : undefined}>
              <summary>
                <span>{t(`fault-bench.group.${group}`)}</span>
              </summary>
              {measurements
                .filter((m) => !run.taken.some((taken) => taken.measurement === m.id))
                .map((m) => (
                  <div key={m.id} className="take">
                    <div>
                      <b>{measureName(speech, m.id)}</b>
                      <p className="small faint">{t(`fault-bench.measure.${m.id}.how`)}</p>
                    </div>
                    {m.kind === 'number' && m.methods.length > 1 && (
                      <select
                        aria-label={t('fault-bench.way')}
                        value={methods[m.id] ?? 0}
                        onChange={(event) =>
                          setMethods({ ...methods, [m.id]: Number(event.currentTarget.value) })
                        }
                      >
                        {m.methods.map((way, k) => (
                          <option key={way.id} value={k}>
                            {t(`fault-bench.method.${way.id}`)}
                          </option>
                        ))}
                      </select>
                    )}
                    <button
                      type="button"
                      className="button"
                      aria-label={t('fault-bench.train.take-of', {
                        name: measureName(speech, m.id),
                        minutes: m.minutes,
                      })}
                      onClick={() => measure(m.id)}
                    >
                      {t('fault-bench.minutes', { minutes: m.minutes })}
                    </button>
                  </div>
                ))}
            </details>
          ))}
        </section>
      )}
      {open && <Commit bench={bench} />}
      {open && (
        <div className="buttons">
          <button type="button" className="button plain" onClick={() => leaveCase()}>
            {t('fault-bench.train.drop')}
          </button>
        </div>
      )}
    </>
  );
}

/** A standard error has no zero point, so it is told as the difference of two values. */
function errorText(speech: ReturnType<typeof useSpeech>, id: string, sd: number): string {
  const quantity = quantityOf(id);
  return speech.quantity(sd, quantity, 2);
}

function Commit({ bench }: { readonly bench: FaultBench }) {
  const speech = useSpeech();
  const { t } = speech;
  const { act } = usePlaceCommands(createFaultCommands);
  const [hypothesis, setHypothesis] = useState('');
  const [confidence, setConfidence] = useState(0.5);
  const choices = bench.signatures.hypotheses
    .map((h) => ({ id: h.id, name: faultName(speech, h.id) }))
    .filter((choice) => choice.id !== SOMETHING_ELSE)
    .sort((a, b) => a.name.localeCompare(b.name, speech.language));
  return (
    <section aria-labelledby="fault-commit">
      <h3 id="fault-commit">{t('fault-bench.train.commit')}</h3>
      <label className="field">
        <span className="field-name">{t('fault-bench.train.fault')}</span>
        <select value={hypothesis} onChange={(event) => setHypothesis(event.currentTarget.value)}>
          <option value="">{t('fault-bench.train.choose')}</option>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <RangeField
        label={t('fault-bench.train.sure')}
        value={confidence}
        min={0.05}
        max={1}
        step={0.05}
        text={t('fault-bench.train.confidence', { percent: Math.round(confidence * 100) })}
        onChange={setConfidence}
      />
      <button
        type="button"
        className="button act"
        disabled={hypothesis === ''}
        onClick={() => act({ type: 'commit', hypothesis, confidence })}
      >
        {t('fault-bench.train.commit-now')}
      </button>
    </section>
  );
}
