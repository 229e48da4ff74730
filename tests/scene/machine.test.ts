import { Ray, Vector3 } from 'three';
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { HATCH_STYLES, meshIntegrals, piecesOf, staysWhole } from '../../src/core/geometry';
import { INITIAL_STATE } from '../../src/store';
import { leftOf, shownReach, sphereOf } from '../../src/view/scene/machine/bounds';
import { largestFirst, runAlong } from '../../src/view/scene/machine/edge-chains';
import { kindGeometry } from '../../src/view/scene/machine/kind-geometry';
import { GHOST, HIDDEN, partTable, SOLID } from '../../src/view/scene/machine/part-table';
import { writePoses } from '../../src/view/scene/machine/poses';
import { extruded } from '../../src/view/scene/machine/shot-body';
import { partShows, writeShown } from '../../src/view/scene/machine/visibility';
import { pick } from '../../src/view/scene/pick/pick';
import { capGeometry, cuttable, LOOSE, SOLID_INK } from '../../src/view/scene/section/cap-geometry';
import { hatchStyles } from '../../src/view/scene/section/hatch-styles';
import { sampleDocument } from './sample-document';

let document: MachineDocument;
beforeAll(async () => {
  document = await sampleDocument();
});

const fresh = () => {
  const table = partTable(document);
  const count = table.count;
  const motion = {
    teardown: new Float32Array(4 * count),
    explode: new Float32Array(3 * count),
    turnAxes: null as Float32Array | null,
    drumAngle_rad: 0,
    exciterAngle_rad: 0,
  };
  writePoses(table, motion);
  return { table, motion };
};
const numberOf = (id: string) => document.machine.parts.findIndex((p) => p.id === id);
const ray = (from: [number, number, number], to: [number, number, number]) =>
  new Ray(new Vector3(...from), new Vector3(...to).sub(new Vector3(...from)).normalize());

describe('poses', () => {
  it('carries drum parts round with the drum and leaves the frame', () => {
    const { table, motion } = fresh();
    motion.drumAngle_rad = Math.PI / 2;
    writePoses(table, motion);
    const bolt = numberOf('hub-bolts/01');
    // A quarter turn about +x takes +y to +z.
    expect(table.matrices[bolt * 16 + 13]).toBeCloseTo(0, 6);
    expect(table.matrices[bolt * 16 + 14]).toBeCloseTo(0.29, 6);
    const isolator = numberOf('isolator-1');
    expect(table.matrices[isolator * 16 + 13]).toBeCloseTo(0.29, 6);
  });

  it('takes the farther of teardown and explode, and turns a thread about its axis through the part', () => {
    const { table, motion } = fresh();
    const bolt = numberOf('hub-bolts/01');
    motion.teardown.set([0.2, 0, 0, Math.PI], 4 * bolt);
    motion.explode.set([0.5, 0, 0], 3 * bolt);
    motion.turnAxes = new Float32Array(3 * table.count);
    motion.turnAxes.set([1, 0, 0], 3 * bolt);
    writePoses(table, motion);
    const o = bolt * 16;
    expect(table.matrices[o + 12]).toBeCloseTo(0.765 + 0.5, 6);
    expect(table.matrices[o + 13]).toBeCloseTo(0.29, 6);
    expect(table.matrices[o + 5]).toBeCloseTo(-1, 6);
  });
});

describe('what shows', () => {
  const part = (id: string) => document.machine.parts[numberOf(id)]!;
  const base = { ...INITIAL_STATE, optionsOn: { sealed: true } };

  it('hides context until asked for, then shows it as a ghost', () => {
    expect(partShows(part('drive-motor'), base)).toBe(HIDDEN);
    expect(partShows(part('drive-motor'), { ...base, showContext: true })).toBe(GHOST);
  });
  it('shows option parts only while the option is on', () => {
    expect(partShows(part('seal'), base)).toBe(SOLID);
    expect(partShows(part('seal'), { ...base, optionsOn: {} })).toBe(HIDDEN);
  });
  it('shows isolated parts only, hidden ones not even then', () => {
    const isolated = { ...base, isolatedParts: new Set(['hub', 'shell']), hiddenParts: new Set(['shell']) };
    expect(partShows(part('hub'), isolated)).toBe(SOLID);
    expect(partShows(part('shell'), isolated)).toBe(HIDDEN);
    expect(partShows(part('spindle'), isolated)).toBe(HIDDEN);
  });
  it('says whether anything changed', () => {
    const { table } = fresh();
    expect(writeShown(table, base)).toBe(true);
    expect(writeShown(table, base)).toBe(false);
    expect(writeShown(table, { ...base, ghostedParts: new Set(['hub']) })).toBe(true);
  });
});

