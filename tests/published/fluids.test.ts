/** Brine, fills, and oil in a round case. */
import { describe, expect, it } from 'vitest';
import { brine, brineFill, oilVolume } from '../../src/core/mechanics';
import { expectWithin, valueOf } from '../mechanics/value-of';

describe('calcium chloride brine', () => {
  it.each([
    [10, 1083.9, 1082.8, -5.8],
    [20, 1180.4, 1178.3, -18.3],
    [25, 1230.9, 1228.5, -28.9],
  ])(
    'CoolProp 8.0.0, INCOMP::MCA2, another fit than the tabulated one: %d %%',
    (percent, at15, at20, freezing) => {
      const at = (temperature_C: number) => valueOf(brine({ salt_mass_percent: percent, temperature_C }));
      expectWithin(at(15).density_kg_m3, at15, 0.4);
      expectWithin(at(20).density_kg_m3, at20, 0.4);
      expect(Math.abs(at(20).freezing_C - freezing)).toBeLessThanOrEqual(1);
    },
  );

  it.each([
    [10, 1083.5, -5.9],
    [20, 1177.5, -18.3],
    [25, 1228, -29],
    [30, 1281.6, null],
  ])(
    'CRC Handbook of Chemistry and Physics (from memory), 20 degrees: %d %%',
    (percent, density, freezing) => {
      const result = valueOf(brine({ salt_mass_percent: percent, temperature_C: 20 }));
      expectWithin(result.density_kg_m3, density, 0.4);
      if (freezing !== null) expect(Math.abs(result.freezing_C - freezing)).toBeLessThanOrEqual(1);
    },
  );

  it('CoolProp 8.0.0, INCOMP::MCA, between the rows of the table', () => {
    // computed by calling the library at 12.5 % and 12 degrees, 22 % and -15 degrees
    expectWithin(valueOf(brine({ salt_mass_percent: 12.5, temperature_C: 12 })).density_kg_m3, 1110.3, 0.05);
    expectWithin(valueOf(brine({ salt_mass_percent: 22, temperature_C: -15 })).density_kg_m3, 1209.2, 0.05);
  });

  it('water 999.1 at 15 and 998.2 at 20 degrees (IAPWS, from memory)', () => {
    expectWithin(valueOf(brine({ salt_mass_percent: 0, temperature_C: 15 })).density_kg_m3, 999.1, 0.01);
    expectWithin(valueOf(brine({ salt_mass_percent: 0, temperature_C: 20 })).density_kg_m3, 998.2, 0.01);
  });

  it('own: 1 m3 of 25 % at 1231 kg/m3', () => {
    expect(valueOf(brineFill({ volume_m3: 1, density_kg_m3: 1231, salt_mass_percent: 25 }))).toMatchObject({
      total_kg: 1231,
      salt_kg: 307.75,
      water_kg: 923.25,
    });
  });
});

describe('oil in a round case', () => {
  it.each([
    [0.134, 0.0906],
    [0.2929, 0.2854],
    [0.5, 0.6142],
    [1, 1.5708],
  ])("Machinery's Handbook, circular segments, r = 1 (from memory): height %d", (depth_m, area) => {
    expect(valueOf(oilVolume({ radius_m: 1, length_m: 1, depth_m })).volume_m3).toBeCloseTo(area, 3);
  });

  it('own: exciter case of the training roller, radius 215 mm, 1.28 m, level 160 mm below the axis: about 13.9 L less parts', () => {
    expectWithin(
      valueOf(oilVolume({ radius_m: 0.215, length_m: 1.28, level_m: -0.16 })).volume_m3,
      0.01386,
      0.5,
    );
  });
});
