/** Parameters and moments that go with a setting, from the machine's solids. */
import { beforeAll, describe, expect, it } from 'vitest';
import { kindSolids, type MachineDocument } from '../../src/core/document';
import { fillOf } from '../../src/core/shot';
import { exciterStudy } from '../../src/core/studies';
import {
  DEFAULT_EXCITER,
  isOwnRun,
  levelU_kgm,
  parametersOf,
  settledU_kgm,
  shotBase,
  type ShotBase,
  totalMoment,
} from '../../src/store';
import { exciterDocument } from './fixture';

let document: MachineDocument;
let base: ShotBase;
beforeAll(async () => {
  document = await exciterDocument();
  base = shotBase(document)!;
});

describe('base of a machine', () => {
  it('gives back the machine’s own shot and spin-up', () => {
    const p = parametersOf(base, base.own);
    expect(p.shot.mass_kg).toBeCloseTo(60.2, 9);
    expect(fillOf(p.chamber, p.shot)).toBeCloseTo(base.own.fill, 12);
    expect(p.spin_up).toEqual({ kind: 'quadratic', frequency_Hz: 30, time_s: 4 });
    expect(p.baffle).toEqual(base.basis.baffle);
  });

  it('knows a recording of the machine as built from one of another', () => {
    const own = parametersOf(base, { ...base.own, direction: 'high', seed: 9 });
    expect(isOwnRun(base, own)).toBe(true);
    expect(isOwnRun(base, { ...own, baffle: null })).toBe(false);
    expect(isOwnRun(base, { ...own, shot: { ...own.shot, mass_kg: 60 } })).toBe(false);
  });

  it('takes the plate’s moment off, and mirrors it about the body’s x axis', () => {
    const { fitted, off, mirrored } = base.fixed_kgm;
    const plate = [fitted[0] - off[0], fitted[1] - off[1]] as const;
    // L of 8 mm plate, 90 + 20 mm less the wall's curve, 1.05 m long: 7.25 kg at about (70, 51) mm.
    expect(plate[0]).toBeCloseTo(0.51, 1);
    expect(plate[1]).toBeCloseTo(0.37, 1);
    expect(mirrored[0] - off[0]).toBeCloseTo(plate[0], 12);
    expect(mirrored[1] - off[1]).toBeCloseTo(-plate[1], 12);
  });

  it('has the same level value as the study of the panel', () => {
    const study = exciterStudy(
      document.machine,
      kindSolids(document),
      document.masses,
      DEFAULT_EXCITER,
      document.fit,
    )!;
    expect(levelU_kgm(base, { ...base.own, direction: 'high' })).toBeCloseTo(study.high.level.U_kgm, 9);
    const { total_kgm, shot_kgm } = study.high.level;
    expect(total_kgm).toEqual(totalMoment(base, 'fitted', shot_kgm));
  });

  it('tells from the table what a run should give, and nothing where the table does not reach', () => {
    const low = settledU_kgm(base, base.own)!;
    expect(low.U_kgm / levelU_kgm(base, base.own)!).toBeLessThan(0.7);
    expect(low.band_kgm / low.U_kgm).toBeLessThan(0.15);
    // The plate mirrored: HIGH scoops, and the shot alone has the mirror image of LOW's moment.
    const alone = { ...base, fixed_kgm: { fitted: [0, 0], mirrored: [0, 0], off: [0, 0] } } as const;
    const turned = settledU_kgm(alone, { ...base.own, baffle: 'mirrored', direction: 'high' })!;
    expect(turned.U_kgm).toBeCloseTo(settledU_kgm(alone, base.own)!.U_kgm, 9);
    expect(settledU_kgm(base, { ...base.own, gravity: false })).toBeNull();
    expect(settledU_kgm(base, { ...base.own, fill: 0.6 })).toBeNull();
    const { fit: _, ...without } = document;
    expect(settledU_kgm({ ...base, document: without }, base.own)).toBeNull();
  });

  it('turns the directions round with a mirrored baffle: the level shot’s share of U is mirrored', () => {
    const shotOf = (direction: 'low' | 'high', baffle: 'fitted' | 'mirrored'): number =>
      levelU_kgm(
        { ...base, fixed_kgm: { fitted: [0, 0], mirrored: [0, 0], off: [0, 0] } },
        {
          ...base.own,
          direction,
          baffle,
        },
      )!;
    expect(shotOf('low', 'mirrored')).toBeCloseTo(shotOf('high', 'fitted'), 6);
    expect(shotOf('high', 'mirrored')).toBeCloseTo(shotOf('low', 'fitted'), 6);
  });
});
