/** Every message key that this folder hands out, with the parameters it carries. */
export const assemblyMessageKeys = [
  { key: 'why.free', params: ['part'] },
  { key: 'why.covers', params: ['part', 'covers'] },
  { key: 'why.bars-tool', params: ['part', 'fasteners'] },
  { key: 'why.clamps', params: ['part', 'clamped'] },
  { key: 'why.thread', params: ['part', 'threaded'] },
  { key: 'why.hose', params: ['part', 'port'] },
  { key: 'why.drain', params: ['part', 'boundary'] },
  { key: 'why.tight', params: ['part', 'other'] },
  { key: 'why.together', params: ['part', 'members'] },
  { key: 'why.together-thread', params: ['part', 'barred-by'] },
  { key: 'why.bench', params: ['part', 'from'] },
  { key: 'why.fluid', params: ['fluid', 'boundary', 'volume_m3'] },
  { key: 'why.support', params: ['part', 'carrier', 'force_N'] },
  { key: 'why.chock', params: ['part', 'carrier', 'force_N', 'slope'] },
  { key: 'why.sling', params: ['part', 'fasteners', 'force_N'] },
  { key: 'why.strap', params: ['part', 'force_N', 'lever_m'] },
] as const;

export type AssemblyMessageKey = (typeof assemblyMessageKeys)[number]['key'];
