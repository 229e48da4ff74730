/** Answer by giving each left side its right side, from native lists. */
import { useId } from 'react';
import { useSpeech } from '../../bind';
import type { FieldProps } from './ChoiceFields';
import { useTeller } from './teller';

export function MatchField({ item, answer, onAnswer, marked }: FieldProps<'match'>) {
  const { t } = useSpeech();
  const teller = useTeller();
  const id = useId();
  const pairs = answer?.type === 'match' ? answer.pairs : {};
  return (
    <ul className="answer-match">
      {item.left.map((left, i) => {
        const chosen = pairs[left.id] ?? '';
        const right = item.right[left.id] ?? '';
        const wrong = marked?.wrong.includes(left.id) === true;
        const says = (optionId: string): string => {
          const option = item.options.find((each) => each.id === optionId);
          return option === undefined ? '' : teller.text(option.says);
        };
        return (
          <li key={left.id} data-told={marked === null ? undefined : wrong ? 'not' : 'right'}>
            <label htmlFor={`${id}${i}`} className="field-name">
              {teller.text(left.says)}
            </label>
            <select
              id={`${id}${i}`}
              value={chosen}
              disabled={marked !== null}
              onChange={(event) =>
                onAnswer({ type: 'match', pairs: { ...pairs, [left.id]: event.currentTarget.value } })
              }
            >
              <option value="">{t('ask.match-none')}</option>
              {item.options.map((option) => (
                <option key={option.id} value={option.id}>
                  {teller.text(option.says)}
                </option>
              ))}
            </select>
            {chosen !== '' && <p className="small match-full">{says(chosen)}</p>}
            {wrong && <p className="answer-verdict">{t('ask.match-right', { text: says(right) })}</p>}
            {marked !== null && !wrong && <p className="answer-verdict">{t('ask.chosen-right')}</p>}
          </li>
        );
      })}
    </ul>
  );
}
