/** The number that a person typed; null where it is none. A comma may stand for the decimal point. */
export function typedNumber(typed: string): number | null {
  const text = typed
    .trim()
    .replace(/^([^.,]*),([^.,]*)$/, '$1.$2')
    .replaceAll('\u2212', '-');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}
