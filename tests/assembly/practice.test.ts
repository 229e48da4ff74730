/** Practice on Alder One and on random stacks: what is accepted, what is refused and why, and that no run gets stuck. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  askHint,
  buildExplode,
  buildGraph,
  isDone,
  type Laid,
  type Laying,
  layMove,
  leastWalk,
  legalNow,
  placeOf,
  poseOffsetsAt,
  practiceBench,
  practiceMessageKeys,
  type PracticeBench,
  type PracticeState,
  resumePractice,
  savePractice,
  scoreOf,
  startLaid,
  startPractice,
  tryUnit,
  undoMove,
  verifyPlan,
  withTime,
} from '../../src/core/assembly';
import { seededRandom } from '../../src/core/kernel';
import english from '../../src/words/en';
import { machine, masses, solids } from '../models/alder-one';
import { box, synthetic } from './fixture';

const graph = buildGraph(machine, solids, masses);
const bench = practiceBench(machine, graph, 'hash-1');
const ALL = { kind: 'all' } as const;
const RIGHT = { kind: 'unit', unitId: 'exciter-bearing-right' } as const;

/** Makes the moves of a list of leads; throws where one is refused. */
function made(on: PracticeBench, start: PracticeState, leads: readonly string[]): PracticeState {
  return leads.reduce((state, lead) => {
    const next = tryUnit(on, state, lead);
    if (next.outcome.kind === 'refused') throw new Error(`${lead}: ${JSON.stringify(next.outcome.reason)}`);
    return next.state;
  }, start);
}

const leads = (goal: typeof ALL | typeof RIGHT): string[] => leastWalk(bench, goal).moves.map((m) => m.lead);

describe('taking apart', () => {
  it.each([ALL, RIGHT])('accepts the order of the planner to its end: %j', (goal) => {
    const end = made(bench, startPractice(bench, 'take-apart', goal), leads(goal));
    expect(isDone(bench, end)).toBe(true);
    expect(end.wrong).toEqual([]);
    expect(scoreOf(bench, end)).toMatchObject({ lost: 0, extra: 0 });
  });

  it('accepts every unit of a planned step while its step is due', () => {
    let state = startPractice(bench, 'take-apart', ALL);
    for (const step of bench.plan(ALL).steps)
      for (const unit of step.kind === 'remove' ? step.unitIds : []) {
        // It may have left already, as a copy or with its subassembly.
        if (placeOf(bench, state, bench.bodyOf(unit)) !== null) continue;
        const { outcome, state: next } = tryUnit(bench, state, unit);
        expect(outcome.kind, unit).toBe('legal');
        state = next;
      }
  });

  it('never gets stuck in any legal order', () => {
    for (const seed of [1, 2]) {
      const random = seededRandom(seed);
      let state = startPractice(bench, 'take-apart', ALL);
      for (let i = 0; i < 200 && !isDone(bench, state); i++) {
        const open = legalNow(bench, state);
        expect(open.length).toBeGreaterThan(0);
        state = made(bench, state, [open[random.index(open.length)]!]);
      }
      expect(isDone(bench, state)).toBe(true);
    }
  });

  it('says what stands in the way, and counts the same try once', () => {
    const start = startPractice(bench, 'take-apart', ALL);
    const first = tryUnit(bench, start, 'hub-bolts');
    if (first.outcome.kind === 'legal') throw new Error('hub bolts came out under the mounting plate');
    expect(first.outcome.reason.key).toBe('practice.why.covered');
    expect(first.outcome.reason.params?.['by']).toContain('mounting-plate');
    expect(first.outcome.blockers).toContain('mounting-plate');
    expect(first.state.wrong).toHaveLength(1);
    expect(tryUnit(bench, first.state, 'hub-bolts/03').state.wrong).toHaveLength(1);
    const drum = tryUnit(bench, first.state, 'drum');
    expect(drum.outcome).toMatchObject({ counts: false, reason: { key: 'practice.why.stays' } });
    expect(drum.state).toBe(first.state);
  });

  it('takes the nut out with the cartridge, and off it only on the bench after the carrier', () => {
    const due = leads(RIGHT).indexOf('exciter-bearing-right');
    const before = made(bench, startPractice(bench, 'take-apart', ALL), leads(RIGHT).slice(0, due));
    const { outcome, state } = tryUnit(bench, before, 'spindle-nut');
    if (outcome.kind === 'refused') throw new Error(JSON.stringify(outcome.reason));
    expect(outcome.note?.key).toBe('practice.note.together');
    expect(outcome.move.bodies).toContain('hub');
    expect(outcome.before.flatMap((s) => s.supports.map((x) => x.kind))).toContain('guide-bar');
    expect(tryUnit(bench, state, 'spindle-nut').outcome.kind).toBe('refused');
    const split = made(bench, state, ['carrier-bolts-right', 'exciter-bearing-right', 'spindle-nut']);
    expect(split.moves).toHaveLength(state.moves.length + 3);
  });

  it('asks for the crib before the frame loses the drum, and lets the oil out behind the drain plug', () => {
    const start = startPractice(bench, 'take-apart', ALL);
    const plug = tryUnit(bench, start, 'drain-plug').outcome;
    expect(plug).toMatchObject({ kind: 'legal', after: [{ kind: 'drain' }] });
    const bolts = tryUnit(bench, start, 'bracket-bolts').outcome;
    if (bolts.kind === 'refused') throw new Error('bracket bolts refused');
    const crib = bolts.before.flatMap((s) => s.supports).find((s) => s.kind === 'crib');
    expect(crib?.what).toBe('side-plate-right');
    expect(crib?.force_N).toBeGreaterThan(1000);
  });
});

