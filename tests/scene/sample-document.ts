/**
 * A small machine of turned solids for tests of the stage: a drum with heads, hub, spindle, isolators and bolts, invented
 * and much simpler than the shipped one.
 */
import type { MachineDocument } from '../../src/core/document';
import { buildKind, loadSolidKernel, toMeshData } from '../../src/core/geometry';
import { type CompleteMachineFile, expandMachine, type Finish } from '../../src/core/machine';

type Row = readonly [from: number, to: number, inner: number, outer: number];

const mm = 1e-3;

/** Stations in millimetres, as the design basis lists them. */
const turned = (finish: Finish, item: number, rows: readonly Row[], more: object = {}) => ({
  item,
  material: 'steel',
  finish,
  family: 'drum' as const,
  params: {
    builder: 'turned' as const,
    chamfer_m: 0.002,
    stations: rows.map(([from, to, inner, outer]) => ({
      from_x_m: from * mm,
      to_x_m: to * mm,
      inner_m: inner * mm,
      outer_m: outer * mm,
    })),
    ...more,
  },
});

const holes = (diameter: number, count: number, radius: number) => ({
  holes: [{ diameter_m: diameter * mm, count, radius_m: radius * mm }],
});

export const SAMPLE_KINDS = {
  shell: turned('shell', 1, [[-1065, 1065, 722, 750]]),
  'head-left': turned('painted', 2, [[-760, -730, 0, 722]]),
  'head-right': turned('painted', 3, [[700, 730, 230, 722]], holes(160, 6, 480)),
  'exciter-case': turned('plain', 4, [[-730, 700, 215, 231]]),
  hub: turned(
    'cast',
    5,
    [
      [670, 700, 122, 214],
      [700, 730, 122, 230],
      [730, 750, 122, 330],
      [750, 765, 100, 330],
      [765, 838, 100, 150],
      [838, 907, 92, 150],
      [907, 975, 112.5, 150],
    ],
    holes(26, 16, 290),
  ),
  spindle: turned(
    'machined',
    6,
    [
      [765, 840, 34, 65],
      [840, 955, 34, 75],
      [955, 1010, 34, 90],
      [1010, 1040, 34, 200],
    ],
    { ...holes(22, 12, 165), shaft: true },
  ),
  'mounting-plate': turned('painted', 7, [[1040, 1070, 110, 365]], holes(22, 12, 165)),
  isolator: turned('rubber', 8, [[0, 55, 0, 58]]),
  'isolator-plate': turned('machined', 9, [[0, 10, 0, 66]]),
  bracket: turned('painted', 10, [[1150, 1175, 120, 460]]),
  'exciter-housing': turned('cast', 11, [
    [-485, 615, 110, 118],
    [-536, -485, 0, 118],
    [615, 669, 0, 118],
  ]),
  'bearing-outer': turned('polished', 12, [[670, 743, 88, 107.5]]),
  'bearing-inner': turned('polished', 13, [[670, 743, 50, 70]]),
  'drive-plate': turned('painted', 14, [[-965, -940, 100, 515]]),
  'drive-motor': turned('cast', 15, [
    [-1240, -990, 0, 184],
    [-990, -965, 0, 305],
  ]),
  seal: turned('brass', 16, [[750, 762, 50, 65]]),
  'hub-bolt': turned(
    'bolt',
    17,
    [
      [-60, 0, 0, 12],
      [0, 15, 0, 18],
    ],
    { shaft: true },
  ),
} satisfies CompleteMachineFile['kinds'];

const ring = (count: number, radius: number, x: number) => ({
  type: 'circle' as const,
  count,
  radius_m: radius * mm,
  start_deg: 0,
  x_m: x * mm,
  seen_from: 'right' as const,
});

const part = (
  id: keyof typeof SAMPLE_KINDS,
  moves_with: 'frame' | 'drum' | 'exciter' | 'spindle' = 'drum',
) => ({
  id,
  kind: id,
  moves_with,
  side: 'vibrating' as const,
});

