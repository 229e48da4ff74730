/** Find a fault: what it could be, what to measure next, the shot that is left, and the readings themselves. */
import { useEffect, useRef } from 'react';
import { createFaultCommands, enteredReadings, type FaultBench } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';
import { answerCsv } from './answer-csv';
import { faultName, grouped, measureName, shareText } from './fault-words';
import { Ranking } from './Ranking';
import { ReadingField } from './ReadingField';

export function FindFault({ bench }: { readonly bench: FaultBench }) {
  const speech = useSpeech();
  const { t, quantity, number } = speech;
  const commands = useCommands();
  const { setReading, bar, clearReadings, show } = usePlaceCommands(createFaultCommands);
  const readings = useApp((s) => s.faults.readings);
  const barred = useApp((s) => s.faults.barred);
  const answer = useApp((s) => s.faults.answer);
  const form = useRef<HTMLElement>(null);
  const count = enteredReadings(bench, readings).length;
  const top = answer?.complete === true && count > 0 ? answer.ranking[0] : undefined;
  const said = useRef('');
  useEffect(() => {
    if (top === undefined) return;
    const name = top.ids.map((id) => faultName(speech, id)).join(', ');
    const share = shareText(speech, top.probability);
    if (said.current === `${name} ${share}`) return;
    said.current = `${name} ${share}`;
    commands.announce('fault-bench.said.top', { name, share });
  }, [top, speech, commands]);
  const goTo = (measurement: string): void => {
    const row = form.current?.querySelector(`[data-measurement="${measurement}"]`);
    row?.closest('details')?.setAttribute('open', '');
    row?.querySelector<HTMLElement>('input:not([type="checkbox"]), select')?.focus();
  };
  const [next, ...later] = answer?.next.filter((g) => g.bits > 0.02) ?? [];
  return (
    <>
      <p>{t('fault-bench.find.lead')}</p>
      <section aria-labelledby="fault-answer" aria-busy={answer?.complete !== true}>
        <h3 id="fault-answer">{t('fault-bench.answer')}</h3>
        {count === 0 && <p className="small faint">{t('fault-bench.answer-none')}</p>}
        {answer !== null && (
          <Ranking
            ranking={answer.ranking}
            explained={answer.complete}
            onShow={(fault) => {
              show({ fault });
              commands.go('faults', 'show');
            }}
          />
        )}
      </section>
      <section aria-labelledby="fault-next">
        <h3 id="fault-next">{t('fault-bench.next')}</h3>
        {answer?.complete === true && next === undefined && <p>{t('fault-bench.next-none')}</p>}
        {answer?.complete === true && next !== undefined && (
          <>
            <div className="fault-line" data-next={next.measurement}>
              <b>{measureName(speech, next.measurement)}</b>
              <span className="mono">{t('fault-bench.minutes', { minutes: next.minutes })}</span>
            </div>
            <p className="small faint">
              {t('fault-bench.next-lead', {
                bits: number(next.bits, 'plain', 2),
                doubt: number(answer.doubt_bits, 'plain', 2),
              })}
            </p>
            <button type="button" className="button" onClick={() => goTo(next.measurement)}>
              {t('fault-bench.next-go', { name: measureName(speech, next.measurement) })}
            </button>
            {later.length > 0 && (
              <p className="small faint">
                {t('fault-bench.next-also')}:{' '}
                {later
                  .slice(0, 3)
                  .map(
                    (g) =>
                      `${measureName(speech, g.measurement)} (${t('fault-bench.minutes', { minutes: g.minutes })})`,
                  )
                  .join(', ')}
              </p>
            )}
          </>
        )}
      </section>
      <section aria-labelledby="fault-shot">
        <h3 id="fault-shot">{t('fault-bench.shot')}</h3>
        {readings['amplitude-high'] === undefined || readings['amplitude-low'] === undefined ? (
          <p className="small faint">{t('fault-bench.shot-needs')}</p>
        ) : answer?.complete !== true ? null : answer.shot === null ? (
          <p>{t('fault-bench.shot-none')}</p>
        ) : (
          <>
            <dl className="facts">
              <dt>{t('fault-bench.shot-mass')}</dt>
              <dd>
                <b className="mono">{quantity(answer.shot.mass_kg.mean, 'mass')}</b>{' '}
                {t('fault-bench.shot-own', { mass: quantity(bench.plant.exciter.rest.shot_mass_kg, 'mass') })}
                <br />
                <span className="small">
                  {t('fault-bench.shot-span', {
                    low: quantity(answer.shot.mass_kg.low, 'mass'),
                    high: quantity(answer.shot.mass_kg.high, 'mass'),
                  })}
                </span>
              </dd>
              <dt>{t('fault-bench.shot-captured')}</dt>
              <dd>
                <b className="mono">{quantity(answer.shot.captured.mean, 'share')}</b>
                <br />
                <span className="small">
                  {t('fault-bench.shot-span', {
                    low: quantity(answer.shot.captured.low, 'share'),
                    high: quantity(answer.shot.captured.high, 'share'),
                  })}
                </span>
              </dd>
            </dl>
            {answer.shot.atEdge && <p className="small limit">{t('fault-bench.shot-edge')}</p>}
          </>
        )}
      </section>
      <section ref={form} aria-labelledby="fault-readings">
        <h3 id="fault-readings">{t('fault-bench.readings')}</h3>
        {grouped(bench.signatures.measurements).map(([group, measurements], i) => {
          const entered = measurements.filter((m) => readings[m.id] !== undefined).length;
          return (
            <details key={group} className="fault-group" open={i < 2 ? true : undefined}>
              <summary>
                <span>{t(`fault-bench.group.${group}`)}</span>
                {entered > 0 && (
                  <span className="small mono">
                    {t(entered === 1 ? 'fault-bench.count.one' : 'fault-bench.count.other', {
                      count: entered,
                    })}
                  </span>
                )}
              </summary>
              {measurements.map((m) => (
                <ReadingField
                  // A reading taken back from outside empties the field too.
                  key={`${m.id} ${count === 0 ? 'empty' : ''}`}
                  measurement={m}
                  reading={readings[m.id]}
                  onChange={(reading) => setReading(m.id, reading)}
                />
              ))}
            </details>
          );
        })}
        <details className="fault-group">
          <summary>
            <span>{t('fault-bench.barred')}</span>
            {barred.length > 0 && <span className="small mono">{barred.length}</span>}
          </summary>
          <p className="small faint">{t('fault-bench.barred-why')}</p>
          {bench.signatures.measurements
            .filter((m) => readings[m.id] === undefined)
            .map((m) => (
              <label key={m.id} className="check">
                <input
                  type="checkbox"
                  aria-label={t('fault-bench.barred-of', { name: measureName(speech, m.id) })}
                  checked={barred.includes(m.id)}
                  onChange={(event) => bar(m.id, event.currentTarget.checked)}
                />
                <span>{measureName(speech, m.id)}</span>
              </label>
            ))}
        </details>
        <div className="buttons">
          <button
            type="button"
            className="button"
            disabled={count === 0 && barred.length === 0}
            onClick={() => clearReadings()}
          >
            {t('fault-bench.clear')}
          </button>
          <button
            type="button"
            className="button"
            disabled={answer?.complete !== true}
            onClick={() =>
              answer !== null &&
              saveText(
                `${bench.plant.machine.id}-fault.csv`,
                answerCsv(answer, enteredReadings(bench, readings)),
              )
            }
          >
            {t('fault-bench.csv')}
          </button>
        </div>
      </section>
      <p className="small faint">{t('fault-bench.honest')}</p>
    </>
  );
}
