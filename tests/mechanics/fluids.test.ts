import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brine, brineFill, oilVolume } from '../../src/core/mechanics';
import { faultPaths, noteKeys, valueOf } from './value-of';

const SEED = { seed: 13, numRuns: 80 };

describe('brine', () => {
  it('gets denser and freezes lower with salt, wherever it is liquid', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 29, noNaN: true }),
        fc.double({ min: -40, max: 40, noNaN: true }),
        (salt_mass_percent, temperature_C) => {
          const weak = valueOf(brine({ salt_mass_percent, temperature_C }));
          const strong = valueOf(brine({ salt_mass_percent: salt_mass_percent + 1, temperature_C }));
          expect(strong.freezing_C).toBeLessThan(weak.freezing_C);
          if (weak.density_kg_m3 === null) expect(temperature_C).toBeLessThan(weak.freezing_C);
          else expect(strong.density_kg_m3).toBeGreaterThan(weak.density_kg_m3);
        },
      ),
      SEED,
    );
  });

  it('is null when frozen, noted where sources part, refused beyond the table', () => {
    const frozen = brine({ salt_mass_percent: 10, temperature_C: -10 });
    expect(valueOf(frozen).density_kg_m3).toBeNull();
    expect(noteKeys(frozen)).toEqual(['mechanics.note.brine-frozen']);
    expect(noteKeys(brine({ salt_mass_percent: 30, temperature_C: 20 }))).toEqual([
      'mechanics.note.brine-sources-part',
    ]);
    expect(faultPaths(brine({ salt_mass_percent: 30.1, temperature_C: 41 }))).toEqual([
      'salt_mass_percent',
      'temperature_C',
    ]);
    expect(faultPaths(brineFill({ volume_m3: -1, density_kg_m3: 0, salt_mass_percent: 101 }))).toHaveLength(
      3,
    );
  });
});

describe('oil', () => {
  const shell = { radius_m: 0.215, length_m: 1.28 };

  it('level to volume and back is a round trip', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.429, noNaN: true }), (depth_m) => {
        const there = valueOf(oilVolume({ ...shell, depth_m }));
        const back = valueOf(oilVolume({ ...shell, volume_m3: there.volume_m3 }));
        expect(back.depth_m).toBeCloseTo(depth_m, 9);
        expect(there.level_m).toBeCloseTo(depth_m - 0.215, 12);
      }),
      SEED,
    );
  });

  it('half full at the axis, empty and full at the ends', () => {
    const share = (level_m: number) => valueOf(oilVolume({ ...shell, level_m })).section_share;
    expect(share(0)).toBeCloseTo(0.5, 12);
    expect(share(-0.215)).toBe(0);
    expect(share(0.215)).toBeCloseTo(1, 12);
    expect(valueOf(oilVolume({ ...shell, level_m: 0 })).volume_m3).toBeCloseTo(0.0929, 4);
  });

  it('parts in the oil take its room', () => {
    const bare = valueOf(oilVolume({ ...shell, level_m: -0.1, density_kg_m3: 870 }));
    const filled = valueOf(oilVolume({ ...shell, level_m: -0.1, displaced_m3: 0.002, density_kg_m3: 870 }));
    expect(bare.volume_m3 - filled.volume_m3).toBeCloseTo(0.002, 12);
    expect((bare.mass_kg ?? NaN) - (filled.mass_kg ?? NaN)).toBeCloseTo(1.74, 9);
    const back = valueOf(oilVolume({ ...shell, volume_m3: filled.volume_m3, displaced_m3: 0.002 }));
    expect(back.level_m).toBeCloseTo(-0.1, 9);
  });

  it('refuses levels outside the case, too much oil, two answers, parts larger than the room', () => {
    expect(faultPaths(oilVolume({ ...shell, level_m: -0.3 }))).toEqual(['level_m']);
    expect(faultPaths(oilVolume({ ...shell, volume_m3: 1 }))).toEqual(['volume_m3']);
    expect(faultPaths(oilVolume({ ...shell, level_m: 0, depth_m: 0 }))).toHaveLength(1);
    expect(faultPaths(oilVolume({ ...shell, depth_m: 0.01, displaced_m3: 0.05 }))).toEqual(['displaced_m3']);
  });
});
