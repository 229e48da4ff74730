/**
 * Turns a calculation into its entry of the printed list: every key of input and output with its unit,
 * flattened (`chamber.radius_m`, `segments[].load_N`), from the same schemas that check the input.
 */
import { z } from 'zod';
import type { Calculation } from './calculation';
import { say } from './say';

export interface DescribedKey {
  readonly key: string;
  readonly unit: string | null;
  /** 'number', 'integer', 'string', 'boolean', with [] for a list and [2] for a pair, or the words allowed. */
  readonly type: string | readonly unknown[];
  readonly required: boolean;
  readonly nullable: boolean;
  readonly default?: unknown;
  readonly above?: number;
  readonly minimum?: number;
  readonly maximum?: number;
}

export interface DescribedCalculation {
  readonly name: string;
  readonly answers: string;
  readonly inputs: readonly DescribedKey[];
  readonly outputs: readonly DescribedKey[];
  readonly source: string;
  readonly example: unknown;
}

export function describeCalculation(calculation: Calculation): DescribedCalculation {
  return {
    name: calculation.name,
    answers: say({ key: calculation.answers }),
    inputs: describeKeys(calculation.input, 'input'),
    outputs: [
      ...describeKeys(calculation.output, 'output'),
      { key: 'notes', unit: null, type: 'string[]', required: true, nullable: false },
    ],
    source: calculation.source,
    example: calculation.example,
  };
}

type Schema = Readonly<Record<string, unknown>>;

function describeKeys(schema: z.ZodObject, io: 'input' | 'output'): DescribedKey[] {
  const found: DescribedKey[] = [];
  walk(z.toJSONSchema(schema, { io, unrepresentable: 'any' }) as Schema, '', true, false, found);
  return found;
}

/** Collects the leaves below `node`; an object or list adds to the path, an `anyOf` with null only a flag. */
function walk(node: Schema, key: string, required: boolean, nullable: boolean, found: DescribedKey[]): void {
  const options = node['anyOf'] as Schema[] | undefined;
  if (options !== undefined) {
    const rest = options.filter((option) => option['type'] !== 'null');
    const canBeNull = nullable || rest.length < options.length;
    if (rest.length === 1) walk({ ...node, anyOf: undefined, ...rest[0] }, key, required, canBeNull, found);
    else found.push(leaf(node, key, required, canBeNull, rest.flatMap(typeOf)));
    return;
  }
  const properties = node['properties'] as Record<string, Schema> | undefined;
  if (properties !== undefined) {
    const needed = new Set((node['required'] as string[] | undefined) ?? []);
    for (const [name, child] of Object.entries(properties)) {
      walk(child, key === '' ? name : `${key}.${name}`, required && needed.has(name), nullable, found);
    }
    return;
  }
  const prefix = node['prefixItems'] as Schema[] | undefined;
  // a tuple's `items` says false: nothing may follow
  const item = prefix === undefined ? (node['items'] as Schema | undefined) : prefix[0];
  if (item !== undefined) {
    const before = found.length;
    walk(item, key, required, nullable, found);
    found.slice(before).forEach((entry, i) => {
      // a list of objects shows in the path, a list of numbers or words in the type
      const inside = entry.key.slice(key.length);
      const list = prefix === undefined ? '[]' : `[${prefix.length}]`;
      found[before + i] =
        inside === ''
          ? { ...entry, type: `${String(entry.type)}${list}` }
          : { ...entry, key: `${key}[]${inside}` };
    });
    return;
  }
  const types = typeOf(node);
  found.push(leaf(node, key, required, nullable, types.length === 1 ? String(types[0]) : types));
}

function typeOf(node: Schema): unknown[] {
  if (Array.isArray(node['enum'])) return node['enum'];
  if ('const' in node) return [node['const']];
  return [node['type'] ?? 'any'];
}

function leaf(
  node: Schema,
  key: string,
  required: boolean,
  nullable: boolean,
  type: DescribedKey['type'],
): DescribedKey {
  const limit = (name: string) => (typeof node[name] === 'number' ? (node[name] as number) : undefined);
  const above = limit('exclusiveMinimum');
  const minimum = limit('minimum');
  const maximum = limit('maximum');
  return {
    key,
    unit: typeof node['unit'] === 'string' ? node['unit'] : null,
    type,
    required,
    nullable,
    ...('default' in node ? { default: node['default'] } : {}),
    ...(above !== undefined ? { above } : {}),
    // zod bounds every whole number by the safe integers; that says nothing to a reader
    ...(minimum !== undefined && minimum > Number.MIN_SAFE_INTEGER ? { minimum } : {}),
    ...(maximum !== undefined && maximum < Number.MAX_SAFE_INTEGER ? { maximum } : {}),
  };
}
