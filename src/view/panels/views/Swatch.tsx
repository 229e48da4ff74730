/** A mark of the stage as the legend shows it: the same tint and the same pattern. */
import { useId } from 'react';
import { MARKS, type MarkName, type MarkPattern } from '../../theme/marks';

const SIDE = 22;

/** Lines and dots of a pattern within one tile. */
const TILES: Readonly<
  Record<MarkPattern, { readonly size: number; readonly path: string; readonly dots?: boolean }>
> = {
  rising: { size: 8, path: 'M-2 2 2-2M0 8 8 0M6 10 10 6' },
  falling: { size: 8, path: 'M-2 6 2 10M0 0 8 8M6-2 10 2' },
  dots: { size: 7, path: '', dots: true },
  grid: { size: 7, path: 'M0 1H7M1 0V7' },
  level: { size: 6, path: 'M0 2H6' },
  upright: { size: 6, path: 'M2 0V6' },
  plain: { size: 6, path: '' },
};

export function Swatch({ mark }: { readonly mark: MarkName }) {
  const id = useId();
  const { fill, ink, pattern } = MARKS[mark];
  const { size, path, ...tile } = TILES[pattern];
  return (
    <svg className="view-swatch" width={SIDE} height={SIDE} aria-hidden="true">
      <pattern id={id} width={size} height={size} patternUnits="userSpaceOnUse">
        <path d={path} stroke={ink} strokeWidth="2" />
        {tile.dots === true && <circle cx={size / 2} cy={size / 2} r="1.8" fill={ink} />}
      </pattern>
      <rect x="0.5" y="0.5" width={SIDE - 1} height={SIDE - 1} fill={fill} />
      <rect x="0.5" y="0.5" width={SIDE - 1} height={SIDE - 1} fill={`url(#${id})`} stroke="currentColor" />
    </svg>
  );
}
