/** Answer by putting cards in order: each has a button up and one down, so that keys, taps and switches do the same. */
import { useEffect, useRef } from 'react';
import { useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import type { FieldProps } from './ChoiceFields';
import { useTeller } from './teller';

export function OrderField({ item, answer, onAnswer, marked }: FieldProps<'order'>) {
  const { t } = useSpeech();
  const teller = useTeller();
  const commands = useCommands();
  const list = useRef<HTMLOListElement>(null);
  const focus = useRef<{ id: string; up: boolean } | null>(null);
  const ids = answer?.type === 'order' ? answer.ids : item.cards.map((card) => card.id);
  const told = marked !== null;
  // The button that was pressed keeps the focus, wherever its card went.
  useEffect(() => {
    const wish = focus.current;
    focus.current = null;
    if (wish === null) return;
    const card = [...(list.current?.querySelectorAll<HTMLElement>('[data-card]') ?? [])].find(
      (each) => each.dataset['card'] === wish.id,
    );
    const buttons = [...(card?.querySelectorAll<HTMLButtonElement>('button') ?? [])];
    const first = buttons[wish.up ? 0 : 1];
    (first?.disabled === true ? buttons.find((b) => !b.disabled) : first)?.focus();
  });
  const name = (id: string): string => teller.text(item.cards.find((card) => card.id === id)!.says);
  const move = (at: number, by: -1 | 1): void => {
    const next = [...ids];
    [next[at], next[at + by]] = [next[at + by]!, next[at]!];
    focus.current = { id: ids[at]!, up: by < 0 };
    onAnswer({ type: 'order', ids: next });
    commands.announce('ask.moved', { card: name(ids[at]!), place: at + by + 1, count: ids.length });
  };
  return (
    <ol className="answer-order" ref={list} aria-label={t('ask.order')}>
      {ids.map((id, at) => (
        <li key={id} data-card={id} data-told={told && marked.wrong.includes(id) ? 'not' : undefined}>
          <span className="mono order-place" aria-hidden="true">
            {at + 1}
          </span>
          <span>{name(id)}</span>
          <span className="order-buttons">
            <button
              type="button"
              className="button icon"
              aria-label={t('ask.up', { card: name(id) })}
              disabled={told || at === 0}
              onClick={() => move(at, -1)}
            >
              <Icon name="up" />
            </button>
            <button
              type="button"
              className="button icon"
              aria-label={t('ask.down', { card: name(id) })}
              disabled={told || at === ids.length - 1}
              onClick={() => move(at, 1)}
            >
              <Icon name="down" />
            </button>
          </span>
          {told && marked.wrong.includes(id) && marked.missing.length > 0 && (
            <p className="answer-why">
              {t('ask.too-early', {
                card: name(id),
                missing: new Intl.ListFormat(teller.speech.language).format(marked.missing.map(name)),
              })}
            </p>
          )}
        </li>
      ))}
    </ol>
  );
}
