/** Fetches the recordings of the loose shot that ship with a machine. */
import { type Direction, openRecording, type Recording } from '../../core/shot';

/** Machines that recordings ship with; others run the shot themselves. */
const RECORDED: readonly string[] = ['alder-one'];

async function load(machineId: string, direction: Direction): Promise<Recording> {
  const url = `./baked/${machineId}/${direction}.bin`;
  const response = await fetch(url);
  if (!response.ok) throw new Error(`edge/loadRecordings: ${url}, got status ${response.status}`);
  const opened = openRecording(await response.arrayBuffer(), url);
  if (!opened.ok)
    throw new Error(`edge/loadRecordings: ${url}, ${opened.faults.map((f) => f.path).join(', ')}`);
  return opened.value;
}

/** Both directions; null where none ship with the machine. */
export async function loadRecordings(
  machineId: string,
): Promise<Readonly<Record<Direction, Recording>> | null> {
  if (!RECORDED.includes(machineId)) return null;
  const [high, low] = await Promise.all([load(machineId, 'high'), load(machineId, 'low')]);
  return { high, low };
}
