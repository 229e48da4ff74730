/** Whole numbers as bytes: small ones short. Seven bits a byte, sign in the lowest bit. */

/** Writes `value` at `at`; returns where the next one goes. |value| below 2^27. */
export function writeVarint(bytes: Uint8Array, at: number, value: number): number {
  let rest = (value << 1) ^ (value >> 31);
  while (rest > 127) {
    bytes[at++] = (rest & 127) | 128;
    rest >>>= 7;
  }
  bytes[at++] = rest;
  return at;
}

/** Reads `out.length` numbers from `at`; returns where the next would stand. */
export function readVarints(bytes: Uint8Array, at: number, out: Int32Array): number {
  for (let i = 0; i < out.length; i++) {
    let value = 0;
    let shift = 0;
    let byte: number;
    do {
      byte = bytes[at++]!;
      value |= (byte & 127) << shift;
      shift += 7;
    } while (byte > 127);
    out[i] = (value >>> 1) ^ -(value & 1);
  }
  return at;
}
