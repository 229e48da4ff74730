/** The machine as binary glTF, held against the standard's own validator. */
import { validateBytes } from 'gltf-validator';
import { describe, expect, it } from 'vitest';
import { glbSize, type GltfNames, machineGlb } from '../../src/core/exports';
import { toMeshData } from '../../src/core/geometry';
import { defaultOptions, isPresent } from '../../src/core/machine';
import { machine, solids } from '../models/alder-one';

const document = {
  machine,
  solids: Object.fromEntries(
    Object.entries(solids).map(([kind, { bodies }]) => [
      kind,
      bodies.map((body) => ({ ...body, mesh: toMeshData(body.solid) })),
    ]),
  ),
};
// One name for all of a kind: the file itself must tell them apart.
const names: GltfNames = {
  title: machine.name,
  kind: (kind) => kind,
  part: (id) => machine.parts.find((p) => p.id === id)?.kind ?? id,
  unit: (id) => id,
  material: (material, finish) => `${material} – ${finish}`,
};
const all = machine.parts.filter((p) => isPresent(p, defaultOptions(machine), true)).map((p) => p.id);
const exciter = machine.parts.filter((p) => machine.kinds[p.kind]?.family === 'exciter').map((p) => p.id);

interface Gltf {
  readonly nodes: readonly {
    readonly name: string;
    readonly mesh?: number;
    readonly children?: readonly number[];
    readonly extras?: { readonly id?: string };
    readonly translation?: readonly number[];
    readonly rotation?: readonly number[];
  }[];
  readonly meshes: readonly {
    readonly name: string;
    readonly primitives: readonly { readonly mode?: number }[];
  }[];
  readonly materials: readonly { readonly name: string }[];
}

const jsonOf = (glb: Uint8Array): Gltf => {
  const length = new DataView(glb.buffer, glb.byteOffset).getUint32(12, true);
  return JSON.parse(new TextDecoder().decode(glb.subarray(20, 20 + length))) as Gltf;
};

describe('binary glTF', () => {
  for (const [what, partIds] of [
    ['the whole machine', all],
    ['the exciter', exciter],
    ['one bolt', ['hub-bolts/03']],
  ] as const)
    it(`of ${what} passes the validator without errors or warnings`, async () => {
      const glb = machineGlb({ document, partIds, names });
      const report = await validateBytes(glb);
      expect(report.issues.messages.filter((m) => m.severity <= 1)).toEqual([]);
      expect(report.issues.numErrors).toBe(0);
      expect(report.issues.numWarnings).toBe(0);
      const drawn = report.info as unknown as { totalTriangleCount: number; drawCallCount: number };
      expect(drawn.totalTriangleCount).toBeGreaterThan(100);
      // what the menu promises
      expect(Math.abs(glbSize({ document, partIds }) / glb.length - 1)).toBeLessThan(0.12);
    });

  it('the validator does find a fault where there is one', async () => {
    const glb = machineGlb({ document, partIds: ['hub-bolts/03'], names });
    const at = glb.length - 2;
    glb[at] = 0xff;
    glb[at + 1] = 0xff;
    const report = await validateBytes(glb);
    expect(report.issues.numErrors).toBeGreaterThan(0);
  });

  it('holds every part once, each under a name of its own, with one mesh a kind and surfaces only', () => {
    const gltf = jsonOf(machineGlb({ document, partIds: all, names }));
    const withMesh = gltf.nodes.filter((n) => n.mesh !== undefined);
    expect(new Set(withMesh.map((n) => n.extras?.id))).toEqual(new Set(all));
    expect(withMesh).toHaveLength(all.length);
    expect(new Set(gltf.nodes.map((n) => n.name)).size).toBe(gltf.nodes.length);
    expect(new Set(gltf.materials.map((m) => m.name)).size).toBe(gltf.materials.length);
    const kinds = new Set(all.map((id) => machine.parts.find((p) => p.id === id)!.kind));
    expect(gltf.meshes).toHaveLength(kinds.size);
    expect(gltf.meshes.every((m) => m.primitives.every((p) => p.mode === undefined))).toBe(true);
    // sixteen hub bolts under their group
    const group = gltf.nodes.find((n) => n.extras?.id === 'hub-bolts');
    expect(group?.children).toHaveLength(16);
  });

  it('stands upright in metres with its front towards +z', () => {
    const gltf = jsonOf(machineGlb({ document, partIds: all, names }));
    expect(gltf.nodes[0]?.rotation).toEqual([0, 1, 0, 0]);
    const beam = machine.parts.find((p) => p.kind === 'cross-beam-front')!;
    expect(beam.pose.position_m[2]).toBeLessThan(0);
    const node = gltf.nodes.find((n) => n.extras?.id === beam.id);
    // a half turn about y takes z to -z
    expect(-node!.translation![2]!).toBeGreaterThan(0.3);
    expect(node!.translation).toEqual([...beam.pose.position_m]);
  });

  it('is the same each time', () => {
    const once = Buffer.from(machineGlb({ document, partIds: exciter, names }));
    expect(once.equals(machineGlb({ document, partIds: exciter, names }))).toBe(true);
  });
});
