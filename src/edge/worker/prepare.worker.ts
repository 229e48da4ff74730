/** Reads, checks and prepares dropped machine files off the main thread. */
import wasmUrl from 'manifold-3d/manifold.wasm?url';
import { encodeDocument, prepareMachine } from '../../core/document';
import { loadSolidKernel } from '../../core/geometry';
import { hashText } from '../../core/kernel';
import { parseModel } from '../../core/studies';
import type { PrepareReply, PrepareRequest } from './protocol';

const reply = (message: PrepareReply, transfer: Transferable[] = []): void => {
  self.postMessage(message, { transfer });
};

self.onmessage = async (event: MessageEvent<PrepareRequest>) => {
  try {
    const { files } = event.data;
    const parsed = parseModel(files);
    if (!parsed.ok) {
      reply({ type: 'faults', faults: parsed.faults });
      return;
    }
    const kernel = await loadSolidKernel({ wasmUrl });
    const prepared = prepareMachine(
      parsed.value.source,
      hashText(...files.map((f) => f.text)),
      kernel,
      (phase, share) => reply({ type: 'progress', phase, share }),
      parsed.value.fit,
    );
    if (!prepared.ok) {
      reply({ type: 'faults', faults: prepared.faults });
      return;
    }
    const bytes = encodeDocument(prepared.value);
    reply({ type: 'document', bytes: bytes.buffer }, [bytes.buffer]);
  } catch (error) {
    reply({ type: 'broken', reason: (error as Error).message });
  }
};
