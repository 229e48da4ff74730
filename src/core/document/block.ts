/**
 * Plain data as one block of bytes: a JSON head in which typed arrays are replaced by references, then the arrays,
 * each aligned to 8 bytes. Decoding makes views into the block, so that nothing is copied.
 *
 * Layout: magic (u32), format version (u32), length of the head in bytes (u32), head, padding, arrays.
 */
import { panic } from '../kernel';

/** What a block holds: four letters as a number, and the version of its form. */
export interface BlockForm {
  readonly name: string;
  readonly magic: number;
  readonly format: number;
}

const TYPES = {
  f4: Float32Array,
  f8: Float64Array,
  u4: Uint32Array,
  u2: Uint16Array,
  i4: Int32Array,
  u1: Uint8Array,
} as const;
type TypeName = keyof typeof TYPES;
type Packed = InstanceType<(typeof TYPES)[TypeName]>;

const align = (n: number): number => (n + 7) & ~7;

function typeName(value: unknown): TypeName | null {
  for (const [name, type] of Object.entries(TYPES)) if (value instanceof type) return name as TypeName;
  return null;
}

/** The value as bytes; throws on anything that JSON cannot carry besides the typed arrays listed above. */
export function encodeBlock(form: BlockForm, value: unknown): Uint8Array<ArrayBuffer> {
  const arrays: Packed[] = [];
  let length = 0;
  const head = JSON.stringify(value, (_key, item: unknown) => {
    const type = typeName(item);
    if (type !== null) {
      const array = item as Packed;
      const reference = { $a: type, o: length, n: array.length };
      arrays.push(array);
      length += align(array.byteLength);
      return reference;
    }
    if (typeof item === 'number' && !Number.isFinite(item))
      panic('document/encodeBlock', 'number', item, 'a finite one');
    return item;
  });
  const text = new TextEncoder().encode(head);
  const start = align(12 + text.length);
  const bytes = new Uint8Array(start + length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, form.magic, true);
  view.setUint32(4, form.format, true);
  view.setUint32(8, text.length, true);
  bytes.set(text, 12);
  let at = start;
  for (const array of arrays) {
    bytes.set(new Uint8Array(array.buffer, array.byteOffset, array.byteLength), at);
    at += align(array.byteLength);
  }
  return bytes;
}

/** The value of a block made by `encodeBlock`; throws when the block is another thing or was cut short. */
export function decodeBlock(form: BlockForm, buffer: ArrayBuffer): unknown {
  const view = new DataView(buffer);
  if (buffer.byteLength < 12 || view.getUint32(0, true) !== form.magic)
    panic('document/decodeBlock', 'block', buffer.byteLength, form.name);
  const format = view.getUint32(4, true);
  if (format !== form.format) panic('document/decodeBlock', 'format', format, String(form.format));
  const length = view.getUint32(8, true);
  const start = align(12 + length);
  const head = new TextDecoder().decode(new Uint8Array(buffer, 12, length));
  return JSON.parse(head, (_key, item: unknown) => {
    if (typeof item === 'object' && item !== null && '$a' in item) {
      const { $a, o, n } = item as { $a: TypeName; o: number; n: number };
      return new TYPES[$a](buffer, start + o, n);
    }
    return item;
  });
}
