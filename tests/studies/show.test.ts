import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STANDARD_GRAVITY } from '../../src/core/kernel';
import { defaultOptions, isPresent, parseMachine, partJoints, partOf } from '../../src/core/machine';
import {
  driveTorque,
  forceOnEach_N,
  forcePath,
  type ForcePath,
  frameLoads,
  groundPart,
  groupMeetings,
  loadSource,
  movingGroups,
  rollerBasis,
  torqueSource,
  wettedParts,
} from '../../src/core/studies';
import { smallMachine } from '../machine/small-machine';
import { expectWithin, valueOf } from '../mechanics/value-of';
import { machine, masses, solids } from '../models/alder-one';

const small = valueOf(parseMachine([{ name: 'small.yaml', text: smallMachine }])).machine;
const options = defaultOptions(machine);
const present = (id: string): boolean => isPresent(partOf(machine, id), options);
const without =
  (start: string) =>
  (id: string): boolean =>
    present(id) && !id.startsWith(start);
const kinds = (path: ForcePath | null): readonly string[] | undefined =>
  path?.stages.map((stage) => partOf(machine, stage[0]!).kind);

describe('who moves with whom', () => {
  const shows = (part: Parameters<typeof isPresent>[0]): boolean => isPresent(part, options);

  it('every shown part is in one group', () => {
    const groups = movingGroups(machine, shows);
    expect(groups.map((g) => g.moves)).toEqual(['drum', 'exciter', 'spindle', 'frame']);
    const ids = groups.flatMap((g) => g.partIds);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBe(machine.parts.filter(shows).length);
    expect(groups.find((g) => g.moves === 'exciter')!.shaking).toBe(
      groups.find((g) => g.moves === 'exciter')!.partIds.length,
    );
    expect(groups.find((g) => g.moves === 'frame')!.shaking).toBe(0);
  });

  it('groups meet in bearings, motors and rubber', () => {
    const met = new Map(groupMeetings(machine, shows).map((m) => [m.between.join(' '), m.partIds]));
    expect(met.get('drum exciter')).toEqual(['exciter-bearing-left', 'exciter-bearing-right']);
    expect(met.get('drum spindle')).toEqual(['wheel-bearing-inner', 'wheel-bearing-outer']);
    expect(met.get('drum frame')).toEqual(['drive-motor']);
    expect(met.get('spindle frame')).toHaveLength(8);
    expect(met.has('exciter frame')).toBe(false);
  });
});

describe('load path', () => {
  const from = loadSource(machine, masses, present)!;
  const to = groundPart(machine, solids, present)!;

  it('goes from the hitch through each set of isolators to the shell', () => {
    expect([from, to]).toEqual(['hitch-block', 'shell']);
    const left = forcePath(machine, 'load', from, to, without('isolator-right'));
    const right = forcePath(machine, 'load', from, to, without('isolator-left'));
    expect(left!.stages.slice(2).map((stage) => stage[0])).toEqual([
      'side-plate-left',
      'motor-mount-ring',
      'drive-motor',
      'drive-plate',
      'isolator-left-1',
      'head-left',
      'shell',
    ]);
    expect(kinds(right)?.slice(3)).toEqual([
      'bracket',
      'shim-pack',
      'isolator-right',
      'mounting-plate',
      'spindle',
      'wheel-bearing-inner',
      'hub',
      'head-right',
      'drum-shell',
    ]);
    // Eight isolators side by side, each under its own shim pack, and both wheel bearings.
    expect(right!.stages.map((s) => s.length)).toEqual([1, 1, 1, 1, 8, 8, 1, 1, 2, 1, 1, 1]);
    expect(right!.links).toContainEqual(['shim-pack-3', 'isolator-right-3']);
    expect(right!.links).not.toContainEqual(['shim-pack-3', 'isolator-right-4']);
  });

  it('is broken without isolators, or without the bolts that clamp a plane joint', () => {
    const neither = (id: string): boolean => present(id) && !/^isolator-(left|right)-\d/.test(id);
    expect(forcePath(machine, 'load', from, to, neither)).toBeNull();
    const unbolted = (id: string): boolean =>
      present(id) && !id.startsWith('isolator-left') && !id.startsWith('bracket-bolts/');
    expect(forcePath(machine, 'load', from, to, unbolted)).toBeNull();
    expect(forcePath(machine, 'load', from, 'shell', (id) => id !== 'shell')).toBeNull();
  });

  it('weights on both sides make up the frame, and the heavier drive side carries more', () => {
    const basis = rollerBasis(machine, solids, masses)!;
    const loads = frameLoads(machine, masses, basis, from)!;
    const [left, right] = loads.ends as [(typeof loads.ends)[0], (typeof loads.ends)[0]];
    expectWithin(left.force_N + right.force_N, basis.frameMass_kg * STANDARD_GRAVITY, 1e-6);
    expectWithin(left.each_N * 8, left.force_N, 1e-6);
    expect(left.force_N).toBeGreaterThan(right.force_N);
    expectWithin(loads.ground_N, 6900 * STANDARD_GRAVITY, 1e-6);
  });
});

