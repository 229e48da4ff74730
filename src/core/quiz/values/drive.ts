/**
 * Named values of the travel drive: torque and pull of each end in each range at relief, the four ways up two training
 * slopes, and the pull that towing takes.
 */
import type { Machine } from '../../machine';
import { pullPerPressure } from '../../mechanics';
import { GROUNDS, type GroundId, twoSpeedStudy, type TwoSpeedStudy } from '../../studies';
import { flatten, type NamedValue } from './quantity-of';

type Values = Generator<readonly [string, NamedValue]>;

/** Slopes that texts speak of; `<name>.choice.…` says what they are. */
const SLOPES = {
  'study.traction': { ground: 'gravel', grade_percent: 30 },
  'study.slope': { ground: 'clay-wet', grade_percent: 25 },
} as const satisfies Readonly<Record<string, { ground: GroundId; grade_percent: number }>>;

/** Grades that a dead machine is towed over; rolling resistance of firm ground with some give. */
const TOW_GRADES_percent = [0, 10] as const;
const TOW_ROLLING = 0.05;
const SPEED_m_s = 1;
const RANGES = ['low', 'high'] as const;

export function* driveValues(machine: Machine): Values {
  for (const [name, { ground, grade_percent }] of Object.entries(SLOPES)) {
    const on = GROUNDS.find((each) => each.id === ground)!;
    const choice = { grade_percent, speed_m_s: SPEED_m_s, drum_adhesion: on.drum, axle_adhesion: on.tyre };
    const study = studyOn(machine, { ...choice, rolling: on.rolling_resistance });
    if (study === null) return;
    yield* flatten(`${name}.choice`, choice);
    for (const { traction, drum_range, axle_range, ...rest } of study.combinations) {
      const way = `${name}.drum-${drum_range}-axle-${axle_range}`;
      yield* flatten(way, rest);
      yield* flatten(way, traction);
    }
    // What the drum could pull on the same ground on the level: grip times the load on it.
    yield* flatten(name, { 'drum-grip-level_N': study.drum.adhesion * study.drum.load_N });
    if (name === 'study.slope') yield* endValues(machine, study);
  }
  for (const grade_percent of TOW_GRADES_percent) {
    const study = studyOn(machine, {
      grade_percent,
      speed_m_s: SPEED_m_s,
      drum_adhesion: 1,
      axle_adhesion: 1,
      rolling: TOW_ROLLING,
    });
    const pull_N = study?.combinations[0]?.traction.pull_needed_N;
    if (pull_N !== undefined) yield* flatten(`study.tow.grade-${grade_percent}`, { pull_N });
  }
}

interface Choice {
  readonly grade_percent: number;
  readonly speed_m_s: number;
  readonly drum_adhesion: number;
  readonly axle_adhesion: number;
  readonly rolling: number;
}

const studyOn = (machine: Machine, { rolling, ...choice }: Choice): TwoSpeedStudy | null =>
  machine.drive === undefined
    ? null
    : twoSpeedStudy(machine, {
        ...choice,
        rolling_resistance_N_per_N: rolling,
        relief_Pa: machine.drive.relief_Pa,
      });

/** At relief: pull = pressure x displacement x gear x efficiency / (2 pi radius); torque at the rim = pull x radius. */
function* endValues({ drive }: Machine, study: TwoSpeedStudy): Values {
  if (drive === undefined) return;
  for (const end of ['drum', 'axle'] as const)
    for (const range of RANGES) {
      const pull_N = drive.relief_Pa * pullPerPressure(study[end], range);
      yield* flatten(`study.drive.${end}-${range}`, { pull_N, torque_Nm: pull_N * study[end].radius_m });
    }
  const { drum, axle } = study;
  yield* flatten('study.drive', { weight_N: drum.load_N + axle.load_N, drum_weight_N: drum.load_N });
}
