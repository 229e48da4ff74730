/** Faults as lines: `file:line path: expected ..., found ...`. */
import type { Fault } from '../../core/kernel';
import { say } from './say';

/** One fault as one line. */
export function printFault(fault: Fault): string {
  const place =
    fault.file === undefined ? '' : `${fault.file}${fault.line === undefined ? '' : `:${fault.line}`} `;
  return say({
    key: 'fault.line',
    params: { where: `${place}${fault.path}`, expected: fault.expected, found: fault.found },
  });
}

export const printFaults = (faults: readonly Fault[]): string => faults.map(printFault).join('\n');
