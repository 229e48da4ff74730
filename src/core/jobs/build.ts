/** A job on a machine, made into a sheet: ordered steps, numbers, fields, lists. Pure; the same input gives the same sheet. */
import type { Plan } from '../assembly';
import { type Message, message } from '../kernel';
import { byGravity, findUnit, partsOfRef, signalOf } from '../machine';
import { boltsOf, torqueField } from './bolts';
import { liftOf, liftOfUnits } from './lifts';
import { itemsOf, balloonsOf, orderLines, sourcesOf, toolLines } from './lists';
import { numbersFor } from './numbers/all';
import type { NumberContext } from './numbers/context';
import { orderSteps, type Placed } from './order';
import type { JobCaution, JobField, JobStep } from './schema';
import type { JobSheet, SheetBolts, SheetCaution, SheetField, SheetNumber, SheetStep } from './sheet-types';
import { quantityOf } from './units';
import { partsOfUnits, unitsOf } from './units-of';

export interface JobSheetInput extends NumberContext {
  /** Of `planJob`; null where nothing is taken apart. */
  readonly plan: Plan | null;
}

export function buildJobSheet(input: JobSheetInput): JobSheet {
  const { machine, job, plan } = input;
  const placed = orderSteps(machine, job, plan);
  const seen = new Set<string>();
  const torqued = torqueSteps(job);
  const steps = placed.map((each, i) => {
    const step =
      each.from === 'planner'
        ? plannerStep(input, each, i + 1, torqued)
        : ownStep(input, each.step, i + 1, torqued);
    return { ...step, numbers: unique(step.numbers, seen) };
  });
  const lifts = steps.flatMap((s) => (s.lift === null ? [] : [{ ...s.lift, stepNumber: s.number }]));
  return {
    machineId: machine.id,
    jobId: job.id,
    title: job.title,
    summary: job.summary,
    work: job.work,
    prerequisites: job.prerequisites,
    cautions: cautionsOf(job.cautions),
    steps,
    fields: steps.flatMap((s) => s.fields),
    items: itemsOf(machine, steps),
    order: orderLines(machine, job),
    tools: toolLines(steps),
    ownTools: job.tools ?? [],
    // what is lifted off is lifted on again: each lift once
    lifts: lifts.filter((l) => steps[l.stepNumber - 1]?.phase !== 'together'),
    people: job.people,
    time_s: steps.reduce((sum, s) => sum + s.time_s, 0),
    sources: sourcesOf(steps),
    notes: job.notes ?? [],
    plan: plan === null ? null : { orderExists: plan.orderExists, provenLeast: plan.provenLeast },
  };
}

const WHAT = {
  apart: { remove: 'remove', bench: 'bench', support: 'support', drain: 'drain' },
  together: { remove: 'refit', bench: 'bench-refit', support: 'unsupport', drain: 'refill' },
} as const;
const ACTION = {
  apart: { remove: 'remove', bench: 'bench', support: 'support', drain: 'drain' },
  together: { remove: 'fit', bench: 'fit', support: 'unsupport', drain: 'fill' },
} as const;

function plannerStep(
  input: JobSheetInput,
  placed: Extract<Placed, { from: 'planner' }>,
  number: number,
  torqued: ReadonlyMap<string, string>,
): SheetStep {
  const { machine, masses, values } = input;
  const { step, phase, planStep } = placed;
  const id = `${phase}/${step.kind}/${step.unitIds[0] ?? planStep}`;
  // of a subassembly that goes back whole the bolts are tight already; a step of the job's own shows its own
  const fastens = step.unitIds.every((unit) => findUnit(machine, unit)?.group != null);
  const bolts =
    phase === 'together' && fastens
      ? step.unitIds
          .filter((unit) => !torqued.has(unit))
          .flatMap((unit) => boltsOf(machine, unit, values) ?? [])
      : [];
  const kind = WHAT[phase][step.kind];
  return {
    id,
    number,
    phase,
    from: 'planner',
    planStep,
    action: ACTION[phase][step.kind],
    text: null,
    whyText: null,
    what: message(`job.step.${kind}`, { part: step.unitIds[0] ?? '', parts: [...step.unitIds] }),
    // why it had to leave when it did says nothing about its return
    why: phase === 'apart' ? step.why : [],
    unitIds: step.unitIds,
    partIds: partsOfUnits(machine, step.unitIds),
    balloons: balloonsOf(machine, partsOfUnits(machine, step.unitIds)),
    cautions: cautionsOf(step.cautions),
    supports: phase === 'apart' ? step.supports : step.kind === 'support' ? step.supports : [],
    lift: liftOf(machine, masses, step),
    tools: step.tools,
    bolts,
    numbers: bolts.flatMap((b) => b.illustration),
    fields: bolts.map((b) => torqueField(b, id)),
    hold: false,
    time_s: step.time_s,
    people: 1,
  };
}

