/** The recordings that ship are those that the machine's data and the simulation make. */
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ownRun } from '../../scripts/lib/own-run';
import { parseMachine } from '../../src/core/machine';
import { openRecording, recordShot, type Direction, type Recording } from '../../src/core/shot';
import { readModelFolder } from '../../src/edge/content/model-files';

const folder = resolve(import.meta.dirname, '../../models/alder-one');
const FRAMES = 20;

function shipped(direction: Direction): { recording: Recording; size: number } {
  const file = readFileSync(join(folder, 'recordings', `${direction}.bin`));
  const opened = openRecording(
    file.buffer.slice(file.byteOffset, file.byteOffset + file.byteLength) as ArrayBuffer,
  );
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  return { recording: opened.value, size: file.byteLength };
}

function again(direction: Direction): Recording {
  const parsed = parseMachine(readModelFolder(folder));
  if (!parsed.ok) throw new Error('the machine does not parse');
  const run = recordShot(ownRun(parsed.value.machine, direction), undefined, FRAMES);
  let step = run.next();
  while (step.done !== true) step = run.next();
  const opened = openRecording(step.value);
  if (!opened.ok) throw new Error(JSON.stringify(opened.faults));
  return opened.value;
}

describe.each(['low', 'high'] satisfies Direction[])('shipped recording, %s', (direction) => {
  const { recording, size } = shipped(direction);

  it('is small and of the machine as it is, frame by frame (npx tsx scripts/record-shot.ts makes it anew)', () => {
    expect(size).toBeLessThan(400e3);
    const made = again(direction);
    expect(recording.parameters).toEqual(made.parameters);
    expect(recording.readings.slice(0, FRAMES)).toEqual(made.readings);
    const period = recording.parameters.slice.depth_m;
    const [a, b] = [new Float32Array(4 * recording.count), new Float32Array(4 * recording.count)];
    for (const { time_s } of made.readings.slice(0, FRAMES - 1)) {
      recording.placeAt(time_s, a);
      made.placeAt(time_s, b);
      // The two span different times, so that rounding may set them a hair apart between frames.
      let worst = 0;
      for (let i = 0; i < a.length; i++) {
        const miss = a[i]! - b[i]!;
        // Both ends of a periodic slice are one place.
        worst = Math.max(worst, Math.abs(i % 4 === 2 ? miss - period * Math.round(miss / period) : miss));
      }
      expect(worst).toBeLessThan(1e-6);
    }
  });

  it('shows what the direction does', () => {
    const { captured, captured_below_spill } = recording.readings[recording.readings.length - 1]!;
    if (direction === 'high') expect(captured).toBeLessThan(0.05);
    else {
      expect(captured_below_spill).toBeGreaterThan(0.45);
      expect(captured_below_spill).toBeLessThan(0.62);
    }
  });
});
