/** Where a path of a JSON text stands, so that a fault in a file can name its line. */

/**
 * Line (from 1) of the value at `path`, or of the nearest value above it that is there; undefined for a text that is no
 * JSON. The text is walked once, nothing is built.
 */
export function lineInJson(text: string, path: readonly PropertyKey[]): number | undefined {
  let at = 0;
  const blank = (): void => {
    while (at < text.length && /\s/.test(text[at]!)) at++;
  };
  const word = (): string => {
    const start = at++;
    while (at < text.length && text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
    at++;
    return JSON.parse(text.slice(start, at)) as string;
  };
  let found = -1;
  /** `deep`: how much of the path led here; -1 aside of it. */
  const value = (deep: number): void => {
    blank();
    if (deep >= 0) found = at;
    const open = text[at];
    if (open === '"') {
      word();
      return;
    }
    if (open !== '{' && open !== '[') {
      while (at < text.length && !/[,\]}\s]/.test(text[at]!)) at++;
      return;
    }
    at++;
    for (let i = 0; ; i++) {
      blank();
      if (at >= text.length) throw new Error('json-lines: ends too early');
      if (text[at] === '}' || text[at] === ']') {
        at++;
        return;
      }
      if (text[at] === ',') {
        at++;
        blank();
      }
      let key: PropertyKey = i;
      if (open === '{') {
        key = word();
        blank();
        at++;
      }
      value(deep >= 0 && deep < path.length && String(path[deep]) === String(key) ? deep + 1 : -1);
    }
  };
  try {
    value(0);
  } catch {
    return undefined;
  }
  return found < 0 ? undefined : lineAt(text, found);
}

/** Line (from 1) of a place in a text. */
export function lineAt(text: string, position: number): number {
  let line = 1;
  for (let i = text.indexOf('\n'); i >= 0 && i < position; i = text.indexOf('\n', i + 1)) line++;
  return line;
}
