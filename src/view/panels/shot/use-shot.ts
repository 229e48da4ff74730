/** What the shot's panels read together: the machine's base, the run shown, and its numbers. */
import { useMemo } from 'react';
import { selectShownRun, shotBase, type ShotBase, type ShotRun, totalMoment } from '../../../store';
import { useApp } from '../../bind';

export const useShotBase = (): ShotBase | null =>
  useApp((s) => (s.document === null ? null : shotBase(s.document)));

export const useShownRun = (): ShotRun | null => useApp(selectShownRun);

/** Greatest force that any arrow stands for, N: the machine's own HIGH at the speed where its run stops. */
export function useLongestForce(base: ShotBase | null): number {
  const high = useApp((s) => s.shot.own.high);
  return useMemo(() => {
    if (base === null || high === null) return 0;
    const last = high.take.readings[high.take.readings.length - 1]!;
    return Math.hypot(...totalMoment(base, 'fitted', last.shot_kgm)) * last.speed_rad_s ** 2;
  }, [base, high]);
}
