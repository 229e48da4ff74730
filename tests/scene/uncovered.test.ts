/** From where covered parts are looked at: on the machine in steps, on Alder One with its covers on and off. */
import { Ray, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { toMeshData } from '../../src/core/geometry';
import { uncovered } from '../../src/view/scene/camera/uncovered';
import { HIDDEN, partTable, type PartTable } from '../../src/view/scene/machine/part-table';
import { meetsBefore, pick } from '../../src/view/scene/pick/pick';
import { machine, solids } from '../models/alder-one';
import { sampleDocument } from './sample-document';

const FRONT = new Vector3(0, 0.2, -1).normalize();

/** Whether a ray from far out along the direction meets the part first, through any of its farthest points. */
function isSeen(table: PartTable, part: number, towards: Vector3): boolean {
  const { reach } = table.kinds[table.kindOf[part]!]!;
  for (let i = 0; i < reach.length; i += 3) {
    const m = table.matrices.subarray(16 * part, 16 * part + 16);
    const [x, y, z] = [reach[i]! * 0.97, reach[i + 1]! * 0.97, reach[i + 2]! * 0.97];
    const point = new Vector3(
      m[0]! * x + m[4]! * y + m[8]! * z + m[12]!,
      m[1]! * x + m[5]! * y + m[9]! * z + m[13]!,
      m[2]! * x + m[6]! * y + m[10]! * z + m[14]!,
    );
    const ray = new Ray(point.addScaledVector(towards, 20), towards.clone().negate());
    if (pick(table, ray, null)?.part === part) return true;
  }
  return false;
}

describe('what covers a part', () => {
  it('is looked past, and the view stays where nothing covers it', async () => {
    const table = partTable(await sampleDocument());
    const bolt = table.indexOf.get('hub-bolts/05')!;
    const shell = table.indexOf.get('shell')!;
    expect(uncovered(table, [shell], FRONT, null)).toBe(FRONT);
    expect(isSeen(table, bolt, FRONT)).toBe(false);
    const found = uncovered(table, [bolt], FRONT, null);
    expect(found).not.toBe(FRONT);
    expect(isSeen(table, bolt, found)).toBe(true);
    // Past the other side there would be the whole drum: it goes to the right.
    expect(found.x).toBeGreaterThan(0);
  });

  it('leaves the view alone where a part is seen from nowhere', async () => {
    const table = partTable(await sampleDocument());
    const inner = table.indexOf.get('exciter-housing')!;
    expect(uncovered(table, [inner], FRONT, null)).toBe(FRONT);
    // With the rest away it is seen from where one stands.
    table.shown.fill(HIDDEN);
    table.shown[inner] = 1;
    expect(uncovered(table, [inner], FRONT, null)).toBe(FRONT);
    expect(meetsBefore(table, new Ray(new Vector3(), FRONT), null, 30, new Set([inner]))).toBe(false);
  });
});

describe('Alder One', () => {
  const bodies = Object.entries(solids).map(([id, each]) => [
    id,
    each.bodies.map((body) => ({ ...body, mesh: toMeshData(body.solid) })),
  ]);
  const document = { machine, solids: Object.fromEntries(bodies) } as MachineDocument;

  it('shows the plugs and bolts of its ends from that end, within a bounded number of rays', () => {
    const table = partTable(document);
    for (const id of ['level-plug', 'fill-plug', 'window-plug-1']) {
      const part = table.indexOf.get(id)!;
      const found = uncovered(table, [part], FRONT, null);
      expect(isSeen(table, part, found), id).toBe(true);
    }
    expect(uncovered(table, [table.indexOf.get('level-plug')!], FRONT, null).x).toBeGreaterThan(0);
    expect(uncovered(table, [table.indexOf.get('window-plug-1')!], FRONT, null).x).toBeLessThan(0);
  });

  it('finds the spindle nut once what covers it is off', () => {
    const table = partTable(document);
    const nut = table.indexOf.get('spindle-nut')!;
    const before = uncovered(table, [nut], FRONT, null);
    expect(isSeen(table, nut, before)).toBe(false);
    expect(before).toBe(FRONT);
    // Free on the bench, with its spindle alone.
    table.document.machine.parts.forEach((part, i) => {
      if (!['spindle-nut', 'spindle'].includes(part.id)) table.shown[i] = HIDDEN;
    });
    expect(isSeen(table, nut, uncovered(table, [nut], new Vector3(1, 0, 0), null))).toBe(true);
  });
});
