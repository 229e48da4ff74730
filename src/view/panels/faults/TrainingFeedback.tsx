/** What came of a case: right or not, whether the confidence fits the readings, and a good way to have found it. */
import { useEffect, useRef } from 'react';
import type { Feedback, TrainingRun } from '../../../core/faults';
import type { FaultBench } from '../../../store';
import { useCommands, useSpeech } from '../../bind';
import { faultName, measureName, readingText, shareText } from './fault-words';
import { Ranking } from './Ranking';

/** Difference of confidence and what the readings bear out that is worth a word. */
const NEAR = 0.15;

interface Props {
  readonly bench: FaultBench;
  readonly run: TrainingRun;
  readonly feedback: Feedback;
}

export function TrainingFeedback({ bench, run, feedback }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const name = faultName(speech, feedback.truth);
  const said = useRef(false);
  useEffect(() => {
    if (said.current) return;
    said.current = true;
    commands.announce(feedback.right ? 'fault-bench.said.right' : 'fault-bench.said.wrong', { name });
  }, [feedback.right, name, commands]);
  const confidence = run.committed?.confidence ?? 0;
  const over = confidence - feedback.borneOut;
  const minutes = feedback.best.reduce((sum, step) => sum + step.minutes, 0);
  return (
    <>
      <section aria-labelledby="fault-verdict" data-right={feedback.right} data-truth={feedback.truth}>
        <h3 id="fault-verdict" className="verdict">
          <svg width="20" height="20" viewBox="0 0 20 20" className="icon" aria-hidden="true">
            <path d={feedback.right ? 'm3.5 10.5 4.5 4.5 8.5-10' : 'm4.5 4.5 11 11M15.5 4.5l-11 11'} />
          </svg>
          {t(feedback.right ? 'fault-bench.train.right' : 'fault-bench.train.wrong', { name })}
        </h3>
        <p>{t(`fault-bench.fault.${feedback.truth}.does`)}</p>
        {feedback.group.length > 1 && (
          <p className="small">
            {t('fault-bench.train.counts', {
              names: feedback.group.map((id) => faultName(speech, id)),
            })}
          </p>
        )}
        <p>
          {t('fault-bench.train.borne-out', {
            share: shareText(speech, feedback.borneOut),
            said: speech.quantity(confidence, 'share'),
          })}{' '}
          {t(`fault-bench.train.${over > NEAR ? 'over' : over < -NEAR ? 'under' : 'match'}`)}
        </p>
      </section>
      <section aria-labelledby="fault-best">
        <h3 id="fault-best">{t('fault-bench.train.best')}</h3>
        <p>{t('fault-bench.train.best-lead', { minutes, own: feedback.minutes })}</p>
        <ol className="fault-path">
          {feedback.best.map((step) => {
            const m = bench.signatures.measurements.find((each) => each.id === step.measurement)!;
            return (
              <li key={step.measurement}>
                {t('fault-bench.train.step', {
                  name: measureName(speech, step.measurement),
                  value: readingText(speech, m, step.reading?.value ?? null),
                  share: shareText(speech, step.probability),
                })}
              </li>
            );
          })}
        </ol>
      </section>
      <section aria-labelledby="fault-own-ranking">
        <h3 id="fault-own-ranking">{t('fault-bench.train.your-ranking')}</h3>
        <Ranking ranking={feedback.ranking} explained />
      </section>
    </>
  );
}
