/** Nothing of a question that leaves the host before the reveal tells its answer. */
import { describe, expect, it } from 'vitest';
import { sealed, withoutKey } from '../../src/core/classroom';
import { type Item, markAnswer, rightAnswer } from '../../src/core/quiz';
import { ITEMS, wrongAnswer } from './items';

/** The same question with another answer right. */
function otherKey(item: Item): Item {
  switch (item.kind) {
    case 'choose-one':
    case 'read-picture':
    case 'find-fault':
      return { ...item, right: item.options.find(({ id }) => id !== item.right)!.id };
    case 'choose-several':
      return { ...item, right: [item.options[1]!.id] };
    case 'pick-part':
      return { ...item, accept: ['yoke'] };
    case 'order':
      return { ...item, needs: {} };
    case 'number':
      return { ...item, right_si: 7, tolerance_si: 0.5 };
    case 'direction':
      return { ...item, right: 'less' };
    case 'match':
      return { ...item, right: { bolt: 'extra', nut: 'bolt' } };
  }
}

describe.each(ITEMS.map((item): [string, Item] => [item.kind, item]))('%s', (_kind, item) => {
  it('looks the same whichever answer is right', () => {
    expect(withoutKey(sealed(item, 3))).toEqual(withoutKey(sealed(otherKey(item), 3)));
  });
  it('says nothing of explanation, source, reasons, seed or bank', () => {
    const text = JSON.stringify(withoutKey(sealed(item, 3)));
    expect(text).not.toMatch(/KEY-|77123/);
    expect(text).toContain(`Ask ${item.id}`);
  });
  it('is marked under its new ids as before', () => {
    const own = sealed(item, 3);
    expect(markAnswer(own, rightAnswer(own)).right).toBe(true);
    expect(markAnswer(own, wrongAnswer(own)).right).toBe(false);
    expect(own.id).toBe('q3');
  });
});
