/** Fetches the blocking graph that ships beside a machine. */
import { decodeGraph, type MachineDocument } from '../../core/document';

/** Machines that a graph ships with; others have theirs found in the worker. */
const SHIPPED: readonly string[] = ['alder-one'];

/** The shipped graph of exactly this machine; null where none ships, cannot be had, or is of another version. */
export async function loadGraph(
  document: MachineDocument,
  signal: AbortSignal,
): Promise<ReturnType<typeof decodeGraph>> {
  const { id } = document.machine;
  if (!SHIPPED.includes(id)) return null;
  try {
    const response = await fetch(`./baked/${id}.graph.bin`, { signal });
    return response.ok ? decodeGraph(await response.arrayBuffer(), document.hash) : null;
  } catch {
    // Offline, or a file of an older form: the worker finds it.
    return null;
  }
}