export const SAMPLE_PARTS: NonNullable<CompleteMachineFile['parts']> = [
  part('shell'),
  part('head-left'),
  part('head-right'),
  part('exciter-case'),
  part('hub'),
  part('spindle', 'spindle'),
  part('mounting-plate', 'spindle'),
  { ...part('isolator', 'frame'), pattern: ring(8, 290, 1080) },
  { ...part('isolator-plate', 'frame'), pattern: ring(8, 290, 1135) },
  part('bracket', 'frame'),
  part('exciter-housing', 'exciter'),
  part('bearing-outer'),
  part('bearing-inner', 'exciter'),
  part('drive-plate'),
  { ...part('drive-motor', 'frame'), context: true },
  { ...part('seal'), option: 'sealed' },
];

export const SAMPLE_GROUPS: NonNullable<CompleteMachineFile['groups']> = [
  {
    id: 'hub-bolts',
    kind: 'hub-bolt',
    moves_with: 'drum',
    side: 'vibrating',
    pattern: ring(16, 290, 765),
    joins: ['hub', 'head-right'],
    thread: { designation: 'M24', diameter_m: 0.024, pitch_m: 0.003, class: '10.9' },
    engaged_m: 0.03,
    grip_m: 0.03,
    tool: { drive: 'hex', size_m: 0.036 },
  },
];

const operation: CompleteMachineFile['operation'] = {
  exciter_part: 'exciter-housing',
  shot_part: null,
  shot_mass_kg: 60,
  shot_density_kg_m3: 7800,
  shot_packing: 0.62,
  ball_diameter_m: 0.012,
  frequency_high_Hz: 30,
  frequency_low_Hz: 34,
  soft_start_s: 4,
  friction: 0.3,
  bearings: {
    left: 'bearing-outer',
    right: 'bearing-outer',
    left_x_m: -0.57,
    right_x_m: 0.7,
    C_N: 8e5,
    C0_N: 9.5e5,
  },
  operating_mass_kg: 12200,
  drum_axle_mass_kg: 6900,
};

let made: Promise<MachineDocument> | undefined;

/** The document, built once a test file; exploded along x by place, no teardown. */
export function sampleDocument(): Promise<MachineDocument> {
  made ??= build();
  return made;
}

async function build(): Promise<MachineDocument> {
  const machine = expandMachine({
    schema_version: 1,
    machine: { id: 'sample', name: 'Sample', drum_width_m: 2.13, drum_radius_m: 0.75 },
    materials: { steel: { density_kg_m3: 7850, source: 'sample' } },
    kinds: SAMPLE_KINDS,
    parts: SAMPLE_PARTS,
    groups: SAMPLE_GROUPS,
    options: { sealed: { on: true } },
    operation,
  });
  const kernel = await loadSolidKernel();
  const solids: MachineDocument['solids'] = Object.fromEntries(
    Object.entries(machine.kinds).map(([id, kind]) => [
      id,
      buildKind(kernel, kind, machine).bodies.map((body) => ({ ...body, mesh: toMeshData(body.solid) })),
    ]),
  );
  const count = machine.parts.length;
  const groupOffsets = new Float32Array(3 * count);
  const windows = new Float32Array(4 * count);
  machine.parts.forEach((_, i) => {
    groupOffsets[3 * i] = 0.1 * i;
    windows.set([0, 1, 0, 1], 4 * i);
  });
  return {
    machine,
    solids,
    masses: {},
    teardown: {
      machineId: machine.id,
      target: 'all',
      least: 'units',
      steps: [],
      orderExists: true,
      stuckIds: [],
      stayIds: [],
      provenLeast: false,
      cost: 0,
      lowerBound: 0,
    },
    explode: {
      partCount: count,
      groupOffsets,
      innerOffsets: new Float32Array(3 * count),
      windows,
      spread_m: 3,
      laidDown: [],
    },
    hash: 'sample',
  };
}
