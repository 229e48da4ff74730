/** A drawn picture as vector lines: heavy for what the steps are about, thin around it, balloons with leaders. */
import { useMemo } from 'react';
import { BALLOON_RADIUS, type DrawnPicture } from './draw-picture';

const path = (lines: readonly (readonly number[])[]): string =>
  lines.map((line) => `M${line.map((v) => v.toFixed(1)).join(' ')}`).join('');

export function PictureSvg({ picture, label }: { readonly picture: DrawnPicture; readonly label: string }) {
  const { drawing, balloons } = picture;
  const paths = useMemo(() => {
    const of = (role: 'main' | 'other'): string =>
      path(drawing.lines.filter((l) => l.role === role).flatMap((l) => l.lines));
    return { main: of('main'), other: of('other'), ways: path(drawing.paths) };
  }, [drawing]);
  return (
    <svg viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={label}>
      <g fill="none" stroke="#000" strokeLinejoin="round" strokeLinecap="round">
        <path d={paths.other} strokeWidth="1" stroke="#555" />
        <path d={paths.main} strokeWidth="2.2" />
        <path d={paths.ways} strokeWidth="1.2" strokeDasharray="16 4 3 4 3 4" strokeLinecap="butt" />
      </g>
      {balloons.map((b) => {
        const length = Math.hypot(b.x - b.bx, b.y - b.by) || 1;
        const edge = BALLOON_RADIUS / length;
        return (
          <g key={b.id} stroke="#000" fill="#fff">
            <path
              d={`M${b.bx + (b.x - b.bx) * edge} ${b.by + (b.y - b.by) * edge}L${b.x} ${b.y}`}
              strokeWidth="1.2"
            />
            <circle cx={b.x} cy={b.y} r="3.4" fill="#000" stroke="none" />
            <circle cx={b.bx} cy={b.by} r={BALLOON_RADIUS} strokeWidth="1.4" />
            <text
              x={b.bx}
              y={b.by}
              dy="0.36em"
              textAnchor="middle"
              fontSize="25"
              fontWeight="600"
              fill="#000"
              stroke="none"
            >
              {b.item}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