describe('putting together', () => {
  it.each([ALL, RIGHT])('accepts the planner backwards: %j', (goal) => {
    const end = made(bench, startPractice(bench, 'put-together', goal), leads(goal).reverse());
    expect(isDone(bench, end)).toBe(true);
  });

  it('refuses what would shut the way of another', () => {
    const start = startPractice(bench, 'put-together', RIGHT);
    const plate = tryUnit(bench, start, 'mounting-plate').outcome;
    expect(plate.kind).toBe('refused');
    const bolts = tryUnit(bench, start, 'hub-bolts').outcome;
    expect(bolts).toMatchObject({ kind: 'refused', blockers: expect.arrayContaining(['hub']) });
  });
});

describe('hints, time and keeping', () => {
  it('lead to the end in both modes, one part at a time', () => {
    for (const mode of ['take-apart', 'put-together'] as const) {
      let state = startPractice(bench, mode, RIGHT);
      for (let i = 0; i < 60 && !isDone(bench, state); i++) {
        const hint = askHint(bench, state)!;
        expect(hint.hint.level).toBe(1);
        state = made(bench, hint.state, [hint.hint.unitId]);
      }
      expect(isDone(bench, state)).toBe(true);
    }
  });

  it('come in three steps about one part, and cost a point each', () => {
    let state = startPractice(bench, 'take-apart', RIGHT);
    const given = [1, 2, 3, 3].map(() => {
      const next = askHint(bench, state)!;
      state = next.state;
      return next.hint;
    });
    expect(given.map((h) => h.level)).toEqual([1, 2, 3, 3]);
    expect(new Set(given.map((h) => h.unitId)).size).toBe(1);
    expect(scoreOf(bench, withTime(state, 650)).lost).toBe(3 + 2);
  });

  it('come back as they were kept, and are refused with a reason when stale', () => {
    const some = made(bench, startPractice(bench, 'take-apart', RIGHT), leads(RIGHT).slice(0, 7));
    const tried = withTime(tryUnit(bench, some, 'hub').state, 90);
    const text = savePractice(tried);
    const back = resumePractice(bench, text);
    expect(back).toMatchObject({
      ok: true,
      value: { elapsed_s: 90, wrong: tried.wrong, moves: tried.moves },
    });
    const reason = (on: PracticeBench, kept: string): string => {
      const result = resumePractice(on, kept);
      return result.ok ? 'taken' : result.faults[0]!.expected.key;
    };
    expect(reason(practiceBench(machine, graph, 'hash-2'), text)).toBe('practice.saved.model');
    expect(reason(bench, text.replace('"schema_version":1', '"schema_version":9'))).toBe(
      'practice.saved.schema',
    );
    expect(reason(bench, text.slice(0, 40))).toBe('practice.saved.broken');
    expect(reason(bench, text.replace('"mode":"take-apart"', '"mode":"put-together"'))).toBe(
      'practice.saved.moves',
    );
  });

  it('take the last move back', () => {
    const start = startPractice(bench, 'take-apart', RIGHT);
    const one = made(bench, start, ['guard-screws']);
    const back = undoMove(one);
    expect(back).toMatchObject({ moves: [], undone: 1 });
    expect(legalNow(bench, back)).toEqual(legalNow(bench, start));
  });
});

it('has words for every message', () => {
  expect(practiceMessageKeys.filter(({ key }) => !(key in english))).toEqual([]);
});

