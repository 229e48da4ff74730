/** What a run came to: sure and wrong first, each with its explanation and where to read on. */
import { useEffect, useRef } from 'react';
import { CERTAINTIES, resultsOf, type ResultRow, rightAnswer, type Standing } from '../../../core/quiz';
import { createQuizCommands, type QuizRun } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Told } from '../learn/AskItem';
import { answerWords, mistakes } from '../learn/answer-words';
import { Said } from '../learn/Said';
import { useTeller } from '../learn/teller';

const GROUPS: readonly Standing[] = ['sure-and-wrong', 'wrong', 'left-out', 'lucky', 'right'];

export function QuizResults({ run }: { readonly run: QuizRun }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const quiz = usePlaceCommands(createQuizCommands);
  const packaged = useApp((s) => s.school !== null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  // A practice that was broken off is judged by what was asked.
  const asked = run.items.flatMap((item, i) => {
    const given = run.given[i];
    if (given == null && run.mode !== 'test') return [];
    return [{ item, given: given ?? { answer: null, certainty: 1 as const } }];
  });
  const results = resultsOf(asked);
  return (
    <div className="panel-body quiz-results">
      <h2 ref={heading} tabIndex={-1}>
        {t('quiz.results-title')}
      </h2>
      <p className="quiz-score">
        <strong>{t('quiz.score', { right: results.right, count: results.count })}</strong>{' '}
        <span className="mono">{t('quiz.mark-of', { mark: results.mark, best: results.best })}</span>
      </p>
      <table className="review-plan">
        <thead>
          <tr>
            <th scope="col">{t('quiz.said')}</th>
            <th scope="col">{t('quiz.said-count')}</th>
            <th scope="col">{t('quiz.said-right')}</th>
          </tr>
        </thead>
        <tbody>
          {CERTAINTIES.map((certainty) => (
            <tr key={certainty}>
              <th scope="row">{t(`certainty.${certainty}`)}</th>
              <td className="mono">{results.byCertainty[certainty].said}</td>
              <td className="mono">{results.byCertainty[certainty].right}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {GROUPS.map((standing) => {
        const rows = results.rows.filter((row) => row.standing === standing);
        if (rows.length === 0) return null;
        return (
          <section key={standing} data-standing={standing}>
            <h3>{t(`quiz.group.${standing}`)}</h3>
            {rows.map((row) => (
              <Row key={row.item.id} row={row} open={standing === 'sure-and-wrong'} />
            ))}
          </section>
        );
      })}
      <div className="buttons">
        <button type="button" className="button act" onClick={() => quiz.leave()}>
          {t('quiz.again')}
        </button>
        <button type="button" className="button" onClick={() => commands.go('lessons')}>
          {t(packaged ? 'school.home' : 'lessons.title')}
        </button>
      </div>
      <p className="small faint mono">{t('paper.seed', { seed: run.seed })}</p>
    </div>
  );
}

function Row({ row, open }: { readonly row: ResultRow; readonly open: boolean }) {
  const teller = useTeller();
  const { t } = teller.speech;
  const { item, given } = row;
  return (
    <details className="result-row" open={open}>
      <summary>{teller.text(item.prompt)}</summary>
      <div className="result-body">
        {'rich' in item.prompt && <Said content={item.prompt} />}
        <dl className="facts">
          {given.answer !== null && (
            <>
              <dt>{t('ask.yours')}</dt>
              <dd>{answerWords(teller, item, given.answer)}</dd>
            </>
          )}
          <dt>{t('ask.right-is')}</dt>
          <dd>{answerWords(teller, item, rightAnswer(item))}</dd>
        </dl>
        {given.answer !== null &&
          mistakes(item, given.answer).map((why, i) => <Said key={i} content={why} />)}
        <Told item={item} given={given} />
      </div>
    </details>
  );
}
