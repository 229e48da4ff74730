/** The stage's frame with its balloons and, where wanted, a title block under it, as one picture. */
import type { StageInk, StageMoment } from '../../../store';

export interface PictureText {
  readonly machine: string;
  /** Label and text of each field. */
  readonly fields: readonly (readonly [string, string])[];
  readonly note: string;
}

const FONT = 'Overpass, sans-serif';

/** Draws over `frame` (which is `scale` times as fine as CSS pixels) and returns the whole picture. */
export function pictureCanvas(
  frame: HTMLCanvasElement,
  moment: StageMoment,
  ink: StageInk,
  scale: number,
  selected: string | null,
  text: PictureText | null,
): HTMLCanvasElement {
  const width = frame.width / scale;
  const height = frame.height / scale;
  const columns = width < 640 ? 1 : 2;
  const rows = text === null ? 0 : Math.ceil(text.fields.length / (2 * columns));
  const block = text === null ? 0 : 44 + rows * 34 + 22;
  const canvas = document.createElement('canvas');
  canvas.width = frame.width;
  canvas.height = Math.round((height + block) * scale);
  const page = canvas.getContext('2d');
  if (page === null) return frame;
  page.fillStyle = ink.paper;
  page.fillRect(0, 0, canvas.width, canvas.height);
  page.drawImage(frame, 0, 0);
  page.scale(scale, scale);
  for (const balloon of moment.balloons)
    drawBalloon(page, balloon, moment.balloonRadius, ink, balloon.id === selected);
  if (text !== null) drawBlock(page, text, ink, width, height, block, 2 * columns);
  return canvas;
}

function drawBalloon(
  page: CanvasRenderingContext2D,
  { x, y, bx, by, item }: StageMoment['balloons'][number],
  radius: number,
  ink: StageInk,
  selected: boolean,
): void {
  const away = Math.hypot(x - bx, y - by) || 1;
  const line = (colour: string, width: number): void => {
    page.strokeStyle = colour;
    page.lineWidth = width;
    page.beginPath();
    page.moveTo(bx + ((x - bx) * radius) / away, by + ((y - by) * radius) / away);
    page.lineTo(x, y);
    page.stroke();
  };
  const round = (cx: number, cy: number, r: number, fill: string, stroke: string, width: number): void => {
    page.beginPath();
    page.arc(cx, cy, r, 0, 2 * Math.PI);
    page.fillStyle = fill;
    page.fill();
    page.strokeStyle = stroke;
    page.lineWidth = width;
    page.stroke();
  };
  const colour = selected ? ink.accent : ink.ink;
  page.globalAlpha = 0.6;
  line(ink.card, 3.2);
  page.globalAlpha = 1;
  line(colour, selected ? 1.6 : 0.9);
  round(x, y, 2.6, colour, ink.card, 0.9);
  round(bx, by, radius, ink.card, colour, selected ? 2 : 1.2);
  page.fillStyle = colour;
  page.font = `600 ${radius * (item > 99 ? 0.82 : 0.98)}px 'Overpass Mono', monospace`;
  page.textAlign = 'center';
  page.textBaseline = 'middle';
  page.fillText(String(item), bx, by + radius * 0.06);
}

function drawBlock(
  page: CanvasRenderingContext2D,
  { machine, fields, note }: PictureText,
  ink: StageInk,
  width: number,
  top: number,
  height: number,
  columns: number,
): void {
  page.fillStyle = ink.card;
  page.fillRect(0, top, width, height);
  page.strokeStyle = ink.ink;
  page.lineWidth = 1.5;
  page.strokeRect(0.75, 0.75, width - 1.5, top + height - 1.5);
  page.beginPath();
  page.moveTo(0, top);
  page.lineTo(width, top);
  page.stroke();
  page.fillStyle = ink.ink;
  page.textAlign = 'left';
  page.textBaseline = 'alphabetic';
  const write = (text: string, x: number, y: number, room: number, font: string): void => {
    page.font = font;
    page.fillText(text, x, y, room);
  };
  write(machine, 14, top + 29, width - 28, `700 21px ${FONT}`);
  const wide = (width - 28) / columns;
  fields.forEach(([label, value], k) => {
    const x = 14 + (k % columns) * wide;
    const y = top + 44 + Math.floor(k / columns) * 34;
    write(label, x, y + 10, wide - 12, `400 11px ${FONT}`);
    write(value, x, y + 26, wide - 12, `600 14px ${FONT}`);
  });
  write(note, 14, top + height - 9, width - 28, `400 11px ${FONT}`);
}