describe('random boxes', () => {
  it('a box that is refused has no straight way that the independent judge would let pass', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e6 }), (seed) => {
        const random = seededRandom(seed);
        // Boxes of a grid with some left out: each is shut in by its neighbours.
        const cells = Array.from({ length: 27 }, (_, i) => [i % 3, Math.floor(i / 3) % 3, Math.floor(i / 9)]);
        const boxes = cells
          .filter(() => random.next() < 0.7)
          .map(([x, y, z], i) => ({
            id: `box-${i}`,
            solid: box(
              [0.1 * x!, 0.1 * y!, 0.1 * z!],
              [0.1 * x! + 0.098, 0.1 * y! + 0.098, 0.1 * z! + 0.098],
            ),
          }));
        if (boxes.length < 3) return;
        const { machine: m, solids: s, masses: w } = synthetic(boxes);
        const on = practiceBench(m, buildGraph(m, s, w), 'x');
        const start = startPractice(on, 'take-apart', ALL);
        const plan = on.plan(ALL);
        for (const { id } of boxes.slice(0, 6)) {
          const { outcome } = tryUnit(on, start, id);
          if (outcome.kind === 'legal' || !outcome.counts) continue;
          for (let d = 0; d < 6; d++) {
            const direction = [0, 0, 0] as [number, number, number];
            direction[d >> 1] = d & 1 ? -1 : 1;
            const step = {
              ...plan.steps[0]!,
              index: 0,
              kind: 'remove' as const,
              unitIds: [id],
              legs: [{ direction, distance_m: 0.4, kind: 'slide' as const }],
              partLegs: {},
            };
            const verdict = verifyPlan(
              m,
              s,
              w,
              { ...plan, steps: [step] },
              { seed, samples: 40, stride_m: 0.02 },
            );
            expect(verdict.contacts.length).toBeGreaterThan(0);
          }
        }
      }),
      { numRuns: 4, seed: 7 },
    );
  });
});

describe('laying down', () => {
  const explode = buildExplode(machine, solids, masses, bench.plan(ALL));
  const apart = (part: number): number[] =>
    [0, 1, 2].map((k) => explode.groupOffsets[3 * part + k]! + explode.innerOffsets[3 * part + k]!);
  const at = (laid: Laid, part: number): number[] => [...laid.subarray(4 * part, 4 * part + 3)];
  const far = (a: readonly number[], b: readonly number[]): number =>
    Math.hypot(...a.map((x, k) => x - b[k]!));

  /** Makes moves by lead and hands each motion on; what lies where at the end. */
  function laid(
    start: PracticeState,
    next: (state: PracticeState) => string | null,
    each: (laying: Laying, from: Laid, bodies: readonly string[]) => void = () => undefined,
  ): { state: PracticeState; lies: Laid } {
    let state = start;
    let lies = startLaid(bench, explode, state);
    for (let lead = next(state); lead !== null; lead = next(state)) {
      const { outcome, state: after } = tryUnit(bench, state, lead);
      if (outcome.kind === 'refused') throw new Error(`${lead}: ${JSON.stringify(outcome.reason)}`);
      const laying = layMove(bench, explode, state, outcome.move, outcome.step, lies);
      each(laying, lies, outcome.move.bodies);
      lies = laying.to;
      state = after;
    }
    return { state, lies };
  }
  const inTurn = (list: readonly string[]): (() => string | null) => {
    let i = 0;
    return () => list[i++] ?? null;
  };

  it('in the order of the plan ends where the exploded view has every part', () => {
    const { lies } = laid(startPractice(bench, 'take-apart', ALL), inTurn(leads(ALL)));
    machine.parts.forEach((part, i) => expect(far(at(lies, i), apart(i)), part.id).toBeLessThan(1e-3));
  });

  it('starts at rest, ends at rest and moves nothing else, in any order', () => {
    const random = seededRandom(5);
    const pick = (state: PracticeState): string | null => {
      const open = isDone(bench, state) ? [] : legalNow(bench, state);
      return open.length === 0 ? null : open[random.index(open.length)]!;
    };
    laid(startPractice(bench, 'take-apart', ALL), pick, (laying, from, bodies) => {
      const moving = new Set(bodies.flatMap((id) => graph.bodies[bench.bodyOf(id)]!.parts));
      expect(new Set(laying.parts)).toEqual(moving);
      const pose = new Float32Array(from.length);
      poseOffsetsAt(laying.timeline, laying.timeline.duration_s, pose);
      machine.parts.forEach((part, i) => {
        if (!moving.has(i)) expect(at(laying.to, i), part.id).toEqual(at(from, i));
        else {
          expect(far(at(pose, i), [0, 0, 0]), part.id).toBeGreaterThan(0.05);
          const end = at(from, i).map((x, k) => x + at(pose, i)[k]!);
          expect(far(at(laying.to, i), end), part.id).toBeLessThan(1e-6);
        }
      });
    });
  });

  it.each([ALL, RIGHT])('put together, everything is back at its seat: %j', (goal) => {
    const start = startPractice(bench, 'put-together', goal);
    expect(Math.max(...startLaid(bench, explode, start))).toBeGreaterThan(0.5);
    const { lies, state } = laid(start, inTurn(leads(goal).reverse()), (laying) =>
      expect(laying.reverse).toBe(true),
    );
    expect(isDone(bench, state)).toBe(true);
    expect(Math.max(...lies.map(Math.abs))).toBe(0);
  });
});
