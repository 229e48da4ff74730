/** An answer in words, for results and for the key of a paper sheet. */
import type { Answer, Content, Item, Option } from '../../../core/quiz';
import type { Teller } from './teller';

export function answerWords(teller: Teller, item: Item, answer: Answer): string {
  const { speech } = teller;
  const list = (words: readonly string[]): string =>
    new Intl.ListFormat(speech.language, { type: 'conjunction' }).format(words);
  const among = (options: readonly Option[], id: string): string => {
    const option = options.find((each) => each.id === id);
    return option === undefined ? '–' : teller.text(option.says);
  };
  switch (answer.type) {
    case 'choice':
      if (item.kind === 'direction')
        return list(answer.ids.map((id) => speech.t(`direction.${item.set}.${id}`)));
      return 'options' in item ? list(answer.ids.map((id) => among(item.options, id))) : '–';
    case 'part':
      return teller.name(answer.partId);
    case 'order':
      return item.kind === 'order' ? answer.ids.map((id) => among(item.cards, id)).join(' → ') : '–';
    case 'number':
      return item.kind === 'number' ? speech.quantity(answer.si, item.quantity) : '–';
    case 'match':
      if (item.kind !== 'match') return '–';
      return item.left
        .map((left) => `${teller.text(left.says)}: ${among(item.options, answer.pairs[left.id] ?? '')}`)
        .join('; ');
  }
}

/** What is mistaken about an answer: the words of its wrong options. */
export function mistakes(item: Item, answer: Answer): readonly Content[] {
  if (answer.type !== 'choice') return [];
  if (item.kind === 'direction')
    return answer.ids.flatMap((id) => (id === item.right ? [] : (item.why[id] ?? [])));
  if (item.kind === 'match' || !('options' in item)) return [];
  const right: readonly string[] = item.kind === 'choose-several' ? item.right : [item.right];
  return item.options.flatMap(({ id, why }) =>
    why !== undefined && answer.ids.includes(id) !== right.includes(id) ? [why] : [],
  );
}
