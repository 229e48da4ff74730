/** A QR code for a terminal: two rows of squares in one line of half blocks, dark on light whatever the terminal's colours. */
import makeQr from 'qrcode-generator';

const QUIET = 2;
const BLACK_ON_WHITE = '\u001b[30;107m';
const PLAIN = '\u001b[0m';

/** @param colour false where escape codes would be printed as they are */
export function qrLines(text: string, colour: boolean): readonly string[] {
  const qr = makeQr(0, 'M');
  qr.addData(text);
  qr.make();
  const size = qr.getModuleCount();
  const dark = (row: number, column: number): boolean =>
    row >= 0 && column >= 0 && row < size && column < size && qr.isDark(row, column);
  const lines: string[] = [];
  for (let row = -QUIET; row < size + QUIET; row += 2) {
    let line = '';
    for (let column = -QUIET; column < size + QUIET; column++) {
      const [upper, lower] = [dark(row, column), dark(row + 1, column)];
      line += upper ? (lower ? '█' : '▀') : lower ? '▄' : ' ';
    }
    lines.push(colour ? `${BLACK_ON_WHITE}${line}${PLAIN}` : line);
  }
  return lines;
}
