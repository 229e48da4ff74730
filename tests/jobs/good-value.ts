/** A value that each field of a sheet takes as good. */
import type { SheetField } from '../../src/core/jobs';

export function goodValue(field: SheetField): number | string | boolean {
  switch (field.type) {
    case 'check':
      return true;
    case 'text':
      return 'looked at';
    case 'choice':
      return (field.choices.find((c) => c.good === true) ?? field.choices.find((c) => c.good === null))!.id;
    case 'number':
      return field.min !== null && field.max !== null
        ? (field.min + field.max) / 2
        : (field.min ?? field.max ?? 1);
  }
}
