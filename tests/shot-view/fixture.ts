/** The exciter of the invented roller on its own, and little made-up runs to look at. */
import { resolve } from 'node:path';
import type { MachineDocument } from '../../src/core/document';
import { buildKind, kindMasses, loadSolidKernel, toMeshData } from '../../src/core/geometry';
import { ok, type Result } from '../../src/core/kernel';
import { expandMachine } from '../../src/core/machine';
import {
  createBalls,
  createRecorder,
  driveOf,
  openRecording,
  pocketOf,
  readShot,
  setBall,
  type ShotParameters,
} from '../../src/core/shot';
import { parseFit } from '../../src/core/studies';
import { readFitFiles } from '../../src/edge/content/model-files';
import type { Ports, ShotTake } from '../../src/store';

/** The chamber is that of Alder One, so its table of simulated runs holds here too. */
function alderOneFit() {
  const folder = resolve(import.meta.dirname, '../../models/alder-one');
  const read = parseFit(readFitFiles(folder)[0]!);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

const steel = { item: 1, material: 'steel', finish: 'plain', family: 'exciter' } as const;

async function build(): Promise<MachineDocument> {
  const machine = expandMachine({
    schema_version: 1,
    machine: { id: 'bench', name: 'Bench', drum_width_m: 2.13, drum_radius_m: 0.75 },
    materials: { steel: { density_kg_m3: 7850, source: 'sample' } },
    kinds: {
      housing: {
        ...steel,
        params: {
          builder: 'exciter-housing',
          chamber: { radius_m: 0.11, eccentricity_m: 0.046, from_x_m: -0.46, to_x_m: 0.59 },
          shell_m: 0.008,
          end_plate: { radius_m: 0.118, thickness_m: 0.025 },
          baffle: {
            psi_deg: 66,
            beta_deg: 4,
            leg1_m: 0.09,
            leg2_m: 0.02,
            side: 1,
            pocket_side: 1,
            half_thickness_m: 0.004,
          },
          left_shaft: [{ from_x_m: -0.608, to_x_m: -0.485, inner_m: 0, outer_m: 0.05 }],
          right_shaft: [{ from_x_m: 0.615, to_x_m: 0.762, inner_m: 0, outer_m: 0.05 }],
          trim_bar: {
            angle_deg: 187.3,
            arm_m: 0.11,
            radial_m: 0.05,
            tangential_m: 0.064,
            from_x_m: -0.46,
            to_x_m: 0.59,
          },
          webs: { x_m: [-0.43, 0.56], thickness_m: 0.012, width_m: 0.05 },
        },
      },
      shot: { ...steel, mass_kg: 60.2, params: { builder: 'shot', housing: 'housing', gap_m: 0.0002 } },
    },
    parts: [
      { id: 'exciter', kind: 'housing', moves_with: 'exciter', side: 'vibrating' },
      { id: 'shot', kind: 'shot', moves_with: 'exciter', side: 'vibrating' },
    ],
    relations: [{ type: 'weld', unit: 'exciter', parts: ['exciter', 'shot'] }],
    operation: {
      exciter_part: 'exciter',
      shot_part: 'shot',
      shot_mass_kg: 60.2,
      shot_density_kg_m3: 7850,
      shot_packing: 0.62,
      ball_diameter_m: 0.012,
      frequency_high_Hz: 30,
      frequency_low_Hz: 34,
      soft_start_s: 4,
      friction: 0.3,
      bearings: { left: 'exciter', right: 'exciter', left_x_m: -0.57, right_x_m: 0.7, C_N: 8e5, C0_N: 9e5 },
      operating_mass_kg: 12200,
      drum_axle_mass_kg: 6900,
    },
  });
  const kernel = await loadSolidKernel();
  const solids = Object.fromEntries(
    Object.entries(machine.kinds).map(([id, kind]) => [id, buildKind(kernel, kind, machine)]),
  );
  const none = new Float32Array(0);
  return {
    machine,
    solids: Object.fromEntries(
      Object.entries(solids).map(([id, { bodies }]) => [
        id,
        bodies.map((body) => ({ ...body, mesh: toMeshData(body.solid) })),
      ]),
    ),
    masses: kindMasses(machine, solids) as MachineDocument['masses'],
    teardown: {
      machineId: 'bench',
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
      partCount: 2,
      groupOffsets: none,
      innerOffsets: none,
      windows: none,
      spread_m: 0,
      laidDown: [],
    },
    hash: 'bench',
    fit: alderOneFit(),
  };
}

let made: Promise<MachineDocument> | undefined;
export const exciterDocument = (): Promise<MachineDocument> => (made ??= build());

/** A made-up run of three balls that stand at `arm_m` on body +x, for what needs no true shot. */
export function stillTake(parameters: ShotParameters, arm_m = 0.1): ShotTake {
  const balls = createBalls(3);
  for (let i = 0; i < 3; i++) setBall(balls, i, [arm_m, 0.001 * i, 0.01 * i], 0.006, 0.007);
  const turning = { angle_rad: 0, speed_rad_s: 0, acceleration_rad_s2: 0 };
  const times = [0, 0.5, 1];
  const recorder = createRecorder(parameters, balls);
  for (const time_s of times) {
    driveOf(parameters)(time_s, turning);
    const pocket = pocketOf(parameters.chamber, parameters.baffle);
    recorder.add(balls, readShot(parameters, pocket, balls, turning, time_s));
  }
  const opened = openRecording(recorder.finish());
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  return opened.value;
}

/** A worker that answers with `stillTake` when told to, and remembers what it was asked. */
export function fakeWorker(recordings: Awaited<ReturnType<Ports['shot']['loadRecordings']>> = null) {
  const asked: ShotParameters[] = [];
  let finish: ((value: Result<ShotTake> | null) => void) | undefined;
  let tell: ((share: number, left_s: number | null) => void) | undefined;
  const port: Ports['shot'] = {
    loadRecordings: () => Promise.resolve(recordings),
    run: (parameters, onProgress) => {
      asked.push(parameters);
      tell = onProgress;
      return {
        result: new Promise((resolve) => (finish = resolve)),
        cancel: () => finish?.(null),
      };
    },
  };
  return {
    port,
    asked,
    progress: (share: number, left_s: number | null) => tell?.(share, left_s),
    answer: (arm_m: number) => finish?.(ok(stillTake(asked[asked.length - 1]!, arm_m))),
    fail: (result: Result<ShotTake>) => finish?.(result),
  };
}

/** Lets promises that are due come through. */
export const due = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
