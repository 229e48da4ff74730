/**
 * Areas and centroids of parts of a circle. Machinery's Handbook, "Areas and volumes" and "Center of gravity":
 * rows in the form of its table, from memory for the page, numbers recomputed; last digit +-1.
 */
import { describe, expect, it } from 'vitest';
import {
  annularSector,
  centroidOfAreas,
  circularSector,
  circularSegment,
  crescent,
  pappusVolume,
} from '../../src/core/mechanics';

const DEGREE = Math.PI / 180;

describe('circular segment, r = 1', () => {
  it.each([
    [60, 0.0906, 0.134, 1.0, 0.9199],
    [90, 0.2854, 0.2929, 1.4142, 0.8259],
    [120, 0.6142, 0.5, 1.7321, 0.705],
    [180, 1.5708, 1.0, 2.0, 0.4244],
  ])('%d deg', (angle_deg, area, height, chord, b) => {
    const segment = circularSegment(1, angle_deg * DEGREE);
    expect(Math.abs(segment.area_m2 - area)).toBeLessThan(1e-4);
    expect(Math.abs(segment.height_m - height)).toBeLessThan(1e-4);
    expect(Math.abs(segment.chord_m - chord)).toBeLessThan(1e-4);
    expect(Math.abs(segment.centroid_m - b)).toBeLessThan(1e-4);
  });

  it('is the semicircle at 180 deg and the circle at 360 deg', () => {
    expect(circularSegment(2, Math.PI).centroid_m).toBeCloseTo((4 * 2) / (3 * Math.PI), 12);
    const whole = circularSegment(2, 2 * Math.PI);
    expect(whole.area_m2).toBeCloseTo(4 * Math.PI, 12);
    expect(whole.height_m).toBeCloseTo(4, 12);
    expect(whole.centroid_m).toBeCloseTo(0, 12);
  });

  it('keeps its figures for slivers', () => {
    // A = r^2 t^3 / 12 (1 - t^2 / 20), b between the chord and the arc
    const t = 1e-4;
    const sliver = circularSegment(1, t);
    expect(sliver.area_m2 / (t ** 3 / 12)).toBeCloseTo(1, 8);
    expect(sliver.centroid_m).toBeLessThan(1);
    expect(sliver.centroid_m).toBeGreaterThan(1 - sliver.height_m);
    // the series and the difference meet
    expect(circularSegment(1, 0.05 + 1e-12).area_m2 / circularSegment(1, 0.05).area_m2).toBeCloseTo(1, 9);
  });
});

describe('other shapes (own cases, recomputed)', () => {
  it('sector r = 1, half angle 45 deg: b = 0.60021', () => {
    const sector = circularSector(1, 90 * DEGREE);
    expect(sector.centroid_m).toBeCloseTo(0.60021, 5);
    expect(sector.area_m2).toBeCloseTo(Math.PI / 4, 12);
    // the other forms of the handbook: r^2 c / (3 A) and 38.197 r sin a / a[deg]
    expect(sector.centroid_m).toBeCloseTo(Math.SQRT2 / (3 * sector.area_m2), 12);
    expect(sector.centroid_m).toBeCloseTo((38.197 * Math.sin(45 * DEGREE)) / 45, 5);
  });

  it('annular sector R 200, r 100, half angle 60 deg: b = 128.64 mm', () => {
    expect(annularSector(0.2, 0.1, 120 * DEGREE).centroid_m * 1000).toBeCloseTo(128.64, 2);
  });

  it('half ring R 200, r 100: 99.03 mm; full ring: centre', () => {
    const half = annularSector(0.2, 0.1, Math.PI);
    expect(half.centroid_m * 1000).toBeCloseTo(99.03, 2);
    expect(half.area_m2).toBeCloseTo((Math.PI * (0.04 - 0.01)) / 2, 12);
    expect(annularSector(0.2, 0.1, 2 * Math.PI).centroid_m).toBeCloseTo(0, 12);
  });

  it('segment and triangle make the sector', () => {
    const t = 100 * DEGREE;
    const segment = circularSegment(1, t);
    const triangle_m2 = Math.sin(t) / 2;
    const triangleAt = (2 / 3) * Math.cos(t / 2);
    const both = centroidOfAreas([
      { area_m2: segment.area_m2, at_m: [segment.centroid_m, 0] },
      { area_m2: triangle_m2, at_m: [triangleAt, 0] },
    ]);
    expect(both![0]).toBeCloseTo(circularSector(1, t).centroid_m, 12);
    expect(segment.area_m2 + triangle_m2).toBeCloseTo(circularSector(1, t).area_m2, 12);
  });

  it('crescent: circle 3 less circle 1 at 1.5', () => {
    const moon = crescent(3, 1, 1.5);
    expect(moon.area_m2).toBeCloseTo(8 * Math.PI, 12);
    expect(moon.centroid_m).toBeCloseTo(-1.5 / 8, 12);
  });

  it('Pappus: torus R 100, r 20 mm: 789 568 mm3', () => {
    expect(pappusVolume(Math.PI * 0.02 ** 2, 0.1) * 1e9).toBeCloseTo(789568, 0);
  });
});

describe('R. K. Bansal, Engineering Mechanics, Ex 7.4, p. 168', () => {
  it('semicircle r 2.5, rectangle 10 x 5, triangle base 5 height 5 (cm): X = 7.11, Y = 3.22', () => {
    const half = circularSegment(2.5, Math.PI);
    // the semicircle bulges to -x from the rectangle's left side, x counted from its outermost point
    expect(2.5 - half.centroid_m).toBeCloseTo(1.439, 3);
    const centre = centroidOfAreas([
      { area_m2: half.area_m2, at_m: [2.5 - half.centroid_m, 2.5] },
      { area_m2: 50, at_m: [7.5, 2.5] },
      { area_m2: 12.5, at_m: [10, 6.667] },
    ]);
    expect(Math.abs(centre![0] - 7.11)).toBeLessThan(0.01);
    expect(Math.abs(centre![1] - 3.22)).toBeLessThan(0.01);
  });

  it('areas that cancel have no centroid', () => {
    expect(
      centroidOfAreas([
        { area_m2: 1, at_m: [0, 0] },
        { area_m2: -1, at_m: [1, 0] },
      ]),
    ).toBeNull();
  });
});
