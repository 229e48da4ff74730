/** XML as text: elements and attributes with everything that needs it escaped. */
const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Marks that XML 1.0 does not allow at all are left out. */
const forbidden = (letter: string): boolean => {
  const code = letter.codePointAt(0)!;
  return (code < 0x20 && code !== 0x9 && code !== 0xa && code !== 0xd) || code === 0xfffe || code === 0xffff;
};

export const escaped = (text: string): string =>
  [...text].flatMap((letter) => (forbidden(letter) ? [] : (ESCAPES[letter] ?? letter))).join('');

export type Attributes = Readonly<Record<string, string | number | boolean>>;

/** @param inner XML that has been escaped already; left out: an empty element */
export function element(name: string, attributes: Attributes, inner?: readonly string[]): string {
  const said = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escaped(String(value))}"`)
    .join('');
  return inner === undefined ? `<${name}${said}/>` : `<${name}${said}>${inner.join('')}</${name}>`;
}

/** Paragraphs of plain text. */
export const paragraphs = (text: string): readonly string[] =>
  text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => element('p', {}, [escaped(line)]));
