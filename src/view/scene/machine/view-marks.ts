/** What the chosen view of the stage does to the parts: a mark on each, which are ghosts, where lines run. */
import { selectViewPicture, type AppState, type ViewPicture } from '../../../store';
import { FLUID_MARKS, type MarkName } from '../../theme/marks';
import type { PartState } from './kind-batch';
import { markState } from './mark-shader';
import type { PartTable } from './part-table';

export interface ViewMarks {
  readonly picture: ViewPicture | null;
  /** State of each part's drawing, 0 for plain. */
  readonly states: Int8Array;
  /** Parts that are there as ghosts only, 1 each. */
  readonly ghosts: Uint8Array;
  readonly links: readonly (readonly [number, number])[];
  /** Parts from which a line goes to the ground. */
  readonly down: readonly number[];
}

/** A ghost on the way of a force: its edges are drawn in full ink. */
export const ON_WAY: PartState = -20;

const MOVES = {
  drum: 'drum',
  exciter: 'exciter',
  spindle: 'spindle',
  frame: 'frame',
  'rear-frame': 'frame',
} as const satisfies Readonly<Record<string, MarkName>>;

export function viewMarks(table: PartTable): (state: AppState) => ViewMarks {
  const none = (picture: ViewPicture | null) => ({
    picture,
    states: new Int8Array(table.count),
    ghosts: new Uint8Array(table.count),
  });
  let last: ViewMarks = { ...none(null), links: [], down: [] };
  const number = (id: string): number => table.indexOf.get(id) ?? -1;
  return (state) => {
    const picture = selectViewPicture(state);
    if (picture === last.picture) return last;
    const { states, ghosts } = none(picture);
    const mark = (ids: readonly string[], name: MarkName): void => {
      for (const id of ids) states[number(id)] = markState(name);
    };
    const links: [number, number][] = [];
    let down: number[] = [];
    switch (picture?.view) {
      case 'moves':
        for (const { moves, partIds } of picture.groups) mark(partIds, MOVES[moves]);
        break;
      case 'shakes':
        mark(picture.inside, 'drum');
        mark(picture.isolators, 'isolator');
        mark(picture.outside, 'frame');
        break;
      case 'wetted':
        ghosts.fill(picture.fluids === null ? 0 : 1);
        picture.fluids?.forEach(({ partIds }, i) => {
          mark(partIds, FLUID_MARKS[i % FLUID_MARKS.length]!);
          for (const id of partIds) ghosts[number(id)] = 0;
        });
        break;
      case 'load':
      case 'torque': {
        ghosts.fill(1);
        const seen = new Set<string>();
        for (const { path } of picture.ways) {
          for (const id of path?.stages.flat() ?? []) states[number(id)] = ON_WAY;
          for (const [a, b] of path?.links ?? [])
            if (!seen.has(`${a} ${b}`)) {
              seen.add(`${a} ${b}`);
              links.push([number(a), number(b)]);
            }
          const end = path?.stages.at(-1)?.[0];
          if (end !== undefined && picture.view === 'load') down = [number(end)];
        }
        break;
      }
      default:
        break;
    }
    last = { picture, states, ghosts, links, down };
    return last;
  };
}
