/** A machine made ready at build time, as questions need it, for Node (class host). */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { decodeDocument, decodeGraph, kindSolids } from '../../core/document';
import type { Subject } from '../../core/quiz';

/** @param folder of the built app that holds baked machines; null where none of that name is there */
export function readSubject(folder: string, machineId: string): Subject | null {
  const bytes = (name: string): ArrayBuffer | null => {
    const path = join(folder, name);
    if (!existsSync(path)) return null;
    const { buffer, byteOffset, byteLength } = readFileSync(path);
    return buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer;
  };
  const file = bytes(`${machineId}.bin`);
  if (file === null) return null;
  const document = decodeDocument(file);
  const { machine, masses, teardown, fit, hash } = document;
  const graph = bytes(`${machineId}.graph.bin`);
  return {
    machine,
    masses,
    teardown,
    fit,
    solids: kindSolids(document),
    graph: graph === null ? null : decodeGraph(graph, hash),
  };
}
