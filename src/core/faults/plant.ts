/** The machine on the test bench: what the physics of a fault needs of it, from its solids and its files, once. */
import { defaultOptions, isPresent, type Machine, partsOfRef } from '../machine';
import {
  exciterBasis,
  type ExciterBasis,
  exciterStudy,
  OWN_CHOICE,
  ownShotParameters,
  rollerBasis,
  type RollerBasis,
  type SettledFit,
} from '../studies';
import { INPUT_NAMES, type BenchInputs, type InputName } from './inputs';
import type { FaultBook } from './schema';

type Solids = Parameters<typeof exciterBasis>[1];
type Masses = Parameters<typeof exciterBasis>[2];

export interface Plant {
  readonly machine: Machine;
  readonly fit: SettledFit | undefined;
  readonly book: FaultBook;
  readonly exciter: ExciterBasis;
  readonly roller: RollerBasis;
  readonly sizeSpread: number;
  /** Fixed moment with the baffle torn off, and the plate that then lies loose. */
  readonly bareFixed_kgm: readonly [number, number];
  readonly plate_kg: number;
  readonly oilVolume_m3: number;
  readonly hubBolts: number;
  /** Every input of a sound machine, and its spread (one standard deviation). */
  readonly sound: BenchInputs;
  readonly spread: BenchInputs;
}

/** Null where the machine has no shot exciter, isolators or travel drive: then the book says nothing about it. */
export function createPlant(
  machine: Machine,
  solids: Solids,
  masses: Masses,
  fit: SettledFit | undefined,
  book: FaultBook,
): Plant | null {
  const exciter = exciterBasis(machine, solids, masses);
  const roller = rollerBasis(machine, solids, masses);
  const bare = exciterStudy(machine, solids, masses, { ...OWN_CHOICE, baffleOn: false }, fit);
  const run = ownShotParameters(machine, 'low');
  if (exciter === null || roller === null || bare === null || run === null || machine.drive === undefined)
    return null;
  const { leg1_m, leg2_m, half_thickness_m } = exciter.baffle;
  const oil = machine.relations.find((r) => r.type === 'fluid' && r.volume_m3 !== undefined);
  const options = defaultOptions(machine);
  const present = new Set(machine.parts.filter((p) => isPresent(p, options)).map((p) => p.id));
  const own: Partial<Record<InputName, number>> = {
    shot_share: 1,
    friction: machine.operation.friction,
    spin_up_s: machine.operation.soft_start_s,
    baffle_fitted: 1,
    spline_intact: 1,
    hardness_IRHD: roller.isolation.hardness_IRHD,
    relief_Pa: machine.drive.relief_Pa,
    hub_preload_share: 1,
    cooling_share: 1,
  };
  const value = (of: (name: InputName) => number): BenchInputs =>
    Object.fromEntries(INPUT_NAMES.map((name) => [name, of(name)])) as BenchInputs;
  return {
    machine,
    fit,
    book,
    exciter,
    roller,
    sizeSpread: run.shot.size_spread,
    bareFixed_kgm: bare.high.housing_kgm,
    plate_kg: (leg1_m + leg2_m) * 2 * half_thickness_m * exciter.chamberLength_m * exciter.steel_kg_m3,
    oilVolume_m3: oil?.type === 'fluid' ? (oil.volume_m3 ?? 0) : 0,
    hubBolts: partsOfRef(machine, 'hub-bolts').filter((id) => present.has(id)).length,
    sound: value((name) => book.inputs[name]?.sound ?? own[name] ?? 0),
    spread: value((name) =>
      name === 'settled_low_sd' || name === 'settled_high_sd' ? 1 : (book.inputs[name]?.spread ?? 0),
    ),
  };
}
