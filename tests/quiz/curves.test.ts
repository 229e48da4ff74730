/** Plots that questions ask to be read: against formulas written out here, and every plot has its words. */
import { describe, expect, it } from 'vitest';
import { buildGraph, planOnGraph } from '../../src/core/assembly';
import { type Curve, plotCurve, PLOTS, type Subject, valuesOf } from '../../src/core/quiz';
import english from '../../src/words/en';
import { fit, machine, masses, solids } from '../models/alder-one';

const graph = buildGraph(machine, solids, masses);
const subject: Subject = { machine, solids, masses, fit, graph, teardown: planOnGraph(machine, graph) };
const curve = (plot: (typeof PLOTS)[number]): Curve => plotCurve(subject, plot)!;
const si = (name: string): number => {
  const value = valuesOf(subject).get(name);
  if (value === undefined || !('si' in value)) throw new Error(`no number ${name}`);
  return value.si;
};
/** Value of a line where x comes closest. */
const at = ({ x, lines }: Curve, wanted: number, line = 0): number => {
  const nearest = x.values.reduce((a, b) => (Math.abs(b - wanted) < Math.abs(a - wanted) ? b : a));
  return lines[line]![x.values.indexOf(nearest)]!;
};

describe('plots of questions', () => {
  it.each(PLOTS)('%s: as many values as steps, rising steps, words for title and axes', (plot) => {
    const { x, lines, mark } = curve(plot);
    for (const line of lines) expect(line).toHaveLength(x.values.length);
    x.values.forEach((value, i) => expect(i === 0 || value > x.values[i - 1]!).toBe(true));
    const ends = ['', '.x', '.y', ...(mark === undefined ? [] : ['.mark'])];
    for (const end of ends) expect(english[`ask.plot.${plot}${end}`]).toBeDefined();
  });

  it('force: U (2 pi f)^2, HIGH above LOW', () => {
    const force = curve('force-over-frequency');
    expect(at(force, 30)).toBeCloseTo(si('study.exciter.high.U_kgm') * (60 * Math.PI) ** 2, 3);
    expect(at(force, 30, 0)).toBeGreaterThan(at(force, 30, 1));
  });

  it('pressure: half at twice the depth; 2 q / (pi z)', () => {
    const depth = curve('stress-over-depth');
    expect(at(depth, 1)).toBeCloseTo((2 * si('machine.linear_load_N_m')) / Math.PI, 0);
    expect(at(depth, 0.5) / at(depth, 1)).toBeCloseTo(2, 6);
  });

  it('share to the frame: peak at its natural frequency, small at work', () => {
    const share = curve('transmissibility');
    const right = share.lines[1] as number[];
    const peak = share.x.values[right.indexOf(Math.max(...right))]!;
    expect(Math.abs(peak - si('study.isolation.right.natural_Hz'))).toBeLessThan(0.6);
    expect(at(share, 30, 1)).toBeCloseTo(si('study.isolation.right.transmissibility'), 3);
  });

  it('sling: one over the sine; life: load to the power of ten thirds; ballast: U over mass', () => {
    const leg = curve('sling-leg');
    expect(leg.lines[0]![0]).toBeCloseTo(2, 6);
    expect(leg.lines[0]!.at(-1)).toBeCloseTo(1, 6);
    const life = curve('bearing-life');
    expect(at(life, 1)).toBeCloseTo(si('study.bearing-life.high.right_h'), 3);
    expect(at(life, 1) / at(life, 1.3)).toBeCloseTo(1.3 ** (10 / 3), 2);
    expect(at(curve('turn-over-steering'), (35 * Math.PI) / 180)).toBeCloseTo(
      si('study.identify.turning.drum_radius_m'),
      6,
    );
    const joint = curve('slip-over-preload');
    expect(at(joint, 1)).toBeCloseTo(si('joint.hub-bolts.slip_N'), 3);
    expect(at(joint, 0.5)).toBeLessThan(at(joint, 0.5, 1));
    const torque = curve('torque-over-pressure');
    expect(at(torque, 400e5)).toBeCloseTo(si('study.drive.drum-low.torque_Nm'), 0);
    expect(at(torque, 400e5, 1)).toBeCloseTo(si('study.drive.drum-high.torque_Nm'), 0);
    const grade = curve('pull-over-grade');
    expect(at(grade, 25)).toBeCloseTo(si('study.slope.drum-low-axle-low.pull_needed_N'), 0);
    expect(at(grade, 25, 1)).toBeCloseTo(si('study.slope.drum-low-axle-low.pull_available_N'), 0);
    expect(at(curve('amplitude-over-ballast'), 1000)).toBeCloseTo(si('study.ballast-tonne.amplitude_m'), 9);
  });
});
