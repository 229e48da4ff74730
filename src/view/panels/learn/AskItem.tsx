/** One question: asked, answered with how sure one is, and (where it may be told) what was right and why. */
import { useCallback, useEffect, useId, useRef, useState } from 'react';
import {
  type Answer,
  CERTAINTIES,
  type Certainty,
  type Given,
  type Item,
  markAnswer,
  type Marked,
  resultOf,
} from '../../../core/quiz';
import { useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';
import { ChoiceField, DirectionField } from './ChoiceFields';
import { MatchField } from './MatchField';
import { NumberAnswer } from './NumberField';
import { OrderField } from './OrderField';
import { PickField } from './PickField';
import { Picture } from './Picture';
import { Said } from './Said';
import { useLinks } from './use-links';
import { useTeller } from './teller';
import './learn.css';

interface Props {
  readonly item: Item;
  /** What was answered; null: not yet. */
  readonly given: Given | null;
  /** Tell what is right once answered. */
  readonly tells: boolean;
  /** Said on the button: 'answer', in a test 'keep', in class 'send' and 'send-again'. */
  readonly verb?: 'answer' | 'keep' | 'send' | 'send-again';
  readonly onGiven: (given: Given) => void;
  readonly headingLevel?: 2 | 3;
}

/** Whether an answer is whole enough to be given. */
function isComplete(item: Item, answer: Answer | null): boolean {
  if (item.kind === 'order') return true;
  if (answer === null) return false;
  switch (answer.type) {
    case 'choice':
      return answer.ids.length > 0;
    case 'number':
      return Number.isFinite(answer.si);
    case 'match':
      return item.kind === 'match' && item.left.every((left) => (answer.pairs[left.id] ?? '') !== '');
    default:
      return true;
  }
}

/** Cards as they lie are an answer too. */
const asAnswered = (item: Item, answer: Answer | null): Answer | null =>
  answer === null && item.kind === 'order'
    ? { type: 'order', ids: item.cards.map((card) => card.id) }
    : answer;

export function AskItem({ item, given, tells, verb = 'answer', onGiven, headingLevel = 2 }: Props) {
  const { t } = useSpeech();
  const id = useId();
  const [answer, setAnswer] = useState<Answer | null>(given?.answer ?? null);
  const [certainty, setCertainty] = useState<Certainty | null>(given?.certainty ?? null);
  const told = useRef<HTMLDivElement>(null);
  const onAnswer = useCallback((next: Answer) => setAnswer(next), []);
  const shown = tells && given !== null;
  const marked: Marked | null = shown && given.answer !== null ? markAnswer(item, given.answer) : null;
  const wasShown = useRef(shown);
  useEffect(() => {
    if (shown && !wasShown.current) told.current?.focus();
    wasShown.current = shown;
  }, [shown]);
  const Heading = `h${headingLevel}` as 'h2' | 'h3';
  const complete = isComplete(item, answer);
  return (
    <form
      className="ask"
      data-item={item.id}
      data-kind={item.kind}
      aria-labelledby={`${id}-prompt`}
      onSubmit={(event) => {
        event.preventDefault();
        if (complete && certainty !== null && !shown)
          onGiven({ answer: asAnswered(item, answer), certainty });
      }}
    >
      <Heading className="ask-kind small faint">{t(`item-kind.${item.kind}`)}</Heading>
      <div id={`${id}-prompt`} className="ask-prompt">
        <Said content={item.prompt} />
      </div>
      {item.picture !== undefined && <Picture picture={item.picture} />}
      <Field item={item} answer={answer} onAnswer={onAnswer} marked={marked} />
      {shown ? (
        <div ref={told} tabIndex={-1} className="ask-told">
          <Told item={item} given={given} />
        </div>
      ) : (
        <>
          <Segmented
            fill
            legend={t('certainty.ask')}
            value={certainty === null ? '' : String(certainty)}
            choices={CERTAINTIES.map((each) => ({
              value: String(each),
              label: (
                <span className="certainty">
                  <span>{t(`certainty.${each}`)}</span>
                  <span className="small">{t(`certainty.marks-${each}`)}</span>
                </span>
              ),
            }))}
            onChange={(value) => setCertainty(Number(value) as Certainty)}
          />
          <button type="submit" className="button act" disabled={!complete || certainty === null}>
            {t(`ask.${verb}`)}
          </button>
        </>
      )}
    </form>
  );
}

interface FieldsProps {
  readonly item: Item;
  readonly answer: Answer | null;
  readonly onAnswer: (answer: Answer) => void;
  readonly marked: Marked | null;
}

function Field({ item, ...rest }: FieldsProps) {
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'choose-several':
    case 'find-fault':
      return <ChoiceField item={item} {...rest} />;
    case 'direction':
      return <DirectionField item={item} {...rest} />;
    case 'pick-part':
      return <PickField item={item} {...rest} />;
    case 'order':
      return <OrderField item={item} {...rest} />;
    case 'number':
      return <NumberAnswer item={item} {...rest} />;
    case 'match':
      return <MatchField item={item} {...rest} />;
  }
}

/** Verdict, mark, explanation, source, and where to read on. */
export function Told({ item, given }: { readonly item: Item; readonly given: Given }) {
  const { t } = useSpeech();
  const row = resultOf(item, given);
  return (
    <>
      <p className="told-verdict" data-standing={row.standing}>
        <strong>{t(`standing.${row.standing}`)}</strong>{' '}
        <span className="mono">{t('ask.mark', { mark: row.mark, count: Math.abs(row.mark) })}</span>
      </p>
      <Said content={item.explain} />
      <Jumps item={item} />
      <p className="small faint">
        {item.source === 'common practice'
          ? t('ask.common-practice')
          : t('ask.source', { source: item.source })}
      </p>
    </>
  );
}

/** Links to the part, the step, the study and the words concerned. */
export function Jumps({ item }: { readonly item: Item }) {
  const { t } = useSpeech();
  const teller = useTeller();
  const links = useLinks();
  const { parts, step, place, terms } = item.about;
  if (parts.length + terms.length === 0 && step === null && place === null) return null;
  return (
    <p className="jumps">
      {parts.slice(0, 2).map((part) => (
        <button key={part} type="button" className="link" onClick={() => links.showPart(part)}>
          {t('ask.show-part', { part: teller.name(part) })}
        </button>
      ))}
      {step !== null && (
        <button type="button" className="link" onClick={() => links.showStep(step)}>
          {t('ask.show-step')}
        </button>
      )}
      {place !== null && (
        <button type="button" className="link" onClick={() => links.showPlace(place.split('/'))}>
          {t('ask.show-place')}
        </button>
      )}
      {terms.map((term) => (
        <button key={term} type="button" className="link" onClick={() => links.showTerm(term)}>
          {t('ask.show-term', { term: term.replaceAll('-', ' ') })}
        </button>
      ))}
    </p>
  );
}
