/**
 * Jobs: what a mechanic does to a machine, as data, and the sheet made of it.
 *
 * - `parseJob(file, machine)`, `parseJobs(files, machine)`: a job file (schema: `jobFileSchema`) -> `Job` or all faults.
 *   `withTexts(jobs, files)`: the jobs with their words in further languages.
 * - `planJob(machine, graph, job)`: the joined least teardown (`Plan`), null where nothing is taken apart. Baked jobs
 *   carry it, so the app needs no graph. `machineFor(machine, job)`: the machine with the job's options (pads on).
 * - `buildJobSheet({ machine, solids, masses, job, plan, study, values })` -> `JobSheet`: steps in order (prepare, apart,
 *   work, measure, together, test), each with units, balloons, cautions, supports, lift, tools, bolts, numbers, fields;
 *   lists of items, tools, orders, lifts, sources. `values` are the fields filled so far (own torque, gaps, end play):
 *   build again when they change. Core speaks in messages (`job.*`); a job's own words are `Text` (`textIn(text, 'en')`).
 * - `startProgress`, `reduceProgress(sheet, progress, event)`, `mayTick`, `openHold`: ticks, fields, notes and the rule of
 *   the hold point. `exportProgress` / `importProgress`: JSON without loss, every fault listed.
 * - `sheetPictures(machine, sheet, plan)`: which steps share a drawing, what is drawn and what has left by then.
 * - `jobVerdict(study, measured)`: measured amplitude and rate against expected; `historyEntry(...)` for the machine's log.
 */
export * from './schema';
export * from './number-specs';
export * from './sheet-types';
export * from './parse';
export { withTexts } from './texts';
export * from './plan';
export * from './options';
export { buildJobSheet, type JobSheetInput } from './build';
export { lostAnchors } from './order';
export { torqueFieldOf } from './bolts';
export type { NumberContext } from './numbers/context';
export * from './progress';
export * from './transfer';
export * from './verdict';
export * from './history';
export * from './pictures';
