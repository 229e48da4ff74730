/** Runs of the loose shot in a worker of their own: progress, time left, cancel, and a result that can be sought in. */
import { fail, message, ok, type Result } from '../../core/kernel';
import type { ShotParameters } from '../../core/shot';
import type { ShotFrames, ShotReply, ShotRequest } from './shot-protocol';

/** A run that can be looked at at any time of it. */
export interface SeekableRun extends Pick<ShotFrames, 'parameters' | 'count' | 'readings'> {
  readonly duration_s: number;
  placeAt(time_s: number, out: Float32Array): void;
}

export interface ShotJob {
  /** Null when it was cancelled. */
  readonly result: Promise<Result<SeekableRun> | null>;
  cancel(): void;
}

export function runShot(
  parameters: ShotParameters,
  onProgress: (share: number, left_s: number | null) => void,
): ShotJob {
  let cancel = (): void => undefined;
  const result = new Promise<Result<SeekableRun> | null>((resolve) => {
    const worker = new Worker(new URL('./shot.worker.ts', import.meta.url), { type: 'module' });
    const end = (value: Result<SeekableRun> | null): void => {
      worker.terminate();
      resolve(value);
    };
    cancel = () => end(null);
    const broken = (reason: string): void =>
      end(fail([{ path: '(run)', expected: message('fault.worker'), found: reason }]));
    worker.onerror = (event) => broken(event.message);
    worker.onmessage = (event: MessageEvent<ShotReply>) => {
      const reply = event.data;
      if (reply.type === 'progress') onProgress(reply.share, reply.left_s);
      else if (reply.type === 'faults') end(fail(reply.faults));
      else if (reply.type === 'frames') end(ok(seekable(reply.frames)));
      else broken(reply.reason);
    };
    worker.postMessage({ parameters } satisfies ShotRequest);
  });
  return { result, cancel: () => cancel() };
}

/** Straight lines between frames; a ball that leaves a periodic slice at one end comes in at the other. */
export function seekable(frames: ShotFrames): SeekableRun {
  const { count, places_m, radii_m, readings, parameters } = frames;
  const { slice } = parameters;
  const period = slice.dimension === 3 && slice.ends === 'periodic' ? slice.depth_m : 0;
  const last = readings.length - 1;
  const duration_s = readings[last]!.time_s;
  return {
    parameters,
    count,
    readings,
    duration_s,
    placeAt(time_s, out) {
      const at = Math.min(last, Math.max(0, (time_s / duration_s) * last));
      const frame = Math.min(last - 1, Math.floor(at));
      const s = at - frame;
      const a = frame * count * 3;
      const b = a + count * 3;
      for (let i = 0; i < count; i++) {
        const o = i * 4;
        for (let k = 0; k < 3; k++) {
          const from = places_m[a + i * 3 + k]!;
          let way = places_m[b + i * 3 + k]! - from;
          if (k === 2 && period > 0) way -= period * Math.round(way / period);
          out[o + k] = from + s * way;
        }
        if (period > 0) out[o + 2] = out[o + 2]! - period * Math.floor(out[o + 2]! / period);
        out[o + 3] = radii_m[i]!;
      }
    },
  };
}
