/** For a class without phones: hands are raised for each answer, and the instructor enters how many. */
import { useId, useState } from 'react';
import { handIds, LETTERED_KINDS } from '../../../../core/classroom';
import type { Item } from '../../../../core/quiz';
import { createClassCommands } from '../../../../store';
import { usePlaceCommands, useSpeech } from '../../../bind';
import { answerWords } from '../../learn/answer-words';
import { useTeller } from '../../learn/teller';
import { letter } from '../../quiz/PaperSheet';

interface Props {
  readonly number: number;
  readonly item: Item;
  readonly hands: Readonly<Record<string, number>> | null;
}

export function HostHands({ number, item, hands }: Props) {
  const { t } = useSpeech();
  const teller = useTeller();
  const room = usePlaceCommands(createClassCommands);
  const id = useId();
  const [counts, setCounts] = useState<Readonly<Record<string, number>>>(hands ?? {});
  const lettered = LETTERED_KINDS.includes(item.kind);
  const name = (each: string, i: number): string =>
    lettered
      ? `${letter(i)} ${answerWords(teller, item, { type: 'choice', ids: [each] })}`
      : t(each === 'right' ? 'class.hands-right' : 'class.hands-wrong');
  return (
    <details className="class-hands no-print">
      <summary>{t(hands === null ? 'class.hands' : 'class.hands-counted')}</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const given = Object.entries(counts).filter(([, count]) => count > 0);
          room.order({
            type: 'hands',
            question: number,
            hands: given.length === 0 ? null : Object.fromEntries(given),
          });
        }}
      >
        {handIds(item).map((each, i) => (
          <p key={each} className="class-hand">
            <label htmlFor={`${id}-${each}`}>{name(each, i)}</label>
            <input
              id={`${id}-${each}`}
              type="number"
              min={0}
              max={300}
              className="text-field mono"
              value={counts[each] ?? ''}
              onChange={(event) => {
                const count = event.currentTarget.valueAsNumber;
                setCounts({ ...counts, [each]: Number.isFinite(count) ? Math.max(0, Math.floor(count)) : 0 });
              }}
            />
          </p>
        ))}
        <button type="submit" className="button">
          {t('class.hands-enter')}
        </button>
      </form>
    </details>
  );
}
