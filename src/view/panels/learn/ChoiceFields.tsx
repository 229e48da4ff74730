/** Answers by choosing: one of several, several, a direction. Native inputs, so keys and switches work by themselves. */
import { useId } from 'react';
import {
  type Answer,
  type Content,
  DIRECTION_SETS,
  type Item,
  type Marked,
  type Option,
} from '../../../core/quiz';
import { useSpeech } from '../../bind';
import { Words } from './Said';

export interface FieldProps<K extends Item['kind']> {
  readonly item: Extract<Item, { kind: K }>;
  readonly answer: Answer | null;
  readonly onAnswer: (answer: Answer) => void;
  /** Set once the answer is told: fields are shut and marked. */
  readonly marked: Marked | null;
}

interface ListProps {
  readonly options: readonly Option[];
  readonly chosen: readonly string[];
  readonly right: readonly string[];
  readonly several: boolean;
  readonly told: boolean;
  readonly legend: string;
  readonly onChoose: (ids: readonly string[]) => void;
}

/** Options as a ruled list. Once told, each says in words whether it is right, and what is mistaken about it. */
export function OptionList(props: ListProps) {
  const { options, chosen, right, several, told, legend, onChoose } = props;
  const { t } = useSpeech();
  const name = useId();
  const choose = (id: string): void =>
    onChoose(several ? (chosen.includes(id) ? chosen.filter((c) => c !== id) : [...chosen, id]) : [id]);
  return (
    <fieldset className="answer-list">
      <legend className="visually-hidden">{legend}</legend>
      {options.map((option) => {
        const isChosen = chosen.includes(option.id);
        const isRight = right.includes(option.id);
        const mistaken = isChosen !== isRight;
        return (
          <div
            key={option.id}
            className="answer-option"
            data-told={told ? (isRight ? 'right' : 'not') : undefined}
          >
            <label className="check">
              <input
                type={several ? 'checkbox' : 'radio'}
                name={name}
                value={option.id}
                checked={isChosen}
                disabled={told}
                onChange={() => choose(option.id)}
              />
              <span>
                <Words content={option.says} />
              </span>
            </label>
            {told && (isRight || isChosen) && (
              <p className="answer-verdict">
                {t(isRight ? (isChosen ? 'ask.chosen-right' : 'ask.not-chosen-right') : 'ask.chosen-wrong')}
              </p>
            )}
            {told && mistaken && option.why !== undefined && (
              <p className="answer-why">
                <Words content={option.why} />
              </p>
            )}
          </div>
        );
      })}
    </fieldset>
  );
}

const chosenIds = (answer: Answer | null): readonly string[] => (answer?.type === 'choice' ? answer.ids : []);

export function ChoiceField(
  props: FieldProps<'choose-one' | 'read-picture' | 'choose-several' | 'find-fault'>,
) {
  const { item, answer, onAnswer, marked } = props;
  const { t } = useSpeech();
  const several = item.kind === 'choose-several';
  return (
    <>
      {item.kind === 'find-fault' && (
        <ul className="answer-shown" aria-label={t('ask.shown')}>
          {item.shown.map((each, i) => (
            <li key={i}>
              <Words content={each} />
            </li>
          ))}
        </ul>
      )}
      <OptionList
        options={item.options}
        chosen={chosenIds(answer)}
        right={several ? item.right : [item.right]}
        several={several}
        told={marked !== null}
        legend={t(several ? 'ask.choose-several' : 'ask.choose-one')}
        onChoose={(ids) => onAnswer({ type: 'choice', ids })}
      />
    </>
  );
}

export function DirectionField({ item, answer, onAnswer, marked }: FieldProps<'direction'>) {
  const { t } = useSpeech();
  const options = DIRECTION_SETS[item.set].map((id): Option => {
    const says: Content = { phrase: `direction.${item.set}.${id}` };
    const why = item.why[id];
    return why === undefined ? { id, says } : { id, says, why };
  });
  return (
    <OptionList
      options={options}
      chosen={chosenIds(answer)}
      right={[item.right]}
      several={false}
      told={marked !== null}
      legend={t('ask.choose-one')}
      onChoose={(ids) => onAnswer({ type: 'choice', ids })}
    />
  );
}
