import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../src/words';

/** `{{name}}` and links of a text, sorted: what every language must carry over. */
const marks = (text: string): readonly string[] =>
  [...text.matchAll(/\{\{[^}]*\}\}|\]\([^)]*\)/g)].map((match) => match[0]).sort();

const english = await LANGUAGES['en']!.load();
const others = Object.keys(LANGUAGES).filter((language) => language !== 'en');

it('offers Spanish beside English', () => {
  expect(others).toContain('es');
});

describe.each(others)('%s', (language) => {
  it('has every text, with the placeholders of the English one, and no text that English lacks', async () => {
    const words = await LANGUAGES[language]!.load();
    expect(Object.keys(english).filter((key) => (words[key] ?? '').trim() === '')).toEqual([]);
    expect(Object.keys(words).filter((key) => english[key] === undefined)).toEqual([]);
    const differ = Object.entries(english).filter(
      ([key, text]) => marks(text).join() !== marks(words[key] ?? '').join(),
    );
    expect(differ.map(([key]) => key)).toEqual([]);
  });

  it('leaves no sentence in English', async () => {
    const words = await LANGUAGES[language]!.load();
    const bare = (text: string): string => text.replace(/\{\{[^}]*\}\}/g, ' ');
    const same = Object.entries(english).filter(
      ([key, text]) => words[key] === text && /[a-z]+ [a-z]+ [a-z]+/i.test(bare(text)),
    );
    expect(same.map(([key]) => key)).toEqual([]);
  });
});
