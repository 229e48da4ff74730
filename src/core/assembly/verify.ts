/**
 * The judge of plans: replays every motion in steps of a few millimetres and looks for points of one solid inside
 * another. It knows nothing of the blocking graph; it samples surfaces at random (seeded) instead of along grid
 * lines, and asks for depth: a point counts only when it is still inside after being drawn back under its own
 * surface by the pair's allowance (facets, and the declared fit).
 */
import { seededRandom } from '../kernel';
import type { Machine } from '../machine';
import { insideTest, type InsideTest } from './inside';
import type { Leg, Plan } from './types';
import { allowances, anyInside, boxesMeet, isFlexible, type Samples, sampleSurface } from './contact';
import { buildWorld, type Masses, type Solids, type World } from './world';

export interface VerifyOptions {
  readonly seed?: number;
  /** Points on the surface of each part. */
  readonly samples?: number;
  /** Greatest travel between two looks, metres. */
  readonly stride_m?: number;
  /** Depth that facets of mating surfaces may show, metres. */
  readonly allowance_m?: number;
}

export interface Contact {
  readonly step: number;
  readonly partId: string;
  readonly otherId: string;
  readonly leg: number;
  /** Travel along the leg at which it was seen. */
  readonly travel_m: number;
}

export interface Verdict {
  readonly contacts: readonly Contact[];
  readonly positionsLookedAt: number;
  readonly pointsAsked: number;
}

/** Replays the plan; an empty list of contacts means that it holds. Assembly is the same motion run backwards. */
export function verifyPlan(
  machine: Machine,
  solids: Solids,
  masses: Masses,
  plan: Plan,
  options: VerifyOptions = {},
): Verdict {
  const { seed = 1, samples = 160, stride_m = 0.008, allowance_m = 0.0006 } = options;
  const world = buildWorld(machine, solids, masses);
  const random = seededRandom(seed);
  const tests: (InsideTest | null)[] = world.meshes.map(() => null);
  const points: (Samples | null)[] = world.meshes.map((mesh) =>
    mesh === null ? null : sampleSurface(mesh, samples, random),
  );
  const test = (part: number): InsideTest =>
    (tests[part] ??= insideTest(
      world.meshes[part]!,
      world.partBounds.subarray(part * 6, part * 6 + 6) as Float64Array,
    ));
  const partsOf = unitParts(machine, world);
  const allow = allowances(world, allowance_m);
  const gone = new Set<number>();
  const contacts: Contact[] = [];
  let positionsLookedAt = 0;
  let pointsAsked = 0;

  for (const step of plan.steps) {
    if (step.kind !== 'remove' && step.kind !== 'bench') continue;
    const moving = step.unitIds.flatMap((id) => partsOf.get(id) ?? []);
    const own = new Set(moving);
    const others =
      step.kind === 'bench'
        ? step.fromIds.flatMap((id) => bodyParts(world, id)).filter((p) => !own.has(p))
        : [...world.meshes.keys()].filter((p) => world.meshes[p] !== null && !own.has(p) && !gone.has(p));
    for (const part of moving) {
      if (world.meshes[part] === null || isFlexible(world, part)) continue;
      const legs = step.partLegs[machine.parts[part]!.id] ?? step.legs;
      const seen = new Set<number>();
      walk(legs, stride_m, (leg, travel, shift) => {
        positionsLookedAt++;
        for (const other of others) {
          if (seen.has(other) || isFlexible(world, other)) continue;
          if (!boxesMeet(world, part, other, shift)) continue;
          const depth = allow(part, other);
          if (depth === Infinity) continue;
          const forward = anyInside(points[part]!, test(other), shift, depth);
          const back: [number, number, number] = [-shift[0], -shift[1], -shift[2]];
          const backward = forward.hit ? forward : anyInside(points[other]!, test(part), back, depth);
          pointsAsked += forward.asked + (forward.hit ? 0 : backward.asked);
          if (!backward.hit) continue;
          seen.add(other);
          contacts.push({
            step: step.index,
            partId: machine.parts[part]!.id,
            otherId: machine.parts[other]!.id,
            leg,
            travel_m: travel,
          });
        }
      });
    }
    if (step.kind === 'remove') for (const p of moving) gone.add(p);
  }
  return { contacts, positionsLookedAt, pointsAsked };
}

function unitParts(machine: Machine, world: World): Map<string, number[]> {
  const number = new Map(machine.parts.map((p, i) => [p.id, i]));
  return new Map(
    machine.units.map((u) => [
      u.id,
      u.partIds.map((id) => number.get(id)!).filter((p) => (world.bodyOfPart[p] ?? -1) >= 0),
    ]),
  );
}

const bodyParts = (world: World, id: string): readonly number[] =>
  world.bodies.find((b) => b.id === id)?.parts ?? [];

function walk(
  legs: readonly Leg[],
  stride_m: number,
  look: (leg: number, travel_m: number, shift: [number, number, number]) => void,
): void {
  const at: [number, number, number] = [0, 0, 0];
  legs.forEach((leg, i) => {
    const count = Math.max(1, Math.ceil(leg.distance_m / stride_m));
    for (let n = 1; n <= count; n++) {
      const travel = (leg.distance_m * n) / count;
      look(i, travel, [
        at[0] + leg.direction[0] * travel,
        at[1] + leg.direction[1] * travel,
        at[2] + leg.direction[2] * travel,
      ]);
    }
    for (let k = 0; k < 3; k++) at[k] = at[k]! + leg.direction[k]! * leg.distance_m;
  });
}
