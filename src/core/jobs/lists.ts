/** Lists of a sheet: balloons and items, what to order by boundary dimensions, tools, sources. */
import { message } from '../kernel';
import { type Kind, type Machine, partOf } from '../machine';
import type { Job } from './schema';
import type {
  JobSheet,
  SheetBalloon,
  SheetItem,
  SheetNumber,
  SheetOrder,
  SheetStep,
  SheetToolLine,
} from './sheet-types';

/** One balloon a kind, in the order of item numbers. */
export function balloonsOf(machine: Machine, wanted: readonly string[]): readonly SheetBalloon[] {
  const byKind = new Map<string, string[]>();
  for (const id of wanted) {
    const { kind } = partOf(machine, id);
    byKind.set(kind, [...(byKind.get(kind) ?? []), id]);
  }
  return [...byKind]
    .map(([kindId, partIds]) => ({ item: machine.kinds[kindId]?.item ?? 0, kindId, partIds }))
    .sort((a, b) => a.item - b.item);
}

/** Every part that the sheet touches, once. */
export function itemsOf(machine: Machine, steps: readonly SheetStep[]): readonly SheetItem[] {
  const parts = [...new Set(steps.flatMap((s) => s.partIds))];
  return balloonsOf(machine, parts).map((balloon) => ({
    ...balloon,
    count: balloon.partIds.length,
    unitIds: [...new Set(balloon.partIds.map((id) => partOf(machine, id).unit))],
  }));
}

type Dimensions = SheetOrder['dimensions'];

/** Boundary dimensions by which a part is bought. */
export function dimensionsOf(kind: Kind): Dimensions {
  const line = (name: string, value_m: number): Dimensions[number] => ({
    label: message(`job.dimension.${name}`),
    value_m,
  });
  const { params } = kind;
  switch (params.builder) {
    case 'spherical-roller-bearing':
    case 'tapered-roller-bearing':
      return [line('bore', params.bore_m), line('outside', params.outside_m), line('width', params.width_m)];
    case 'o-ring':
      return [line('inside', 2 * params.inner_m), line('section', params.outer_m - params.inner_m)];
    case 'lip-seal':
      return [
        line('shaft', 2 * params.shaft_radius_m),
        line('outside', 2 * params.outer_radius_m),
        line('width', params.width_m),
      ];
    case 'isolator':
      return [
        line('rubber-diameter', params.rubber_diameter_m),
        line('rubber-length', params.rubber_length_m),
      ];
    case 'bolt':
      return [line('thread', params.diameter_m), line('length', params.length_m)];
    default:
      return [];
  }
}

export function orderLines(machine: Machine, job: Job): readonly SheetOrder[] {
  return (job.order ?? []).map((line) => {
    const kind = line.kind === undefined ? undefined : machine.kinds[line.kind];
    return {
      kindId: line.kind ?? null,
      item: kind?.item ?? null,
      text: line.text,
      count: line.count ?? null,
      volume_m3: line.volume_m3 ?? null,
      mass_kg: line.mass_kg ?? null,
      dimensions: kind === undefined ? [] : dimensionsOf(kind),
    };
  });
}

/** Each tool once, with the steps that need it. */
export function toolLines(steps: readonly SheetStep[]): readonly SheetToolLine[] {
  const lines = new Map<string, SheetToolLine>();
  for (const step of steps)
    for (const tool of step.tools) {
      if (tool.kind === 'hand') continue;
      const key = `${tool.kind} ${tool.size_m} ${tool.extension_m > 0}`;
      const known = lines.get(key);
      const numbers = [...(known?.stepNumbers ?? [])];
      if (!numbers.includes(step.number)) numbers.push(step.number);
      const extension_m = Math.max(tool.extension_m, known?.extension_m ?? 0);
      lines.set(key, { ...tool, drive: known?.drive || tool.drive, extension_m, stepNumbers: numbers });
    }
  return [...lines.values()].sort((a, b) => a.kind.localeCompare(b.kind) || a.size_m - b.size_m);
}

export function sourcesOf(steps: readonly SheetStep[]): JobSheet['sources'] {
  const byKey = new Map<string, { number: SheetNumber['source']; calculations: Set<string> }>();
  const add = (source: SheetNumber['source'], calculation: string): void => {
    const known = byKey.get(source.key) ?? { number: source, calculations: new Set<string>() };
    known.calculations.add(calculation);
    byKey.set(source.key, known);
  };
  for (const step of steps) {
    for (const n of step.numbers) add(n.source, n.calculation);
    for (const f of step.fields) if (f.source !== null) add(f.source, 'model');
    if (step.supports.length > 0) add(message('job.source.statics'), 'planner');
    if (step.lift !== null) {
      add(message('job.source.masses'), 'model');
      add(message('job.source.lift-limits'), 'lift-limit');
      if (step.lift.legs.length > 0) add(message('job.source.sling'), 'sling');
    }
    if (step.bolts.length > 0) add(message('job.source.common-practice'), 'star-sequence');
  }
  return [...byKey.values()].map(({ number, calculations }) => ({
    source: number,
    calculations: [...calculations],
  }));
}
