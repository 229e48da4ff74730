/**
 * A short hash of text for caches and for telling versions apart (FNV-1a, 2 x 32 bits with different offsets;
 * Fowler, Noll and Vo). Not for secrets.
 */
export function hashText(...texts: readonly string[]): string {
  let a = 0x811c9dc5;
  let b = 0xcbf29ce4;
  for (const text of texts) {
    for (let i = 0; i < text.length; i++) {
      const c = text.charCodeAt(i);
      a = Math.imul(a ^ c, 0x01000193);
      b = Math.imul(b ^ (c + i), 0x01000193);
    }
    // A mark between texts, so that moving a line from one file to the next changes the hash.
    a = Math.imul(a ^ 0xffff, 0x01000193);
  }
  return (a >>> 0).toString(16).padStart(8, '0') + (b >>> 0).toString(16).padStart(8, '0');
}
