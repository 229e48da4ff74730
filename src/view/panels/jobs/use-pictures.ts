/** Pictures of a job's sheet, drawn one after the other between other work; once a job. */
import { useEffect, useState } from 'react';
import { type Job, sheetPictures } from '../../../core/jobs';
import { useApp } from '../../bind';
import { type DrawnPicture, drawPicture } from './draw-picture';
import type { JobView } from './use-job';

export interface Pictures {
  readonly drawn: readonly DrawnPicture[];
  readonly count: number;
}

const done = new WeakMap<Job, DrawnPicture[]>();

export function usePictures({ job, machine, sheet, plan }: JobView): Pictures {
  const document = useApp((s) => s.document);
  const [pictures, setPictures] = useState<Pictures>({ drawn: done.get(job) ?? [], count: -1 });
  // values change the sheet's numbers, never what its pictures show
  const [first] = useState(sheet);
  useEffect(() => {
    if (document === null) return;
    const wanted = sheetPictures(machine, first, plan);
    const drawn = done.get(job) ?? [];
    done.set(job, drawn);
    let timer: ReturnType<typeof setTimeout> | undefined;
    const next = (): void => {
      const picture = wanted[drawn.length];
      if (picture !== undefined) drawn.push(drawPicture(document, machine, plan, picture));
      setPictures({ drawn: [...drawn], count: wanted.length });
      if (drawn.length < wanted.length) timer = setTimeout(next, 0);
    };
    timer = setTimeout(next, 0);
    return () => clearTimeout(timer);
  }, [document, job, machine, plan, first]);
  return pictures;
}