describe('torque path', () => {
  const from = torqueSource(machine, present)!;

  it('goes from the drive motor through the left isolators to the shell, and no other way', () => {
    expect(from).toBe('drive-motor');
    const path = forcePath(machine, 'torque', from, 'shell', present);
    expect(kinds(path)).toEqual(['drive-motor', 'drive-plate', 'isolator-left', 'head-left', 'drum-shell']);
    // The vibration side turns on wheel bearings: no torque comes round by it.
    expect(forcePath(machine, 'torque', from, 'shell', without('isolator-left'))).toBeNull();
    expect(forcePath(machine, 'load', from, 'shell', without('isolator-left'))).not.toBeNull();
  });

  it('knows the torque of the design and what each isolator bears of it', () => {
    const { torque_Nm } = driveTorque(machine)!;
    expectWithin(torque_Nm, 21.7e3, 1);
    const isolators = machine.parts.filter((p) => p.kind === 'isolator-left').map((p) => p.id);
    expectWithin(forceOnEach_N(machine, isolators, torque_Nm)! * 8 * 0.43, torque_Nm, 0.1);
    expect(forceOnEach_N(machine, ['shell'], torque_Nm)).toBeNull();
  });
});

describe('paths in general', () => {
  it('the small machine: welded and bolted ends carry both, a loose foot nothing', () => {
    const all = (): boolean => true;
    for (const kind of ['load', 'torque'] as const) {
      expect(forcePath(small, kind, 'end-left', 'end-right', all)?.stages).toEqual([
        ['end-left'],
        ['tube'],
        ['end-right'],
      ]);
      const unbolted = (id: string): boolean => !id.startsWith('end-bolts/');
      expect(forcePath(small, kind, 'end-left', 'end-right', unbolted)).toBeNull();
      expect(forcePath(small, kind, 'foot-1', 'tube', all)).toBeNull();
    }
    expect(loadSource(small, {}, () => true)).toMatch(/^foot/);
    expect(torqueSource(small, () => true)).toBeNull();
    expect(driveTorque(small)).toBeNull();
  });

  it('there and back are one way reversed, every link is a joint, ends are the ends', () => {
    const ids = machine.parts.filter((p) => present(p.id) && p.unit === p.id).map((p) => p.id);
    const joined = new Set(partJoints(machine).flatMap(({ a, b }) => [`${a} ${b}`, `${b} ${a}`]));
    const id = fc.constantFrom(...ids);
    fc.assert(
      fc.property(id, id, fc.constantFrom('load' as const, 'torque' as const), (from, to, kind) => {
        const there = forcePath(machine, kind, from, to, present);
        const back = forcePath(machine, kind, to, from, present);
        expect(back?.stages.map((s) => [...s].sort()).reverse()).toEqual(
          there?.stages.map((s) => [...s].sort()),
        );
        if (there === null) return;
        expect([there.stages[0], there.stages.at(-1)]).toEqual([[from], [to]]);
        for (const [a, b] of there.links) expect(joined.has(`${a} ${b}`)).toBe(true);
      }),
      { numRuns: 40, seed: 9 },
    );
  });
});

describe('what the oil wets', () => {
  it('is what looks into the exciter case, not the hub’s own space', () => {
    const search = wettedParts(machine, solids, (part) => isPresent(part, options));
    let next = search.next();
    while (next.done !== true) next = search.next();
    const oil = next.value.find((w) => w.fluid === 'exciter-oil')!;
    expect(oil.volume_m3).toBeCloseTo(0.013);
    expect(oil.partIds).toEqual(
      expect.arrayContaining([
        'exciter',
        'exciter-case',
        'bulkhead',
        'seat-ring-left',
        'exciter-bearing-left',
        'exciter-bearing-right',
        'bearing-carrier-right',
        'nose-seal',
        'hub',
        'carrier-bolts-left/01',
      ]),
    );
    for (const dry of [
      'shell',
      'head-left',
      'spindle',
      'wheel-bearing-inner',
      'hub-seal',
      'shot',
      'drive-plate',
    ])
      expect(oil.partIds).not.toContain(dry);
  });

  it('a machine without fluids has nothing wetted', () => {
    expect(wettedParts(small, {}, () => true).next().value).toEqual([]);
  });
});