describe('picking', () => {
  it('names the nearest part, in the place that it has now', () => {
    const { table, motion } = fresh();
    expect(pick(table, ray([0, 3, 0], [0, 0, 0]), null)).toMatchObject({ part: numberOf('shell') });
    expect(pick(table, ray([0, 3, 0], [0, 0, 0]), null)!.distance).toBeCloseTo(3 - 0.75, 3);
    motion.explode.set([5, 0, 0], 3 * numberOf('shell'));
    writePoses(table, motion);
    expect(pick(table, ray([0, 3, 0], [0, 0, 0]), null)!.part).toBe(numberOf('exciter-case'));
  });

  it('meets paper beside the machine', () => {
    expect(pick(fresh().table, ray([5, 3, 0], [5, 0, 0]), null)).toBeNull();
  });

  it('looks through ghosts at what is solid behind them, and takes the ghost where nothing is', () => {
    const { table } = fresh();
    table.shown[numberOf('shell')] = GHOST;
    expect(pick(table, ray([0, 3, 0], [0, 0, 0]), null)!.part).toBe(numberOf('exciter-case'));
    expect(pick(table, ray([0, 3, 0.6], [0, 0, 0.6]), null)!.part).toBe(numberOf('shell'));
    table.shown[numberOf('shell')] = HIDDEN;
    expect(pick(table, ray([0, 3, 0.6], [0, 0, 0.6]), null)).toBeNull();
  });

  it('meets the cut face where the plane opens a solid, not what was cut away', () => {
    const { table } = fresh();
    const cut = { normal: [0, 0, -1] as const, distance_m: 0 };
    // From the front (-z) at the shell's wall: its near half is gone, the cut face at z = 0 shows.
    const hit = pick(table, ray([0, 0.736, -3], [0, 0.736, 0]), cut)!;
    expect(hit.part).toBe(numberOf('shell'));
    expect(hit.point.z).toBeCloseTo(0, 6);
    // The spindle is a shaft cut along its axis: it stays whole and is met at its own surface.
    const shaft = pick(table, ray([0.9, 0.03, -3], [0.9, 0.03, 0]), cut)!;
    expect(shaft.part).toBe(numberOf('spindle'));
    expect(shaft.point.z).toBeCloseTo(-Math.sqrt(0.075 ** 2 - 0.03 ** 2), 3);
  });
});

describe('section', () => {
  const areaOf = (data: ReturnType<typeof capGeometry>, part: number): number => {
    let area = 0;
    const v = (i: number) => new Vector3().fromArray(data.position, 3 * data.index[i]!);
    for (let i = 0; i < data.index.length; i += 3)
      if (data.part[data.index[i]!] === part)
        area += new Vector3().crossVectors(v(i + 1).sub(v(i)), v(i + 2).sub(v(i))).length() / 2;
    return area;
  };

  it('closes what it cuts: the face of a tube across its axis is a ring, of a tube along it two strips', () => {
    const { table } = fresh();
    const cut = cuttable(table);
    const styles = hatchStyles(table);
    const across = capGeometry(table, cut, styles, [1, 0, 0], 0.1);
    const ring = Math.PI * (0.75 ** 2 - 0.722 ** 2);
    expect(areaOf(across, numberOf('shell')) / ring).toBeCloseTo(1, 3);
    const along = capGeometry(table, cut, styles, [0, 0, 1], 0.0001);
    const strips = 2 * 2.13 * 0.028;
    expect(areaOf(along, numberOf('shell')) / strips).toBeCloseTo(1, 2);
  });

  it('leaves shafts whole along their axis and cuts them across it', () => {
    const { table } = fresh();
    const cut = cuttable(table);
    const styles = hatchStyles(table);
    expect(areaOf(capGeometry(table, cut, styles, [0, 0, 1], 0), numberOf('spindle'))).toBe(0);
    expect(areaOf(capGeometry(table, cut, styles, [1, 0, 0], 0.9), numberOf('spindle'))).toBeGreaterThan(
      0.01,
    );
  });

  it('follows the parts: what has moved clear of the plane has no face', () => {
    const { table, motion } = fresh();
    motion.explode.set([0, 0, 3], 3 * numberOf('shell'));
    writePoses(table, motion);
    const data = capGeometry(table, cuttable(table), hatchStyles(table), [0, 0, 1], 0);
    expect(areaOf(data, numberOf('shell'))).toBe(0);
    expect(areaOf(data, numberOf('hub'))).toBeGreaterThan(0);
  });

  it('tells neighbours apart, and marks thin faces as solid ink', () => {
    const { table } = fresh();
    const styles = hatchStyles(table);
    const styleOf = (id: string) => styles[table.kindOf[numberOf(id)]!]!;
    expect(styleOf('shell')).not.toBe(styleOf('head-right'));
    expect(styleOf('head-right')).not.toBe(styleOf('hub'));
    expect(Math.max(...styles)).toBeLessThan(HATCH_STYLES.length);
    expect(new Set([LOOSE, SOLID_INK, ...HATCH_STYLES.keys()]).size).toBe(HATCH_STYLES.length + 2);
  });

  it('judges each roller of a cage for itself', () => {
    const box = (x: number, y: number) => [x, y, 0, x + 1, y, 0, x, y + 1, 0, x, y, 1];
    const solid = {
      positions: Float32Array.from([...box(0, 0), ...box(0, 5)]),
      indices: Uint32Array.from([0, 1, 2, 0, 3, 1, 1, 3, 2, 2, 3, 0, 4, 5, 6, 4, 7, 5, 5, 7, 6, 6, 7, 4]),
    };
    const { pieces, ofVertex } = piecesOf(solid);
    expect(pieces).toHaveLength(2);
    expect([...ofVertex]).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
    expect(pieces.map((p) => staysWhole(p, 0, 1, 0, 0.5))).toEqual([true, false]);
    expect(staysWhole(pieces[0]!, 1, 0, 0, 0.5)).toBe(false);
  });
});

