/** A job file in, a job or all its faults out, each with file, line and path; references are checked on the machine. */
import { type Fault, fail, message, ok, printFound, type Result } from '../kernel';
import { findUnit, KNOWN_CAUTIONS, type Machine, placeIn, readYaml, type SourceFile } from '../machine';
import { type Job, jobFileSchema, type JobStep } from './schema';
import { unitsOf } from './units-of';

type Report = (path: readonly PropertyKey[], key: string, found: unknown) => void;

/** Reads one job of a machine. */
export function parseJob(file: SourceFile, machine: Machine): Result<Job> {
  const read = readYaml(file, jobFileSchema);
  if (!read.ok) return read;
  const job = read.value.data;
  const faults: Fault[] = [];
  const report: Report = (path, key, found) =>
    faults.push({ ...placeIn(read.value, path), expected: message(key), found: printFound(found) });
  checkNames(job, machine, report);
  checkUnique(job, report);
  job.steps.forEach((step, i) => checkStep(job, step, i, machine, report));
  return faults.length > 0 ? fail(faults) : ok(job);
}

/** Reads all jobs of a machine, in the order of their rank; ids are unique, and a file is named after its job. */
export function parseJobs(files: readonly SourceFile[], machine: Machine): Result<readonly Job[]> {
  const jobs: Job[] = [];
  const faults: Fault[] = [];
  for (const file of files) {
    const parsed = parseJob(file, machine);
    if (!parsed.ok) {
      faults.push(...parsed.faults);
      continue;
    }
    const { id } = parsed.value;
    const last = file.name.split('/').at(-1) ?? '';
    if (last !== `${id}.yaml`)
      faults.push({ file: file.name, path: 'id', expected: message('fault.job.file-name'), found: id });
    if (jobs.some((j) => j.id === id))
      faults.push({ file: file.name, path: 'id', expected: message('fault.once'), found: id });
    jobs.push(parsed.value);
  }
  jobs.sort((a, b) => (a.rank ?? 999) - (b.rank ?? 999) || a.id.localeCompare(b.id));
  return faults.length > 0 ? fail(faults) : ok(jobs);
}

function checkNames(job: Job, machine: Machine, report: Report): void {
  const unit = (path: readonly PropertyKey[], id: string): void => {
    if (unitsOf(machine, id).length === 0) report(path, 'fault.job.unit', id);
  };
  job.targets?.forEach((id, i) => unit(['targets', i], id));
  job.shows?.forEach((id, i) => unit(['shows', i], id));
  for (const id of Object.keys(job.options ?? {}))
    if (!(id in machine.options)) report(['options', id], 'fault.job.option', id);
  job.order?.forEach((line, i) => {
    if (line.kind !== undefined && machine.kinds[line.kind] === undefined)
      report(['order', i, 'kind'], 'fault.job.kind', line.kind);
  });
  const caution = (path: readonly PropertyKey[], entry: unknown): void => {
    if (typeof entry === 'string' && !KNOWN_CAUTIONS.includes(entry))
      report(path, 'fault.job.caution', entry);
  };
  job.cautions.forEach((entry, i) => caution(['cautions', i], entry));
  job.steps.forEach((step, i) =>
    step.cautions?.forEach((entry, k) => caution(['steps', i, 'cautions', k], entry)),
  );
}

function checkUnique(job: Job, report: Report): void {
  const steps = new Set<string>();
  const fields = new Set<string>();
  job.steps.forEach((step, i) => {
    if (steps.has(step.id)) report(['steps', i, 'id'], 'fault.once', step.id);
    steps.add(step.id);
    step.fields?.forEach((field, k) => {
      if (fields.has(field.id)) report(['steps', i, 'fields', k, 'id'], 'fault.once', field.id);
      fields.add(field.id);
    });
  });
}

