/** A sheet of questions for printing, with its answer key on a page of its own and the seed that draws it again. */
import { useEffect } from 'react';
import { DIRECTION_SETS, type Item, type Option, rightAnswer } from '../../../core/quiz';
import { createQuizCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands } from '../../bind';
import { answerWords } from '../learn/answer-words';
import { Picture } from '../learn/Picture';
import { Said } from '../learn/Said';
import { type Teller, useTeller } from '../learn/teller';

export const letter = (i: number): string => String.fromCharCode(65 + i);

export function PaperSheet({ seed }: { readonly seed: number }) {
  const teller = useTeller();
  const { t } = teller.speech;
  const commands = useCommands();
  const quiz = usePlaceCommands(createQuizCommands);
  const ready = useApp((s) => s.document !== null);
  const paper = useApp((s) => s.quiz.paper);
  const drawn = paper?.seed === seed;
  // An address of a sheet that is not there draws it again from its seed.
  useEffect(() => {
    if (ready && !drawn && Number.isFinite(seed)) void quiz.makePaper(seed);
  }, [ready, drawn, seed, quiz]);
  if (paper === null || !drawn) return <p className="panel-body faint">{t('quiz.drawing')}</p>;
  return (
    <div className="panel-body paper-sheet">
      <div className="buttons no-print">
        <button type="button" className="button act" onClick={() => window.print()}>
          {t('paper.print')}
        </button>
        <button type="button" className="button" onClick={() => commands.go('quiz')}>
          {t('paper.back')}
        </button>
      </div>
      <header>
        <h2>{t('paper.title')}</h2>
        <p className="mono">{t('paper.seed', { seed })}</p>
        <p className="paper-lines">
          <span>{t('paper.name')} ____________________</span> <span>{t('paper.date')} __________</span>
        </p>
        <p className="small">{t('paper.about')}</p>
      </header>
      <ol className="paper-items">
        {paper.items.map((item) => (
          <li key={item.id}>
            <Said content={item.prompt} />
            {item.picture !== undefined && <Picture picture={item.picture} />}
            <PaperBody item={item} teller={teller} />
            <p className="small paper-sure">{t('paper.sure')} [ 1 ] [ 2 ] [ 3 ]</p>
          </li>
        ))}
      </ol>
      <section className="paper-key">
        <h2>{t('paper.key')}</h2>
        <p className="mono">{t('paper.seed', { seed })}</p>
        <ol>
          {paper.items.map((item) => (
            <li key={item.id}>{keyOf(teller, item)}</li>
          ))}
        </ol>
      </section>
    </div>
  );
}

/** Letters of the right options where there are letters, and the answer in words. */
export function keyOf(teller: Teller, item: Item): string {
  const words = answerWords(teller, item, rightAnswer(item));
  const letters = (ids: readonly string[], all: readonly string[]): string =>
    ids.map((id) => letter(all.indexOf(id))).join(', ');
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
      return `${letters(
        [item.right],
        item.options.map((o) => o.id),
      )}: ${words}`;
    case 'choose-several':
      return `${letters(
        item.right,
        item.options.map((o) => o.id),
      )}: ${words}`;
    case 'direction':
      return `${letters([item.right], DIRECTION_SETS[item.set])}: ${words}`;
    default:
      return words;
  }
}

export function PaperBody({ item, teller }: { readonly item: Item; readonly teller: Teller }) {
  const { t, symbol } = teller.speech;
  const lettered = (options: readonly string[]) => (
    <ol className="paper-options">
      {options.map((text, i) => (
        <li key={i}>
          <span className="mono">{letter(i)}</span> {text}
        </li>
      ))}
    </ol>
  );
  const said = (options: readonly Option[]): string[] => options.map((option) => teller.text(option.says));
  switch (item.kind) {
    case 'choose-one':
    case 'choose-several':
    case 'read-picture':
      return lettered(said(item.options));
    case 'find-fault':
      return (
        <>
          <ul>
            {item.shown.map((each, i) => (
              <li key={i}>{teller.text(each)}</li>
            ))}
          </ul>
          {lettered(said(item.options))}
        </>
      );
    case 'direction':
      return lettered(DIRECTION_SETS[item.set].map((id) => t(`direction.${item.set}.${id}`)));
    case 'pick-part':
      return lettered(item.among.map((ref) => teller.name(ref)));
    case 'number':
      return <p>____________________ {symbol(item.quantity)}</p>;
    case 'order':
      return (
        <>
          <p className="small">{t('paper.order')}</p>
          <ul className="paper-options">
            {said(item.cards).map((text, i) => (
              <li key={i}>____ {text}</li>
            ))}
          </ul>
        </>
      );
    case 'match':
      return (
        <>
          <ul className="paper-options">
            {said(item.left).map((text, i) => (
              <li key={i}>____ {text}</li>
            ))}
          </ul>
          {lettered(said(item.options))}
        </>
      );
  }
}
