/** Checks the parameters of a run; every fault is listed at once. */
import { fail, message, ok, printFound, type Fault, type Result } from '../kernel';
import { ballCount } from './count';
import { fillOf, type ShotParameters } from './parameters';
import type { SpinUp } from './spin-up';

/** More than this and a browser's worker would be at it for minutes. */
export const MOST_BALLS = 20000;

/** The parameters themselves when a run can be made from them, otherwise all faults by path. */
export function validateShot(p: ShotParameters): Result<ShotParameters> {
  const faults: Fault[] = [];
  const expect = (
    good: boolean,
    path: string,
    found: unknown,
    key: string,
    params?: Record<string, number>,
  ): void => {
    if (!good) faults.push({ path, expected: message(key, params), found: printFound(found) });
  };
  const positive = (path: string, value: number): void =>
    expect(Number.isFinite(value) && value > 0, path, value, 'expected.positive');
  const within = (path: string, value: number, low: number, high: number): void =>
    expect(value >= low && value <= high, path, value, 'expected.within', { low, high });

  const { chamber, baffle, shot, slice } = p;
  positive('chamber.radius_m', chamber.radius_m);
  within('chamber.eccentricity_m', chamber.eccentricity_m, 0, 10 * chamber.radius_m);
  const { radius_m: r, eccentricity_m: e } = chamber;
  if (chamber.chord_x_m !== null) within('chamber.chord_x_m', chamber.chord_x_m, e - r, e + 0.9 * r);
  if (baffle !== null) {
    positive('baffle.leg1_m', baffle.leg1_m);
    within('baffle.leg1_m', baffle.leg1_m, 0, 2 * r);
    within('baffle.leg2_m', baffle.leg2_m, 0, 2 * r);
    within('baffle.psi_deg', baffle.psi_deg, -360, 360);
    within('baffle.beta_deg', baffle.beta_deg, -80, 80);
    positive('baffle.half_thickness_m', baffle.half_thickness_m);
    expect(Math.abs(baffle.side) === 1, 'baffle.side', baffle.side, 'expected.plusOrMinusOne');
    expect(
      Math.abs(baffle.pocket_side) === 1,
      'baffle.pocket_side',
      baffle.pocket_side,
      'expected.plusOrMinusOne',
    );
  }
  for (const key of ['mass_kg', 'length_m', 'density_kg_m3', 'ball_diameter_m'] as const)
    positive(`shot.${key}`, shot[key]);
  within('shot.packing', shot.packing, 0.3, 0.74);
  within('shot.size_spread', shot.size_spread, 0, 0.3);
  within('shot.ball_diameter_m', shot.ball_diameter_m, 0, r / 3);
  // The least image must be unique: a slice thinner than this would let a ball touch its own copy.
  within('slice.depth_m', slice.depth_m, 3 * shot.ball_diameter_m, shot.length_m);
  expect(
    slice.dimension === 2 || slice.dimension === 3,
    'slice.dimension',
    slice.dimension,
    'expected.twoOrThree',
  );
  within('friction.ball', p.friction.ball, 0, 2);
  within('friction.wall', p.friction.wall, 0, 2);
  within('restitution', p.restitution, 0, 1);
  within('tolerance', p.tolerance, 1e-4, 0.1);
  expect(Number.isFinite(p.start_angle_rad), 'start_angle_rad', p.start_angle_rad, 'expected.number');
  expect(
    Number.isInteger(p.seed) && p.seed >= 0 && p.seed < 2 ** 32,
    'seed',
    p.seed,
    'expected.whole-within',
    { low: 0, high: 4294967295 },
  );
  positive('stop_Hz', p.stop_Hz);
  checkSpinUp(p.spin_up, p.stop_Hz, expect, positive);
  if (faults.length === 0) {
    within('shot.mass_kg', fillOf(chamber, shot), 0, 0.85);
    const balls = ballCount(p);
    expect(balls >= 1 && balls <= MOST_BALLS, 'slice', balls, 'expected.ballCount', {
      low: 1,
      high: MOST_BALLS,
    });
  }
  return faults.length === 0 ? ok(p) : fail(faults);
}

type Expect = (
  good: boolean,
  path: string,
  found: unknown,
  key: string,
  params?: Record<string, number>,
) => void;

function checkSpinUp(
  law: SpinUp,
  stop_Hz: number,
  expect: Expect,
  positive: (path: string, v: number) => void,
): void {
  if (law.kind !== 'table') {
    positive('spin_up.frequency_Hz', law.frequency_Hz);
    positive('spin_up.time_s', law.time_s);
    expect(stop_Hz <= law.frequency_Hz, 'stop_Hz', stop_Hz, 'expected.reachedFrequency');
    return;
  }
  const { points } = law;
  expect(
    points.length >= 2 && points[0]?.time_s === 0,
    'spin_up.points',
    points.length,
    'expected.tableFromZero',
  );
  points.forEach((point, i) => {
    const before = points[i - 1];
    const rises = before === undefined || point.time_s > before.time_s;
    expect(rises, `spin_up.points[${i}].time_s`, point.time_s, 'expected.rising');
    const fine = Number.isFinite(point.frequency_Hz) && point.frequency_Hz >= 0;
    expect(fine, `spin_up.points[${i}].frequency_Hz`, point.frequency_Hz, 'expected.notNegative');
  });
  const top = Math.max(...points.map((point) => point.frequency_Hz));
  expect(stop_Hz <= top, 'stop_Hz', stop_Hz, 'expected.reachedFrequency');
}
