import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  buildSettledChamber,
  exciterState,
  type BaffleSection,
  type ChamberSection,
  type Direction,
} from '../../src/core/mechanics';
import { BAFFLE, CHAMBER, mirrored, SHOT } from './alder-exciter';

const SETTINGS = { seed: 20260301, numRuns: 40 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const side = fc.constantFrom<1 | -1>(1, -1);
const direction = fc.constantFrom<Direction>('low', 'high');

const anyChamber = fc
  .record({ radius_m: real(0.05, 0.2), e: real(0.02, 1.2), chord: fc.option(real(-0.95, 0.5)) })
  .map(({ radius_m, e, chord }): ChamberSection => ({
    radius_m,
    eccentricity_m: e * radius_m,
    chord_x_m: chord === null ? null : (e + chord) * radius_m,
  }));
/** Lengths as shares of the chamber's radius. */
const anyBaffle = fc.record({
  psi_deg: real(-180, 180),
  beta_deg: real(-50, 50),
  leg1_m: real(0.1, 2),
  leg2_m: fc.oneof(fc.constant(0), real(0.05, 1)),
  side,
  pocket_side: side,
  half_thickness_m: real(0.005, 0.08),
});
const anyCase = fc
  .record({ chamber: anyChamber, baffle: anyBaffle, fill: real(0.02, 0.98), direction })
  .map((c) => ({
    ...c,
    baffle: scaled(c.baffle, c.chamber.radius_m),
  }));

const scaled = (baffle: BaffleSection, s: number): BaffleSection => ({
  ...baffle,
  leg1_m: baffle.leg1_m * s,
  leg2_m: baffle.leg2_m * s,
  half_thickness_m: baffle.half_thickness_m * s,
});

describe('settled shot, any chamber', () => {
  it('mirrored: the same areas and radii, the moment mirrored', () => {
    fc.assert(
      fc.property(anyCase, ({ chamber, baffle, fill, direction }) => {
        const one = buildSettledChamber(chamber, baffle);
        const two = buildSettledChamber(chamber, mirrored(baffle));
        const size = chamber.radius_m;
        expect(two.pocket.state).toBe(one.pocket.state);
        if (one.spillRadius_m !== null)
          expect(two.spillRadius_m! / size).toBeCloseTo(one.spillRadius_m / size, 9);
        const a = one.settle(fill * one.freeArea_m2, direction);
        const b = two.settle(fill * one.freeArea_m2, direction);
        expect(b.captureFraction!).toBeCloseTo(a.captureFraction!, 8);
        expect(b.moment_m3[0] / size ** 3).toBeCloseTo(a.moment_m3[0] / size ** 3, 8);
        expect(b.moment_m3[1] / size ** 3).toBeCloseTo(-a.moment_m3[1] / size ** 3, 8);
      }),
      SETTINGS,
    );
  });

  it('lengths times s: areas times s^2, moments times s^3', () => {
    fc.assert(
      fc.property(anyCase, real(0.2, 5), ({ chamber, baffle, fill, direction }, s) => {
        const one = buildSettledChamber(chamber, baffle);
        const two = buildSettledChamber(
          {
            radius_m: chamber.radius_m * s,
            eccentricity_m: chamber.eccentricity_m * s,
            chord_x_m: chamber.chord_x_m === null ? null : chamber.chord_x_m * s,
          },
          scaled(baffle, s),
        );
        expect(two.freeArea_m2 / (one.freeArea_m2 * s ** 2)).toBeCloseTo(1, 9);
        const a = one.settle(fill * one.freeArea_m2, direction);
        const b = two.settle(fill * one.freeArea_m2 * s ** 2, direction);
        const unit = chamber.radius_m ** 3;
        for (const i of [0, 1] as const) {
          expect(b.moment_m3[i] / s ** 3 / unit).toBeCloseTo(a.moment_m3[i] / unit, 8);
        }
      }),
      SETTINGS,
    );
  });

  it('keeps every bit of shot and gives no number that is not one', () => {
    fc.assert(
      fc.property(anyCase, ({ chamber, baffle, fill, direction }) => {
        const ready = buildSettledChamber(chamber, baffle);
        const area = fill * ready.freeArea_m2;
        const shot = ready.settle(area, direction);
        expect(shot.main.area_m2 + shot.pocket.area_m2).toBeCloseTo(area, 14);
        expect(shot.moment_m3.every(Number.isFinite)).toBe(true);
        // no centroid lies outside the chamber
        const arm = Math.hypot(shot.moment_m3[0] / area - chamber.eccentricity_m, shot.moment_m3[1] / area);
        expect(arm).toBeLessThan(chamber.radius_m);
        if (shot.pocket.surface_m !== null && ready.spillRadius_m! > 0 && direction === 'low') {
          expect(shot.pocket.surface_m).toBeGreaterThan(ready.spillRadius_m! * (1 - 1e-12));
        }
      }),
      SETTINGS,
    );
  });

  it('more shot: both surfaces move inwards, the captured share never grows, the captured area never shrinks', () => {
    fc.assert(
      fc.property(anyCase, real(1, 3), ({ chamber, baffle, fill }, factor) => {
        const ready = buildSettledChamber(chamber, baffle);
        const little = ready.settle((fill / 3) * ready.freeArea_m2, 'low');
        const more = ready.settle((fill / 3) * factor * ready.freeArea_m2, 'low');
        expect(more.captureFraction!).toBeLessThan(little.captureFraction! + 1e-9);
        expect(more.pocket.area_m2).toBeGreaterThan(little.pocket.area_m2 - 1e-15);
        const surface = (shot: typeof little) => shot.main.surface_m ?? Infinity;
        expect(surface(more)).toBeLessThanOrEqual(surface(little) * (1 + 1e-12));
      }),
      SETTINGS,
    );
  });

  it('without a baffle both directions are one', () => {
    fc.assert(
      fc.property(anyChamber, real(0, 1), (chamber, fill) => {
        const ready = buildSettledChamber(chamber, null);
        const area = fill * ready.freeArea_m2;
        expect(ready.settle(area, 'low')).toEqual(ready.settle(area, 'high'));
      }),
      SETTINGS,
    );
  });

  it('without a baffle the moment grows with the fill up to the full ring, then stays', () => {
    // a ring that is free all round adds nothing: cos integrates to nothing over a turn
    fc.assert(
      fc.property(real(0.05, 0.2), real(0.05, 0.95), real(0.01, 0.99), (radius_m, e, fill) => {
        const ready = buildSettledChamber({ radius_m, eccentricity_m: e * radius_m, chord_x_m: null }, null);
        const at = (share: number) =>
          ready.settle(share * ready.freeArea_m2, 'high').moment_m3[0] / radius_m ** 3;
        const inner = (1 - e) ** 2;
        expect(at(fill * (1 - inner))).toBeLessThan(at(1 - inner));
        expect(at(1 - inner + fill * inner)).toBeCloseTo(Math.PI * e, 9);
      }),
      SETTINGS,
    );
  });
});

describe('the exciter of the demonstration roller, by fill', () => {
  const ready = buildSettledChamber(CHAMBER, BAFFLE);
  const U = (fill: number, direction: Direction) =>
    exciterState(
      ready,
      { ...SHOT, mass_kg: fill * Math.PI * 0.11 ** 2 * 0.62 * 1.05 * 7850 },
      { direction, speed_rpm: 1800, fixed_kgm: [0, 0], vibrating_mass_kg: null },
    ).shot_U_kgm;

  it.each(['low', 'high'] as const)('%s: rises to one maximum, then falls', (which) => {
    // in high up to the fill at which the room outside the pocket is full
    const fills = Array.from({ length: 38 }, (_, k) => (k + 1) * 0.021).filter((fill) => fill < 0.82);
    const values = fills.map((fill) => U(fill, which));
    const top = values.indexOf(Math.max(...values));
    expect(top).toBeGreaterThan(10);
    expect(top).toBeLessThan(values.length - 3);
    for (let k = 1; k <= top; k++) expect(values[k]!).toBeGreaterThan(values[k - 1]!);
    for (let k = top + 1; k < values.length; k++)
      expect(values[k]!).toBeLessThanOrEqual(values[k - 1]! + 1e-9);
    expect(values[values.length - 1]!).toBeLessThan(values[top]! - 0.01);
  });

  it('low is below high for every usual fill', () => {
    for (const fill of [0.1, 0.2, 0.31, 0.4]) expect(U(fill, 'low')).toBeLessThan(U(fill, 'high'));
  });
});
