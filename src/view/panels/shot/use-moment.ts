/** What is read off the balls at the playhead, a few times a second: for read-outs, not for drawing. */
import { useEffect, useState } from 'react';
import type { Readings } from '../../../core/shot';
import { onFrameRequest, readingAt, shotTransient, type ShotTake, turningAt } from '../../../store';

const momentOf = (take: ShotTake | null): Readings | null => {
  if (take === null) return null;
  const time_s = take === shotTransient.take ? shotTransient.time_s : 0;
  const { angle_rad, speed_rad_s } = turningAt(take, time_s);
  return { ...readingAt(take, time_s), time_s, angle_rad, speed_rad_s };
};

/** Reads at most once in `every_ms`, and once more when the playhead has come to rest. */
export function useMoment(take: ShotTake | null, every_ms = 120): Readings | null {
  const [moment, setMoment] = useState<Readings | null>(() => momentOf(take));
  useEffect(() => {
    let seen = -1;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const read = (): void => {
      timer = undefined;
      seen = shotTransient.version;
      setMoment(momentOf(take));
    };
    const follow = (): void => {
      if (shotTransient.version !== seen) timer ??= setTimeout(read, every_ms);
    };
    read();
    const stop = onFrameRequest(follow);
    return () => {
      stop();
      clearTimeout(timer);
    };
  }, [take, every_ms]);
  return moment;
}
