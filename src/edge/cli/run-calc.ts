/**
 * The command line of the mechanics, as a function of its arguments and of what was typed, so that tests
 * and calc.ts share it. No arguments: the list. A name: one JSON object from one JSON object.
 */
import { message, type Fault, type Message } from '../../core/kernel';
import type { Calculation } from './calculation';
import { checkInput } from './check-input';
import { describeCalculation } from './describe';
import { say } from './say';

export interface Printed {
  readonly stdout: string;
  readonly stderr: string;
  /** 0 done, 2 bad input. */
  readonly code: 0 | 2;
}

/**
 * @param calculations all that are known
 * @param args words after `calc --`
 * @param readInput gives standard input, called only when it is needed
 */
export async function runCalc(
  calculations: readonly Calculation[],
  args: readonly string[],
  readInput: () => Promise<string>,
): Promise<Printed> {
  const [name, ...more] = args;
  if (name === undefined) return done(calculations.map(describeCalculation));
  const calculation = calculations.find((each) => each.name === name);
  if (calculation === undefined) {
    const names = calculations.map((each) => each.name);
    return refused([say(message('calc.fault.unknown-name', { name, names }))]);
  }
  if (more.length > 0) return refused([say(message('calc.fault.too-many-words', { words: more }))]);

  const typed = await readInput();
  let raw: unknown;
  try {
    raw = JSON.parse(typed);
  } catch (error) {
    const key = typed.trim() === '' ? 'calc.fault.no-input' : 'calc.fault.not-json';
    return refused([say(message(key, { name, why: oneLine(error) }))]);
  }
  const checked = checkInput(calculation.input, raw);
  if (!checked.ok) return refused(checked.faults.map(faultLine));

  let result;
  try {
    result = await calculation.run(checked.value.value as never);
  } catch (error) {
    // a guard of the mechanics that the schema did not foresee: the input is outside what the formula covers
    return refused([say(message('calc.fault.guard', { name, why: oneLine(error) }))]);
  }
  if (!result.ok) return refused(result.faults.map(faultLine));

  const { notes = [], ...output } = result.value;
  const lost: string[] = [];
  const finite = withoutNaN(output, '', lost) as object;
  const allNotes: Message[] = [
    ...notes,
    ...checked.value.unknown.map((key) => message('calc.note.unknown-key', { key })),
    ...lost.map((key) => message('calc.note.not-finite', { key })),
  ];
  return done({ ...finite, notes: allNotes.map(say) });
}

function done(value: unknown): Printed {
  return { stdout: `${JSON.stringify(value, null, 2)}\n`, stderr: '', code: 0 };
}

function refused(lines: readonly string[]): Printed {
  return { stdout: '', stderr: lines.map((line) => `${line}\n`).join(''), code: 2 };
}

function faultLine(fault: Fault): string {
  return oneLine(
    say(message('calc.fault.line', { path: fault.path, expected: fault.expected, found: fault.found })),
  );
}

const oneLine = (what: unknown): string =>
  (what instanceof Error ? what.message : String(what)).replace(/\s+/g, ' ').trim();

/** A copy with null for every number that is not finite (an overflow, say); `lost` gets their paths. */
function withoutNaN(value: unknown, path: string, lost: string[]): unknown {
  if (typeof value === 'number') {
    if (Number.isFinite(value)) return value;
    lost.push(path);
    return null;
  }
  if (Array.isArray(value)) return value.map((item, i) => withoutNaN(item, `${path}[${i}]`, lost));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [
      key,
      withoutNaN(item, path === '' ? key : `${path}.${key}`, lost),
    ]),
  );
}
