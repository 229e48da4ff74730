/** Hands dropped files to the preparing worker; one worker a job, ended when it has answered. */
import { decodeDocument, type MachineDocument } from '../../core/document';
import { fail, message, ok, type Result } from '../../core/kernel';
import type { SourceFile } from '../../core/machine';
import type { PrepareReply, PrepareRequest } from './protocol';

/**
 * Reads, checks and prepares a machine's files. All faults come back at once; a worker that cannot start or breaks
 * is reported as one fault, and the machine on the stage stays as it was.
 */
export function importFiles(
  files: readonly SourceFile[],
  onProgress: (phase: 'solids' | 'order', share: number) => void,
): Promise<Result<MachineDocument>> {
  const names = files.map((f) => f.name).join(', ');
  const broken = (reason: string): Result<MachineDocument> =>
    fail([{ file: names, path: '(whole file)', expected: message('fault.worker'), found: reason }]);
  return new Promise((resolve) => {
    let worker: Worker;
    try {
      worker = new Worker(new URL('./prepare.worker.ts', import.meta.url), { type: 'module' });
    } catch (error) {
      resolve(broken((error as Error).message));
      return;
    }
    const end = (result: Result<MachineDocument>): void => {
      worker.terminate();
      resolve(result);
    };
    worker.onerror = (event) => end(broken(event.message));
    worker.onmessage = (event: MessageEvent<PrepareReply>) => {
      const reply = event.data;
      if (reply.type === 'progress') onProgress(reply.phase, reply.share);
      else if (reply.type === 'faults') end(fail(reply.faults));
      else if (reply.type === 'document') end(ok(decodeDocument(reply.bytes)));
      else end(broken(reply.reason));
    };
    worker.postMessage({ files } satisfies PrepareRequest);
  });
}
