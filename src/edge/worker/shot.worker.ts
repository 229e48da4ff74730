/** Runs the loose shot off the main thread, frame by frame, and hands the recording over without copying. */
import { recordShot, type ShotParameters, validateShot } from '../../core/shot';
import type { ShotReply, ShotRequest } from './shot-protocol';

/** Between two tellings of how far it is. */
const TELL_MS = 120;
/** Steps get shorter as the spin rises, so that the share of the work done lags behind the share of the frames. */
const WORK_POWER = 1.5;
/** Before this much of the work is done its time cannot be told. */
const LEAST_SHARE = 0.04;

const reply = (message: ShotReply, transfer: Transferable[] = []): void => {
  self.postMessage(message, { transfer });
};

self.onmessage = (event: MessageEvent<ShotRequest>) => {
  try {
    const valid = validateShot(event.data.parameters);
    if (!valid.ok) {
      reply({ type: 'faults', faults: valid.faults });
      return;
    }
    const bytes = record(valid.value);
    reply({ type: 'recording', bytes }, [bytes]);
  } catch (error) {
    reply({ type: 'broken', reason: (error as Error).message });
  }
};

function record(parameters: ShotParameters): ArrayBuffer {
  const run = recordShot(parameters);
  // The shot is poured in and settles before the first frame.
  let next = run.next();
  const started = performance.now();
  let told = -Infinity;
  while (next.done !== true) {
    const now = performance.now();
    if (now - told > TELL_MS) {
      told = now;
      const share = next.value ** WORK_POWER;
      const spent_s = (now - started) / 1000;
      reply({
        type: 'progress',
        share,
        left_s: share < LEAST_SHARE ? null : (spent_s * (1 - share)) / share,
      });
    }
    next = run.next();
  }
  return next.value;
}
