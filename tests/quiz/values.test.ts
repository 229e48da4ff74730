/** Named values that texts show, checked by formulas written out here. */
import { describe, expect, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { findPart } from '../../src/core/machine';
import { type Subject, valuesOf } from '../../src/core/quiz';
import { fit, machine, masses, solids } from '../models/alder-one';

const graph = buildGraph(machine, solids, masses);
const subject: Subject = { machine, solids, masses, fit, graph, teardown: planOnGraph(machine, graph) };
const values = valuesOf(subject);
function si(name: string): number {
  const found = values.get(name);
  if (found === undefined || !('si' in found)) throw new Error(`no number ${name}`);
  return found.si;
}
const g = 9.80665;
const drive = machine.drive!;
const { operating_mass_kg, drum_axle_mass_kg } = machine.operation;

describe('named values', () => {
  it('of the drive: torque and pull at relief from displacement, pressure, efficiency', () => {
    for (const [end, range, displacement] of [
      ['drum', 'low', drive.drum.displacement_low_m3_rev],
      ['drum', 'high', drive.drum.displacement_high_m3_rev],
      ['axle', 'low', drive.axle.displacement_low_m3_rev],
      ['axle', 'high', drive.axle.displacement_high_m3_rev],
    ] as const) {
      const { gear_ratio, efficiency, rolling_radius_m } = drive[end];
      const torque = (drive.relief_Pa * displacement * gear_ratio * efficiency) / (2 * Math.PI);
      expect(si(`study.drive.${end}-${range}.torque_Nm`)).toBeCloseTo(torque, 6);
      expect(si(`study.drive.${end}-${range}.pull_N`)).toBeCloseTo(torque / rolling_radius_m, 6);
    }
    expect(si('study.drive.weight_N')).toBeCloseTo(operating_mass_kg * g, 6);
  });

  it('of a tow: grade and rolling resistance on the whole weight', () => {
    for (const grade of [0, 10]) {
      const slope = Math.atan(grade / 100);
      const pull = operating_mass_kg * g * (Math.sin(slope) + 0.05 * Math.cos(slope));
      expect(si(`study.tow.grade-${grade}.pull_N`)).toBeCloseTo(pull, 3);
    }
  });

  it('of the wet slope: the drum slips where its pull reaches adhesion times its share of the weight', () => {
    const slope = Math.atan(si('study.slope.choice.grade_percent'));
    const most_N = si('study.slope.choice.drum_adhesion') * drum_axle_mass_kg * g * Math.cos(slope);
    const { displacement_low_m3_rev, efficiency, rolling_radius_m } = drive.drum;
    const slip_Pa = (most_N * rolling_radius_m * 2 * Math.PI) / (displacement_low_m3_rev * efficiency);
    expect(si('study.slope.drum-low-axle-low.drum_slip_Pa') / slip_Pa).toBeCloseTo(1, 6);
    // What the lesson on the slope says: one way of the four climbs.
    const climbs = ['low', 'high'].flatMap((drum) =>
      ['low', 'high']
        .filter((axle) => {
          const way = `study.slope.drum-${drum}-axle-${axle}`;
          return si(`${way}.speed_m_s`) > 0;
        })
        .map((axle) => `${drum}-${axle}`),
    );
    expect(climbs).toEqual(['high-low']);
  });

  it('of sizes: what must pass through what', () => {
    // Known from the design basis: the drive plate has radius 515 mm, the left opening 320 mm.
    expect(si('part.drive-plate.outside_m')).toBeCloseTo(1.03, 9);
    expect(si('part.side-plate-left.opening_radius_m')).toBeCloseTo(0.32, 9);
    expect(si('part.exciter-bearing.bore_m')).toBe(0.1);
    expect(si('part.drum-shell.over_all_m')).toBeCloseTo(machine.drumWidth_m, 9);
  });

  it('of shot and oil', () => {
    const ball_kg = (4 / 3) * Math.PI * (machine.operation.ball_diameter_m / 2) ** 3 * 7850;
    expect(si('operation.ball_count') / (machine.operation.shot_mass_kg / ball_kg)).toBeCloseTo(1, 3);
    expect(si('fluid.exciter-oil.volume_m3')).toBe(0.013);
  });

  it('of what is lifted in one piece: the parts that leave with the hub', () => {
    const step = subject.teardown.steps.find((s) => s.kind === 'remove' && s.unitIds.includes('hub'))!;
    const mass = machine.units
      .filter((unit) => step.unitIds.includes(unit.id))
      .flatMap((unit) => unit.partIds)
      .reduce((sum, id) => sum + masses[findPart(machine, id)!.kind]!.mass_kg, 0);
    expect(si('plan.lifted_with.hub_kg') / mass).toBeCloseTo(1, 6);
  });
});