function checkStep(job: Job, step: JobStep, i: number, machine: Machine, report: Report): void {
  const at = (...rest: PropertyKey[]): PropertyKey[] => ['steps', i, ...rest];
  for (const key of ['after', 'before', 'units', 'lifts'] as const)
    step[key]?.forEach((id, k) => {
      if (unitsOf(machine, id).length === 0) report(at(key, k), 'fault.job.unit', id);
    });
  if (step.after !== undefined && step.before !== undefined)
    report(at('before'), 'fault.job.one-anchor', step.before);
  const anchored = step.after ?? step.before;
  const taken = step.phase === 'apart' || step.phase === 'together';
  if (anchored !== undefined && !taken) report(at('phase'), 'fault.job.anchor-phase', step.phase);
  if (taken && job.targets === undefined) report(at('phase'), 'fault.job.no-teardown', step.phase);
  step.bolts?.forEach((id, k) => {
    if (findUnit(machine, id)?.group == null) report(at('bolts', k), 'fault.job.group', id);
  });
  if (step.hold === true && !step.fields?.some((f) => f.optional !== true))
    report(at('hold'), 'fault.job.hold-fields', step.id);
  step.fields?.forEach((field, k) => {
    if (field.type === 'choice' && (field.choices?.length ?? 0) < 2)
      report(at('fields', k, 'choices'), 'fault.job.choices', field.choices);
    if (field.type === 'number' && field.unit === undefined)
      report(at('fields', k, 'unit'), 'fault.job.field-unit', field.unit);
    if (field.min !== undefined && field.max !== undefined && field.min > field.max)
      report(at('fields', k, 'max'), 'fault.job.limits', field.max);
    if ((field.min !== undefined || field.max !== undefined) && field.source === undefined)
      report(at('fields', k, 'source'), 'fault.job.limits-source', field.source);
  });
  step.numbers?.forEach((spec, k) => checkNumber(job, spec, at('numbers', k), machine, report));
}

/** Every id that a number names: fields of this job, parts and groups of the machine. */
function checkNumber(
  job: Job,
  spec: NonNullable<JobStep['numbers']>[number],
  path: PropertyKey[],
  machine: Machine,
  report: Report,
): void {
  const fields = new Set(job.steps.flatMap((s) => s.fields?.map((f) => f.id) ?? []));
  const field = (key: PropertyKey[], id: string): void => {
    if (!fields.has(id)) report([...path, ...key], 'fault.job.field', id);
  };
  const unit = (key: PropertyKey[], id: string): void => {
    const known = machine.parts.some((p) => p.id === id) || unitsOf(machine, id).length > 0;
    if (!known) report([...path, ...key], 'fault.job.unit', id);
  };
  if ('inner' in spec) {
    unit(['inner'], spec.inner);
    unit(['outer'], spec.outer);
    const found = machine.relations.some(
      (r) => r.type === 'seat' && r.inner === spec.inner && r.outer === spec.outer,
    );
    if (!found) report(path, 'fault.job.seat', `${spec.inner} in ${spec.outer}`);
  }
  switch (spec.number) {
    case 'clearance':
      unit(['bearing'], spec.bearing);
      break;
    case 'joint-slip':
      if (findUnit(machine, spec.group)?.group == null)
        report([...path, 'group'], 'fault.job.group', spec.group);
      break;
    case 'isolators':
      spec.sets.forEach((id, i) => unit(['sets', i], id));
      break;
    case 'set-match':
      unit(['set'], spec.set);
      spec.fields.forEach((id, i) => field(['fields', i], id));
      break;
    case 'shims':
    case 'scrapers':
      for (const [key, id] of Object.entries(spec.fields)) field(['fields', key], id);
      if (spec.number === 'scrapers')
        for (const [key, id] of Object.entries(spec.depths ?? {})) field(['depths', key], id);
      break;
    case 'end-play':
      field(['field'], spec.field);
      if (
        !machine.relations.some(
          (r) => r.type === 'thread' && r.male === spec.male && r.female === spec.female,
        )
      )
        report(path, 'fault.job.thread', `${spec.male} in ${spec.female}`);
      break;
    case 'oil':
      unit(['case'], spec.case);
      if (!machine.relations.some((r) => r.type === 'fluid' && r.fluid === spec.fluid))
        report([...path, 'fluid'], 'fault.job.fluid', spec.fluid);
      break;
    case 'tow-pull':
      if (machine.drive === undefined) report(path, 'fault.job.no-drive', spec.number);
      break;
    default:
  }
}
