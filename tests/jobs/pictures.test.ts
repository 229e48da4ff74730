/** Pictures of a sheet, on the small machine: every step that shows parts has one, in order, with what is left by then. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { type JobSheet, pictureOf, sheetPictures, type SheetPicture } from '../../src/core/jobs';
import { createAppStore, createCommands, createJobCommands, type Ports } from '../../src/store';
import { memoryRecords, smallDocument } from '../panels/fixture';
import { smallJobs } from '../store/small-job';

let document: MachineDocument;
let sheet: JobSheet;
let pictures: readonly SheetPicture[];
beforeAll(async () => {
  document = await smallDocument();
  const ports = { records: memoryRecords(), jobs: smallJobs(document) } as unknown as Ports;
  const store = createAppStore({ document });
  await createJobCommands(store, ports, createCommands(store, ports)).open('end-off');
  const { open } = store.getState().jobs;
  sheet = open!.sheet;
  pictures = sheetPictures(document.machine, sheet, open!.plan);
});

describe('pictures of a sheet', () => {
  it('are numbered in the order of their steps, each step in one at most', () => {
    expect(pictures.map((p) => p.number)).toEqual(pictures.map((_, i) => i + 1));
    const steps = pictures.flatMap((p) => p.stepNumbers);
    expect(steps).toEqual([...new Set(steps)].sort((a, b) => a - b));
    expect(steps.length).toBeGreaterThan(0);
  });

  it('serve every step that shows parts, putting together by the picture of taking apart', () => {
    for (const step of sheet.steps) {
      const picture = pictureOf(pictures, sheet, step);
      if (step.partIds.length === 0) expect(picture).toBeNull();
      else for (const id of step.partIds) expect(picture?.partIds, step.id).toContain(id);
    }
    const back = sheet.steps.find((s) => s.phase === 'together' && s.unitIds.includes('end-right'))!;
    expect(pictureOf(pictures, sheet, back)?.phase).toBe('apart');
  });

  it('draw no part again that has left before, unless they are about it', () => {
    const gone = new Set<string>();
    for (const picture of pictures) {
      expect(new Set(picture.goneIds)).toEqual(gone);
      for (const number of picture.stepNumbers) {
        const step = sheet.steps[number - 1]!;
        if (step.phase === 'apart' && step.action === 'remove') for (const id of step.partIds) gone.add(id);
      }
    }
    expect(gone.size).toBeGreaterThan(0);
  });
});
