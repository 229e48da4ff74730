/**
 * A document as one block of bytes: a JSON head in which typed arrays are replaced by references, then the arrays,
 * each aligned to 8 bytes. Decoding makes views into the block, so that nothing is copied.
 *
 * Layout: 'DRMB' magic, format version (u32), length of the head in bytes (u32), head, padding, arrays.
 */
import { panic } from '../kernel';
import type { MachineDocument } from './types';

const MAGIC = 0x424d5244;
export const DOCUMENT_FORMAT = 1;

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

/** The document as bytes; throws on anything that JSON cannot carry besides the typed arrays listed above. */
export function encodeDocument(document: MachineDocument): Uint8Array<ArrayBuffer> {
  const arrays: Packed[] = [];
  let length = 0;
  const head = JSON.stringify(document, (_key, value: unknown) => {
    const type = typeName(value);
    if (type !== null) {
      const array = value as Packed;
      const reference = { $a: type, o: length, n: array.length };
      arrays.push(array);
      length += align(array.byteLength);
      return reference;
    }
    if (typeof value === 'number' && !Number.isFinite(value))
      panic('document/encodeDocument', 'number', value, 'a finite one');
    return value;
  });
  const text = new TextEncoder().encode(head);
  const start = align(12 + text.length);
  const bytes = new Uint8Array(start + length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, MAGIC, true);
  view.setUint32(4, DOCUMENT_FORMAT, true);
  view.setUint32(8, text.length, true);
  bytes.set(text, 12);
  let at = start;
  for (const array of arrays) {
    bytes.set(new Uint8Array(array.buffer, array.byteOffset, array.byteLength), at);
    at += align(array.byteLength);
  }
  return bytes;
}

/** The document of a block made by `encodeDocument`; throws when the block is another thing or was cut short. */
export function decodeDocument(buffer: ArrayBuffer): MachineDocument {
  const view = new DataView(buffer);
  if (buffer.byteLength < 12 || view.getUint32(0, true) !== MAGIC)
    panic('document/decodeDocument', 'block', buffer.byteLength, 'a prepared machine');
  const format = view.getUint32(4, true);
  if (format !== DOCUMENT_FORMAT) panic('document/decodeDocument', 'format', format, String(DOCUMENT_FORMAT));
  const length = view.getUint32(8, true);
  const start = align(12 + length);
  const head = new TextDecoder().decode(new Uint8Array(buffer, 12, length));
  return JSON.parse(head, (_key, value: unknown) => {
    if (typeof value === 'object' && value !== null && '$a' in value) {
      const { $a, o, n } = value as { $a: TypeName; o: number; n: number };
      return new TYPES[$a](buffer, start + o, n);
    }
    return value;
  }) as MachineDocument;
}
