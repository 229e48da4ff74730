/** Tables as files for a spreadsheet: comma separated, one head line (RFC 4180). */
export type CsvCell = string | number | boolean | null;

const cell = (value: CsvCell): string => {
  if (value === null) return '';
  const text = typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

export const csvText = (head: readonly string[], rows: readonly (readonly CsvCell[])[]): string =>
  [head, ...rows].map((row) => row.map(cell).join(',')).join('\r\n') + '\r\n';

/** Hands a text to the browser as a file to keep. */
export const saveText = (name: string, text: string, type = 'text/csv'): void =>
  saveFile(name, new Blob([text], { type: `${type};charset=utf-8` }));

/** Hands a file to the browser to keep. */
export function saveFile(name: string, file: Blob): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
