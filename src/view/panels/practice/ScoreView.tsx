/** The end of a run: points lost as a plain sum, what went wrong and where to learn it, the order beside the least. */
import { useEffect, useRef, useState } from 'react';
import { isDone, leastWalk, POINTS, type PracticeScore } from '../../../core/assembly';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type LessonHelp, type PracticeRun } from '../../../store';
import { useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { sayAbout } from '../common/names';
import { namesText } from './practice-words';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  readonly score: PracticeScore;
}

export function ScoreView({ run, machine, score }: Props) {
  const { t } = useSpeech();
  const commands = usePlaceCommands(createPracticeCommands);
  const heading = useRef<HTMLHeadingElement>(null);
  const reached = isDone(run.bench, run.state);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div className="practice-score" data-lost={score.lost}>
      <h3 className="practice-done" tabIndex={-1} ref={heading}>
        {t(reached ? 'practice.score' : 'practice.score-ended')}
      </h3>
      {!reached && <p>{t('practice.score-ended-at', { moves: score.moves, least: score.leastMoves })}</p>}
      {run.task.aid === 'guided' && <p>{t('practice.score-guided')}</p>}
      <Sum score={score} />
      <WentWrong run={run} machine={machine} />
      <Orders run={run} machine={machine} />
      <div className="buttons">
        <button
          type="button"
          className="button act"
          onClick={() => {
            commands.choose(run.task);
            void commands.start();
          }}
        >
          {t('practice.same-again')}
        </button>
        <button type="button" className="button" onClick={() => commands.leave()}>
          {t('practice.other')}
        </button>
      </div>
    </div>
  );
}

function Sum({ score }: { readonly score: PracticeScore }) {
  const { t } = useSpeech();
  const rows = [
    { key: 'wrong', count: score.wrong, points: POINTS.wrong },
    { key: 'hints', count: score.hints, points: POINTS.hint },
    { key: 'extra', count: score.extra, points: POINTS.extra },
    { key: 'time', count: score.fiveMinutes, points: POINTS.time },
  ] as const;
  return (
    <table className="practice-sum">
      <caption>{t('practice.score-why')}</caption>
      <tbody>
        {rows.map(({ key, count, points }) => (
          <tr key={key}>
            <th scope="row">{t(`practice.score-row.${key}`)}</th>
            <td className="mono faint">{t('practice.score-times', { count, points })}</td>
            <td className="mono" data-points={key}>
              {count * points}
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" colSpan={2}>
            {t('practice.score-lost')}
          </th>
          <td className="mono">{score.lost}</td>
        </tr>
      </tfoot>
    </table>
  );
}

function WentWrong({ run, machine }: Omit<Props, 'score'>) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const { lessonHelp } = usePlaceCommands(createPracticeCommands);
  const { wrong } = run.state;
  const [help, setHelp] = useState<readonly (LessonHelp | null)[]>([]);
  useEffect(() => {
    let wanted = true;
    if (wrong.length > 0) void lessonHelp().then((found) => wanted && setHelp(found));
    return () => {
      wanted = false;
    };
  }, [wrong, lessonHelp]);
  return (
    <section aria-labelledby="practice-wrong">
      <h3 id="practice-wrong">{t('practice.wrong')}</h3>
      {wrong.length === 0 ? (
        <p>{t('practice.wrong-none')}</p>
      ) : (
        <ul className="practice-wrongs">
          {wrong.map((each, i) => {
            const lesson = help[i];
            return (
              <li key={i}>
                <p className="label">{t('practice.wrong-at', { move: each.after + 1 })}</p>
                <p>{sayAbout(speech, machine, each.reason)}</p>
                {lesson != null && (
                  <button
                    type="button"
                    className="link small"
                    onClick={() => commands.go('lessons', lesson.topic, lesson.step)}
                  >
                    {t('practice.wrong-lesson', { title: lesson.title })}
                  </button>
                )}
                {lesson === null && <p className="small faint">{t('practice.wrong-no-lesson')}</p>}
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}

function Orders({ run, machine }: Omit<Props, 'score'>) {
  const speech = useSpeech();
  const { t } = speech;
  const { bench, state, task } = run;
  const plan = leastWalk(bench, state.goal).moves;
  const least = task.mode === 'take-apart' ? plan : [...plan].reverse();
  const meets = (a: readonly string[], b: readonly string[]): boolean => a.some((id) => b.includes(id));
  const names = (ids: readonly string[]): string => namesText(speech, machine, bench, ids);
  return (
    <details className="practice-orders">
      <summary>{t('practice.order')}</summary>
      <p className="small">{t('practice.order-note')}</p>
      <div className="practice-order-pair">
        <div>
          <p className="label">{t('practice.order-yours')}</p>
          <ol className="practice-numbered">
            {state.moves.map((move, i) => {
              const at = least.findIndex((each) => meets(each.bodies, move.bodies));
              return (
                <li key={i} className={at < 0 ? 'extra' : undefined}>
                  {names(move.bodies)}{' '}
                  <span className="small faint">
                    {at < 0 ? t('practice.order-not') : t('practice.order-in', { at: at + 1 })}
                  </span>
                </li>
              );
            })}
          </ol>
        </div>
        <div>
          <p className="label">{t('practice.order-least')}</p>
          <ol className="practice-numbered">
            {least.map((move, i) => {
              const at = state.moves.findIndex((each) => meets(each.bodies, move.bodies));
              return (
                <li key={i}>
                  {names(move.bodies)}{' '}
                  <span className="small faint">
                    {at < 0 ? t('practice.order-unmade') : t('practice.order-your', { at: at + 1 })}
                  </span>
                </li>
              );
            })}
          </ol>
        </div>
      </div>
    </details>
  );
}
