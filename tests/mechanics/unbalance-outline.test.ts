import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../src/core/kernel';
import {
  buildSettledChamber,
  chamberOutline,
  loopArea_m2,
  shotOutline,
  type BaffleSection,
  type OutlinePolygon,
} from '../../src/core/mechanics';
import { BAFFLE, CHAMBER } from './alder-exciter';

const area = (polygons: readonly OutlinePolygon[]) =>
  polygons.reduce(
    (sum, { outer_m, holes_m }) =>
      sum + loopArea_m2(outer_m) + holes_m.reduce((s, hole) => s + loopArea_m2(hole), 0),
    0,
  );
const GROSS = Math.PI * 0.11 ** 2;
/** Share by which a circle's polygon of 0.01 rad steps falls short, with room for small arcs. */
const CHORDS = 5e-5 * GROSS;

describe('outlines', () => {
  it('wall and baffle of the demonstration roller', () => {
    const { wall, baffle } = chamberOutline(buildSettledChamber(CHAMBER, BAFFLE), 0.01);
    expect(wall).toHaveLength(1);
    expect(baffle).toHaveLength(1);
    expect(area(wall) / GROSS).toBeCloseTo(1, 4);
    // an L of 90 and 20 mm of 8 mm plate: legs, the outer quarter of the corner, the rounded tip; the wall cuts its foot
    const plate =
      0.008 * (0.09 + 0.02) - 0.004 ** 2 + (Math.PI * 0.004 ** 2) / 4 + (Math.PI * 0.004 ** 2) / 2;
    expect(Math.abs(area(baffle) - plate)).toBeLessThan(2e-6);
  });

  it('shot of the demonstration roller: one body in high, two in low, corners on the wall', () => {
    const chamber = buildSettledChamber(CHAMBER, BAFFLE);
    const high = shotOutline(chamber, chamber.settle(0.0118, 'high'));
    expect([high.main.length, high.pocket.length]).toEqual([1, 0]);
    const low = shotOutline(chamber, chamber.settle(0.0118, 'low'));
    expect([low.main.length, low.pocket.length]).toEqual([1, 1]);
    for (const [x, y] of low.pocket[0]!.outer_m) {
      expect(Math.hypot(x - 0.046, y)).toBeLessThan(0.11 + 1e-9);
      expect(Math.hypot(x, y)).toBeGreaterThan(0.064 - 1e-9);
    }
  });

  it('an even coat is a ring with a hole', () => {
    const chamber = buildSettledChamber({ radius_m: 0.11, eccentricity_m: 0, chord_x_m: null }, null);
    const { main } = shotOutline(chamber, chamber.settle(0.01, 'high'), 0.01);
    expect(main).toHaveLength(1);
    expect(main[0]!.holes_m).toHaveLength(1);
    expect(area(main)).toBeCloseTo(0.01, 5);
  });

  it('hold the areas that the series give, for chambers of all kinds', () => {
    const random = seededRandom(5);
    const side = (): 1 | -1 => (random.next() < 0.5 ? 1 : -1);
    for (let k = 0; k < 60; k++) {
      const round = random.next() < 0.3;
      const eccentricity_m = random.next() < 0.1 ? 0 : random.between(0, 0.15);
      const chord_x_m = random.next() < 0.4 ? eccentricity_m + 0.11 * random.between(-1, 0.5) : null;
      const baffle: BaffleSection = {
        psi_deg: round ? 30 * random.index(12) - 180 : random.between(-180, 180),
        beta_deg: round ? 15 * random.index(7) - 45 : random.between(-70, 70),
        leg1_m: random.between(0.001, 0.25),
        leg2_m: random.next() < 0.3 ? 0 : random.between(0.001, 0.22),
        side: side(),
        pocket_side: side(),
        half_thickness_m: Math.exp(random.between(Math.log(1e-4), Math.log(0.02))),
      };
      const chamber = buildSettledChamber({ radius_m: 0.11, eccentricity_m, chord_x_m }, baffle);
      const what = JSON.stringify({ eccentricity_m, chord_x_m, baffle });
      const still = chamberOutline(chamber, 0.01);
      expect(Math.abs(area(still.wall) - area(still.baffle) - chamber.freeArea_m2), what).toBeLessThan(
        CHORDS,
      );
      for (const fill of [0.05, 0.3, 0.7, 1]) {
        for (const direction of ['low', 'high'] as const) {
          const shot = chamber.settle(fill * chamber.freeArea_m2, direction);
          const drawn = shotOutline(chamber, shot, 0.01);
          expect(Math.abs(area(drawn.main) - shot.main.area_m2), what).toBeLessThan(CHORDS);
          expect(Math.abs(area(drawn.pocket) - shot.pocket.area_m2), what).toBeLessThan(CHORDS);
        }
      }
    }
  });
});
