/** What questions are about: one prepared machine. Keep one object a machine; tables are kept beside it. */
import type { BlockingGraph, Masses, Plan, Solids } from '../assembly';
import type { Plant } from '../faults';
import type { Machine } from '../machine';
import type { exciterStudy } from '../studies';

export interface Subject {
  readonly machine: Machine;
  readonly solids: Solids;
  readonly masses: Masses;
  /** Taking the whole drum apart. */
  readonly teardown: Plan;
  /** Where the shot settles, from simulated runs; undefined where the machine has none. */
  readonly fit: Parameters<typeof exciterStudy>[4];
  /** What blocks what; null until it has been worked out. */
  readonly graph: BlockingGraph | null;
  /** The machine on the fault bench; left out or null where its faults have not been loaded or it has none. */
  readonly plant?: Plant | null;
}
