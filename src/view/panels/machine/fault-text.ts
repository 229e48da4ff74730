/** A fault as one line: `file:line path: expected ..., found ...`. */
import type { Fault } from '../../../core/kernel';
import type { Speech } from '../../bind';

export function faultText(speech: Speech, fault: Fault): string {
  const line = fault.line === undefined ? '' : `:${fault.line}`;
  const where = fault.file === undefined ? fault.path : `${fault.file}${line} ${fault.path}`;
  return speech.t('fault.line', { where, expected: speech.say(fault.expected), found: fault.found });
}
