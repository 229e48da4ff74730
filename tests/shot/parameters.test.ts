/** Parameters: what is refused, how many balls stand for the shot, where the pocket is. */
import { describe, expect, it } from 'vitest';
import {
  ballCount,
  baffleLegs,
  chamberArea,
  createSimulation,
  distanceToLeg,
  fillOf,
  inPocket,
  massOf,
  massOfFill,
  mirrorBaffle,
  P,
  pocketOf,
  validateShot,
  type ShotParameters,
} from '../../src/core/shot';
import { ALDER_ONE } from './worlds';

describe('parameters', () => {
  it('lists every fault at once, by path', () => {
    const bad: ShotParameters = {
      ...ALDER_ONE,
      chamber: { ...ALDER_ONE.chamber, radius_m: -1 },
      friction: { ball: 3, wall: 0.3 },
      restitution: Number.NaN,
      spin_up: {
        kind: 'table',
        points: [
          { time_s: 0.1, frequency_Hz: 1 },
          { time_s: 0.1, frequency_Hz: -2 },
        ],
      },
    };
    const result = validateShot(bad);
    const paths = result.ok ? [] : result.faults.map((f) => f.path);
    for (const path of [
      'chamber.radius_m',
      'friction.ball',
      'restitution',
      'spin_up.points',
      'stop_Hz',
      'spin_up.points[1].time_s',
      'spin_up.points[1].frequency_Hz',
    ])
      expect(paths).toContain(path);
    expect(validateShot(ALDER_ONE).ok).toBe(true);
  });

  it('counts about 8480 balls in the whole chamber, and slices add up', () => {
    const whole = ballCount({ ...ALDER_ONE, slice: { ...ALDER_ONE.slice, depth_m: 1.05 } });
    expect(Math.abs(whole - 8480) / 8480).toBeLessThan(0.015);
    expect(Math.abs(ballCount(ALDER_ONE) - (whole * 0.06) / 1.05)).toBeLessThan(1);
    expect(fillOf(ALDER_ONE.chamber, ALDER_ONE.shot)).toBeCloseTo(0.31, 3);
    const shot = { ...ALDER_ONE.shot, mass_kg: massOfFill(ALDER_ONE.chamber, ALDER_ONE.shot, 0.45) };
    expect(fillOf(ALDER_ONE.chamber, shot)).toBeCloseTo(0.45, 12);
  });

  it('takes the flat face off the chamber', () => {
    expect(chamberArea({ radius_m: 1, eccentricity_m: 0, chord_x_m: 0 })).toBeCloseTo(Math.PI / 2, 12);
    expect(chamberArea({ radius_m: 1, eccentricity_m: 0, chord_x_m: null })).toBeCloseTo(Math.PI, 12);
  });

  it.each([2, 3] as const)(
    'pours the slice its mass, inside the walls and off the baffle, in %d dimensions',
    (dimension) => {
      const p: ShotParameters = {
        ...ALDER_ONE,
        slice: { dimension, depth_m: 0.04, ends: 'walls' },
        chamber: { ...ALDER_ONE.chamber, chord_x_m: -0.05 },
      };
      const { balls } = createSimulation(p).world;
      let mass = 0;
      let deepest = 0;
      for (let i = 0; i < balls.count; i++) {
        const [x, y, z, r] = balls.position.subarray(i * P, i * P + P) as unknown as [
          number,
          number,
          number,
          number,
        ];
        mass += massOf(balls, i);
        deepest = Math.max(deepest, Math.hypot(x - 0.046, y) + r - 0.11, -0.05 + r - x);
        for (const leg of baffleLegs(p.chamber, p.baffle!))
          deepest = Math.max(deepest, 0.004 + r - distanceToLeg(leg, x, y));
        if (dimension === 3) deepest = Math.max(deepest, r - z, z + r - 0.04);
        else expect(z).toBe(0);
      }
      expect(mass / ((60.2 * 0.04) / 1.05)).toBeCloseTo(1, 1);
      expect(deepest).toBeLessThan(1.5e-4);
    },
  );
});

describe('pocket', () => {
  const { chamber, baffle } = ALDER_ONE;
  const pocket = pocketOf(chamber, baffle)!;

  it('lies on the open side of leg 1, from its foot to the near wall', () => {
    const at = (r: number, deg: number): [number, number] => [
      r * Math.cos((deg * Math.PI) / 180),
      r * Math.sin((deg * Math.PI) / 180),
    ];
    expect(inPocket(pocket, ...at(0.09, 90), pocket.lip_m)).toBe(true);
    expect(inPocket(pocket, ...at(0.066, 175), pocket.lip_m)).toBe(true);
    expect(inPocket(pocket, ...at(0.12, 30), pocket.lip_m)).toBe(false);
    expect(inPocket(pocket, ...at(0.14, -20), pocket.lip_m)).toBe(false);
    expect(inPocket(pocket, ...at(0.066, -150), pocket.lip_m)).toBe(false);
    expect(inPocket(pocket, ...at(0.03, 90), pocket.lip_m)).toBe(false);
    expect(pocket.spill_m).toBeCloseTo(0.064, 12);
  });

  it('is the mirror image for the mirrored baffle', () => {
    const mirrored = pocketOf(chamber, mirrorBaffle(baffle!))!;
    for (let x = -0.06; x < 0.16; x += 0.0071)
      for (let y = -0.11; y < 0.11; y += 0.0073)
        expect(inPocket(mirrored, x, -y, pocket.lip_m)).toBe(inPocket(pocket, x, y, pocket.lip_m));
  });
});
