/** Fault files in, a fault book or all their faults out, each with file, line and path. */
import { fail, type Fault, message, ok, printFound, type Result } from '../kernel';
import { type Machine, partsOfRef, placeIn, type ReadYaml, readYaml, type SourceFile } from '../machine';
import { WHOLE_INPUTS, type InputName } from './inputs';
import { COMPUTED_SIGNS } from './reading-names';
import { type FaultBook, type FaultFile, faultFileSchema } from './schema';

type Read = ReadYaml<FaultFile>;

/** Reads the fault files of one machine; the machine is asked whether the named parts exist. */
export function parseFaultBook(files: readonly SourceFile[], machine: Machine): Result<FaultBook> {
  const faults: Fault[] = [];
  const reads: Read[] = [];
  for (const file of files) {
    const read = readYaml(file, faultFileSchema);
    if (read.ok) reads.push(read.value);
    else faults.push(...read.faults);
  }
  if (faults.length > 0) return fail(faults);
  const single = <K extends 'bench' | 'hypotheses'>(key: K): FaultFile[K] => {
    const holders = reads.filter((r) => r.data[key] !== undefined);
    for (const extra of holders.slice(1))
      faults.push({ ...placeIn(extra, [key]), expected: message('fault.once'), found: key });
    if (holders.length === 0)
      faults.push({
        file: files.map((f) => f.name).join(', '),
        path: key,
        expected: message('fault.section'),
        found: printFound(undefined),
      });
    return holders[0]?.data[key];
  };
  const bench = single('bench');
  const hypotheses = single('hypotheses');
  const inputs: FaultBook['inputs'] = {};
  for (const read of reads)
    for (const [key, value] of Object.entries(read.data.inputs ?? {})) {
      if (key in inputs)
        faults.push({ ...placeIn(read, ['inputs', key]), expected: message('fault.once'), found: key });
      if (value !== undefined) inputs[key] = value;
    }
  const seen = new Set<string>();
  for (const section of ['faults', 'measurements'] as const)
    for (const read of reads)
      (read.data[section] ?? []).forEach((entry, i) => {
        const key = `${section}/${entry.id}`;
        if (seen.has(key))
          faults.push({
            ...placeIn(read, [section, i, 'id']),
            expected: message('fault.once'),
            found: entry.id,
          });
        seen.add(key);
      });
  const measurements = reads.flatMap((r) => r.data.measurements ?? []);
  const outcomesOf = new Map(
    measurements.flatMap((m) => (m.kind === 'look' ? [[m.id, m.outcomes] as const] : [])),
  );
  const checkChances = (
    read: Read,
    path: PropertyKey[],
    chances: Readonly<Record<string, number>>,
    of: string,
  ) => {
    const outcomes = outcomesOf.get(of) ?? [];
    const odd = Object.keys(chances).filter((key) => !outcomes.includes(key));
    if (odd.length > 0)
      faults.push({
        ...placeIn(read, path),
        expected: message('fault.one-of', { values: [...outcomes] }),
        found: odd.join(', '),
      });
    if (!(Object.values(chances).reduce((a, b) => a + b, 0) > 0))
      faults.push({ ...placeIn(read, path), expected: message('fault.greater', { limit: 0 }), found: '0' });
  };
  for (const read of reads) {
    (read.data.measurements ?? []).forEach((entry, i) => {
      const at = ['measurements', i];
      if (entry.kind === 'number') {
        if (!(entry.span[1] > entry.span[0]))
          faults.push({ ...placeIn(read, [...at, 'span', 1]), expected: message('fault.greater', { limit: entry.span[0] }), found: String(entry.span[1]) }); // prettier-ignore
      } else if (entry.id in COMPUTED_SIGNS) {
        const own: readonly string[] = COMPUTED_SIGNS[entry.id as keyof typeof COMPUTED_SIGNS];
        if (own.join() !== entry.outcomes.join())
          faults.push({ ...placeIn(read, [...at, 'outcomes']), expected: message('fault.one-of', { values: [...own] }), found: entry.outcomes.join(', ') }); // prettier-ignore
      } else if (entry.sound === undefined)
        faults.push({ ...placeIn(read, at), expected: message('fault.section'), found: 'sound' });
      else checkChances(read, [...at, 'sound'], entry.sound, entry.id);
    });
    (read.data.faults ?? []).forEach((entry, i) => {
      const at = ['faults', i];
      entry.parts.forEach((part, k) => {
        if (partsOfRef(machine, part).length === 0)
          faults.push({
            ...placeIn(read, [...at, 'parts', k]),
            expected: message('fault.known-part'),
            found: part,
          });
      });
      entry.effects.forEach((effect, k) => {
        const whole = [effect.mild, effect.severe].every((v) => Number.isInteger(v));
        const steps = Math.abs(effect.severe - effect.mild);
        if (WHOLE_INPUTS.has(effect.input as InputName) && (!whole || (steps > 0 && steps !== entry.levels - 1)))
          faults.push({ ...placeIn(read, [...at, 'effects', k]), expected: message('fault.whole-steps', { count: steps + 1 }), found: String(entry.levels) }); // prettier-ignore
      });
      for (const [sign, ends] of Object.entries(entry.signs ?? {})) {
        if (!outcomesOf.has(sign) || sign in COMPUTED_SIGNS) {
          const values = [...outcomesOf.keys()].filter((key) => !(key in COMPUTED_SIGNS));
          faults.push({ ...placeIn(read, [...at, 'signs', sign]), expected: message('fault.one-of', { values }), found: sign }); // prettier-ignore
          continue;
        }
        checkChances(read, [...at, 'signs', sign, 'mild'], ends.mild, sign);
        checkChances(read, [...at, 'signs', sign, 'severe'], ends.severe, sign);
      }
    });
  }
  if (faults.length > 0 || bench === undefined || hypotheses === undefined) return fail(faults);
  return ok({ faults: reads.flatMap((r) => r.data.faults ?? []), measurements, inputs, bench, hypotheses });
}
