// @vitest-environment jsdom
/**
 * Questions as QTI 3.0: well-formed whatever they say, each response among the choices, kinds without a counterpart
 * named. Structure after the QTI 3.0 information model, from memory; the published schema is not at hand offline.
 */
import { describe, expect, it } from 'vitest';
import { sealed } from '../../src/core/classroom';
import { qtiPackage, type QtiWords } from '../../src/core/records';
import type { Content, Item } from '../../src/core/quiz';
import { ITEMS } from '../classroom/items';

const words: QtiWords = {
  text: (content: Content) =>
    'rich' in content
      ? content.rich
          .map((block) =>
            block.t === 'p' ? block.of.map((each) => ('text' in each ? each.text : '')).join('') : '',
          )
          .join('\n')
      : 'phrase',
  direction: (_set, id) => id,
  language: 'en',
};
const items = ITEMS.map((item, i) => sealed(item, i + 1));
const read = (xml: string): Document => {
  const document = new DOMParser().parseFromString(xml, 'application/xml');
  expect(document.querySelector('parsererror')).toBeNull();
  return document;
};
const { files, unmapped } = qtiPackage(items, words);
const documents = Object.entries(files)
  .filter(([path]) => path !== 'imsmanifest.xml')
  .map(([, xml]) => read(xml));
const all = (document: Document, name: string): Element[] => [...document.getElementsByTagName(name)];
const one = (name: string): Document => documents.find((each) => all(each, name).length > 0)!;

describe('package', () => {
  it('lists every file once, and names what has no counterpart', () => {
    const manifest = read(files['imsmanifest.xml']!);
    expect(
      all(manifest, 'resource')
        .map((each) => each.getAttribute('href'))
        .sort(),
    ).toEqual(
      Object.keys(files)
        .filter((path) => path !== 'imsmanifest.xml')
        .sort(),
    );
    expect(unmapped.map(({ item, why }) => [item.kind, why])).toEqual([['pick-part', 'stage']]);
  });
  it('declares one response in each item, whose right values are among the choices', () => {
    for (const document of documents) {
      expect(document.documentElement.localName).toBe('qti-assessment-item');
      const [declared, ...more] = all(document, 'qti-response-declaration');
      expect(more).toEqual([]);
      const id = declared!.getAttribute('identifier');
      expect(document.querySelectorAll(`[response-identifier="${id}"]`)).toHaveLength(1);
      if (declared!.getAttribute('base-type') === 'float') continue;
      const choices = [
        ...all(document, 'qti-simple-choice'),
        ...all(document, 'qti-simple-associable-choice'),
      ].map((each) => each.getAttribute('identifier')!);
      expect(new Set(choices).size).toBe(choices.length);
      for (const value of all(document, 'qti-correct-response')[0]!.querySelectorAll('qti-value'))
        for (const piece of value.textContent!.split(' ')) expect(choices).toContain(piece);
    }
  });
  it('says numbers in the unit that stands behind the field, with the tolerance around them', () => {
    const document = one('qti-text-entry-interaction');
    expect(all(document, 'qti-correct-response')[0]!.textContent).toBe('123.456');
    expect(all(document, 'qti-equal')[0]!.getAttribute('tolerance')).toBe('1.25 1.25');
    expect(all(document, 'qti-item-body')[0]!.textContent).toContain(' kg');
  });
  it('keeps order and pairs', () => {
    const order = one('qti-order-interaction');
    const texts = new Map(
      all(order, 'qti-simple-choice').map((each) => [each.getAttribute('identifier'), each.textContent]),
    );
    const right = [...all(order, 'qti-correct-response')[0]!.querySelectorAll('qti-value')].map((each) =>
      texts.get(each.textContent),
    );
    expect(right).toEqual(['says first', 'says second', 'says third']);
    expect(all(one('qti-match-interaction'), 'qti-simple-match-set')).toHaveLength(2);
  });
  it('does not map an order that has several right ones', () => {
    const free: Item = {
      ...(items.find((item) => item.kind === 'order') as Extract<Item, { kind: 'order' }>),
      needs: {},
    };
    expect(qtiPackage([free], words).unmapped.map(({ why }) => why)).toEqual(['several-orders']);
  });
  it('escapes whatever a question says', () => {
    const item = {
      ...items[0]!,
      prompt: { rich: [{ t: 'p' as const, of: [{ t: 'text' as const, text: '</p><x a="1">&\u0000' }] }] },
    };
    const [xml] = Object.entries(qtiPackage([item], words).files)
      .find(([path]) => path.startsWith('items/'))!
      .slice(1);
    expect(all(read(xml!), 'qti-prompt')[0]!.textContent).toBe('</p><x a="1">&');
  });
});
