/** The drawn questions, without their answers: dropped and moved before the class begins. */
import type { DraftQuestion } from '../../../../core/classroom';
import { createClassCommands } from '../../../../store';
import { usePlaceCommands, useSpeech } from '../../../bind';
import { Icon } from '../../common/icons';
import { useTeller } from '../../learn/teller';

export function DraftList({ draft }: { readonly draft: readonly DraftQuestion[] }) {
  const { t } = useSpeech();
  const teller = useTeller();
  const room = usePlaceCommands(createClassCommands);
  const known = draft.filter((each) => each.from === 'practice-bank').length;
  return (
    <section aria-labelledby="class-draft">
      <h3 id="class-draft">{t('class.drawn', { count: draft.length })}</h3>
      {draft.length === 0 && <p>{t('quiz.none')}</p>}
      {known > 0 && <p className="class-notice small">{t('class.known-count', { count: known })}</p>}
      <ol className="class-draft">
        {draft.map(({ item, from }, i) => (
          <li key={`${i}-${teller.text(item.prompt)}`}>
            <div>
              <p>{teller.text(item.prompt)}</p>
              <p className="small faint">
                {[
                  t(`item-kind.${item.kind}`),
                  t(`class.difficulty.${item.difficulty}`),
                  t(`class.from.${from}`),
                ].join(', ')}
              </p>
            </div>
            <span className="class-draft-buttons">
              <button
                type="button"
                className="button icon"
                aria-label={t('class.draft-up', { number: i + 1 })}
                disabled={i === 0}
                onClick={() => room.order({ type: 'shift', number: i, by: -1 })}
              >
                <Icon name="up" />
              </button>
              <button
                type="button"
                className="button icon"
                aria-label={t('class.draft-down', { number: i + 1 })}
                disabled={i === draft.length - 1}
                onClick={() => room.order({ type: 'shift', number: i, by: 1 })}
              >
                <Icon name="down" />
              </button>
              <button
                type="button"
                className="button narrow"
                aria-label={t('class.draft-drop', { number: i + 1 })}
                onClick={() => room.order({ type: 'drop', number: i })}
              >
                {t('class.drop')}
              </button>
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
