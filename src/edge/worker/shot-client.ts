/** Runs of the loose shot in a worker of their own: progress, time left, cancel, and a result that can be sought in. */
import { fail, message, type Result } from '../../core/kernel';
import { openRecording, type Recording, type ShotParameters } from '../../core/shot';
import type { ShotReply, ShotRequest } from './shot-protocol';

export interface ShotJob {
  /** Null when it was cancelled. */
  readonly result: Promise<Result<Recording> | null>;
  cancel(): void;
}

export function runShot(
  parameters: ShotParameters,
  onProgress: (share: number, left_s: number | null) => void,
): ShotJob {
  let cancel = (): void => undefined;
  const result = new Promise<Result<Recording> | null>((resolve) => {
    const broken = (reason: string): Result<never> =>
      fail([{ path: '(run)', expected: message('fault.worker'), found: reason }]);
    let worker: Worker;
    try {
      worker = new Worker(new URL('./shot.worker.ts', import.meta.url), { type: 'module' });
    } catch (error) {
      resolve(broken((error as Error).message));
      return;
    }
    const end = (value: Result<Recording> | null): void => {
      worker.terminate();
      resolve(value);
    };
    cancel = () => end(null);
    worker.onerror = (event) => end(broken(event.message));
    worker.onmessage = (event: MessageEvent<ShotReply>) => {
      const reply = event.data;
      if (reply.type === 'progress') onProgress(reply.share, reply.left_s);
      else if (reply.type === 'faults') end(fail(reply.faults));
      else if (reply.type === 'recording') end(openRecording(reply.bytes));
      else end(broken(reply.reason));
    };
    worker.postMessage({ parameters } satisfies ShotRequest);
  });
  return { result, cancel: () => cancel() };
}