describe('bounds', () => {
  it('are those of what shows and of what a section leaves', () => {
    const { table } = fresh();
    const all = sphereOf(shownReach(table))!;
    expect(all.radius).toBeGreaterThan(1.2);
    expect(all.radius).toBeLessThan(1.7);
    const cut = leftOf(shownReach(table), { normal: [0, 0, 1], distance_m: 0 });
    for (let i = 2; i < cut.length; i += 3) expect(cut[i]).toBeLessThanOrEqual(1e-9);
    table.shown.fill(HIDDEN);
    expect(sphereOf(shownReach(table))).toBeNull();
  });
});

describe('edges', () => {
  it('run round a circle without a break and come largest first', () => {
    const circle = (r: number, n: number) =>
      Array.from({ length: n }, (_, i) => {
        const at = (k: number) => [
          0,
          r * Math.cos((2 * Math.PI * k) / n),
          r * Math.sin((2 * Math.PI * k) / n),
        ];
        return [...at(i), ...at(i + 1)];
      }).flat();
    const sorted = largestFirst(Float32Array.from([...circle(0.1, 16), ...circle(1, 32)]));
    expect(sorted.radius[0]).toBeCloseTo(Math.SQRT2, 5);
    expect(sorted.radius[47]).toBeCloseTo(0.1 * Math.SQRT2, 5);
    const runs = runAlong(sorted.ends);
    const steps = [...runs.subarray(0, 32)].sort((a, b) => a - b);
    steps.forEach((run, i) => expect(run).toBeCloseTo(i * 2 * Math.sin(Math.PI / 32), 4));
  });

  it('keep every segment of a kind', () => {
    for (const bodies of Object.values(document.solids)) {
      const { edges } = kindGeometry(bodies);
      expect(edges.ends.length).toBe(bodies.reduce((n, b) => n + b.mesh.edges.length, 0));
      for (let i = 1; i < edges.radius.length; i++)
        expect(edges.radius[i]!).toBeLessThanOrEqual(edges.radius[i - 1]!);
    }
  });
});

describe('extruded shot', () => {
  it('is closed, outward and of the right volume, with its hole', () => {
    const square = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ] as const;
    const hole = [
      [0.5, 0.5],
      [0.5, 1],
      [1, 1],
      [1, 0.5],
    ] as const;
    const solid = extruded([square, hole], -1, 3);
    const { volume_m3 } = meshIntegrals(solid);
    expect(volume_m3).toBeCloseTo(4 * (4 - 0.25), 5);
    const edges = new Map<string, number>();
    for (let t = 0; t < solid.indices.length; t += 3)
      for (let k = 0; k < 3; k++) {
        const a = solid.indices[t + k]!;
        const b = solid.indices[t + ((k + 1) % 3)]!;
        edges.set(`${a} ${b}`, (edges.get(`${a} ${b}`) ?? 0) + 1);
      }
    for (const [key, n] of edges) {
      expect(n).toBe(1);
      expect(edges.get(key.split(' ').reverse().join(' '))).toBe(1);
    }
  });

  it('hangs down: the first axis of the body frame is machine -y', () => {
    const solid = extruded([[[1, 0], [2, 0], [2, 1]]], 0, 1); // prettier-ignore
    const ys = [0, 1, 2].map((i) => solid.positions[3 * i + 1]!);
    const zs = [0, 1, 2].map((i) => solid.positions[3 * i + 2]! + 0);
    expect(ys).toEqual([-1, -2, -2]);
    expect(zs).toEqual([0, 0, -1]);
  });
});
