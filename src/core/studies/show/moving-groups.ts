/** Who moves with whom: parts by what carries them round, and where two of these meet. */
import { type Machine, type MovesWith, type Part, partJoints, partOf } from '../../machine';

export interface MovingGroup {
  readonly moves: MovesWith;
  readonly partIds: readonly string[];
  /** How many of them shake with the drum, and how many are the rubber between. */
  readonly shaking: number;
  readonly isolators: number;
}

/** Parts by which two groups are joined and yet move against each other: bearings, splines, motors, rubber. */
export interface GroupMeeting {
  readonly between: readonly [MovesWith, MovesWith];
  readonly partIds: readonly string[];
}

const ORDER: readonly MovesWith[] = ['drum', 'exciter', 'spindle', 'frame', 'rear-frame'];

/** Builders of what is made to move within itself: two groups meet in it, wherever it is counted. */
const MOVES_WITHIN = new Set([
  'spherical-roller-bearing',
  'tapered-roller-bearing',
  'isolator',
  'radial-piston-motor',
  'axial-motor',
]);

/** Groups that have at least one part for which `shows` holds, in the order drum to frame. */
export function movingGroups(machine: Machine, shows: (part: Part) => boolean): readonly MovingGroup[] {
  return ORDER.flatMap((moves) => {
    const parts = machine.parts.filter((part) => part.movesWith === moves && shows(part));
    if (parts.length === 0) return [];
    const count = (side: Part['side']): number => parts.filter((part) => part.side === side).length;
    return [
      {
        moves,
        partIds: parts.map((part) => part.id),
        shaking: count('vibrating'),
        isolators: count('isolator'),
      },
    ];
  });
}

/** Where shown groups meet, from the machine's joints: a part made to move within itself, else both that are joined. */
export function groupMeetings(machine: Machine, shows: (part: Part) => boolean): readonly GroupMeeting[] {
  const found = new Map<string, { between: [MovesWith, MovesWith]; partIds: Set<string> }>();
  for (const { a, b } of partJoints(machine)) {
    const pair = [partOf(machine, a), partOf(machine, b)] as const;
    const [first, second] = pair;
    if (first.movesWith === second.movesWith || !shows(first) || !shows(second)) continue;
    const between = [first.movesWith, second.movesWith].sort(
      (p, q) => ORDER.indexOf(p) - ORDER.indexOf(q),
    ) as [MovesWith, MovesWith];
    const entry = found.get(between.join()) ?? { between, partIds: new Set<string>() };
    found.set(between.join(), entry);
    const moving = pair.filter((part) => MOVES_WITHIN.has(machine.kinds[part.kind]!.params.builder));
    for (const part of moving.length > 0 ? moving : pair) entry.partIds.add(part.id);
  }
  return [...found.values()].map(({ between, partIds }) => ({ between, partIds: [...partIds] }));
}