/** Bolts of other steps are undone or looked at: their tool is shown, their torque is not. */
const tightens = (step: JobStep): boolean => step.action === 'torque' || step.action === 'adjust';

/** Step of the job's own that asks for a group's torque: its first while putting together, or its first at all. */
function torqueSteps(job: JobSheetInput['job']): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const take = (steps: readonly JobStep[]): void => {
    for (const step of steps) for (const id of step.bolts ?? []) if (!found.has(id)) found.set(id, step.id);
  };
  take(job.steps.filter((s) => s.phase === 'together'));
  if (job.targets === undefined) take(job.steps);
  return found;
}

function ownStep(
  input: JobSheetInput,
  step: JobStep,
  number: number,
  torqued: ReadonlyMap<string, string>,
): SheetStep {
  const { machine, values } = input;
  const bolts: readonly SheetBolts[] = (tightens(step) ? (step.bolts ?? []) : []).flatMap(
    (id) => boltsOf(machine, id, values) ?? [],
  );
  const named = [...(step.units ?? []), ...(step.bolts ?? [])];
  const unitIds = [...new Set(named.flatMap((id) => unitsOf(machine, id)))];
  const partIds = [...new Set(named.flatMap((id) => partsOfRef(machine, id)))];
  const tools = (step.bolts ?? []).flatMap((id) => {
    const tool = findUnit(machine, id)?.group?.tool;
    return tool === undefined || tool.drive === 'none'
      ? []
      : [
          {
            kind: tool.drive === 'socket-hex' ? ('hex-key' as const) : ('socket' as const),
            size_m: tool.size_m,
            drive: '',
            extension_m: 0,
          },
        ];
  });
  return {
    id: step.id,
    number,
    phase: step.phase,
    from: 'job',
    planStep: null,
    action: step.action,
    text: step.text,
    whyText: step.why ?? null,
    what: null,
    why: [],
    unitIds,
    partIds,
    balloons: balloonsOf(machine, partIds),
    cautions: cautionsOf(step.cautions ?? []),
    supports: [],
    lift:
      step.lifts === undefined
        ? null
        : liftOfUnits(
            machine,
            input.masses,
            step.lifts.flatMap((id) => unitsOf(machine, id)),
          ),
    tools,
    bolts,
    numbers: [
      ...(step.numbers ?? []).flatMap((spec) => numbersFor(input, spec)),
      ...bolts.flatMap((b) => b.illustration),
    ],
    fields: [
      ...(step.fields ?? []).map((field) => sheetField(field, step.id)),
      ...bolts
        .filter((b) => torqued.get(b.groupId) === step.id)
        .map((b) => ({ ...torqueField(b, step.id), optional: step.hold !== true })),
    ],
    hold: step.hold ?? false,
    time_s: step.time_s,
    people: step.people ?? 1,
  };
}

function sheetField(field: JobField, stepId: string): SheetField {
  const source = field.from_manual === true ? 'from-manual' : field.source;
  return {
    id: field.id,
    stepId,
    type: field.type,
    label: field.label,
    unit: field.unit ?? null,
    quantity: quantityOf(field),
    min: field.min ?? null,
    max: field.max ?? null,
    source: source === undefined ? null : message(`job.source.${source}`),
    fromManual: field.from_manual ?? false,
    choices: (field.choices ?? []).map(({ id, label, good }) => ({ id, label, good: good ?? null })),
    optional: field.optional ?? false,
  };
}

/** Gravest first, each once. */
export function cautionsOf(cautions: readonly JobCaution[]): readonly SheetCaution[] {
  const out = cautions.map((entry): SheetCaution =>
    typeof entry === 'string'
      ? { signal: signalOf(entry), id: entry, text: null }
      : { signal: entry.signal, id: null, text: entry.text },
  );
  return out.sort((a, b) => byGravity(a.signal, b.signal));
}

/** Gives each number an id of its own; a number that a step before already shows alike is kept (it stands at its step). */
function unique(numbers: readonly SheetNumber[], seen: Set<string>): readonly SheetNumber[] {
  return numbers.map((n) => {
    const params = Object.values(n.label.params ?? {})
      .filter((p): p is string | number => typeof p === 'string' || typeof p === 'number')
      .join('-');
    const inner = Object.values(n.label.params ?? {})
      .filter((p): p is Message => typeof p === 'object' && 'key' in p)
      .map((p) => p.key.split('.').at(-1))
      .join('-');
    const stem = [n.id, params, inner].filter((x) => x !== '').join('-');
    let id = stem;
    for (let i = 2; seen.has(id); i++) id = `${stem}-${i}`;
    seen.add(id);
    return { ...n, id };
  });
}
