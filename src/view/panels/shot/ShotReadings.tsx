/** Read off the balls at the playhead. */
import type { ShotBase, ShotRun } from '../../../store';
import { totalMoment } from '../../../store';
import { useSpeech } from '../../bind';
import { useMoment } from './use-moment';

export function ShotReadings({ run, base }: { readonly run: ShotRun; readonly base: ShotBase }) {
  const { t, quantity, number } = useSpeech();
  const now = useMoment(run.take);
  if (now === null) return null;
  const [x, y] = totalMoment(base, run.setup.baffle, now.shot_kgm);
  const U = Math.hypot(x, y);
  const rows: readonly (readonly [string, string])[] = [
    ['captured', quantity(now.captured, 'share', 3)],
    ['below', quantity(now.captured_below_spill, 'share', 3)],
    ['unbalance', quantity(U, 'unbalance')],
    ['unbalance-angle', quantity(Math.atan2(y, x), 'angle')],
    ['shot-moment', quantity(now.shot_U_kgm, 'unbalance')],
    ['arm', quantity(Math.hypot(...now.centre_m), 'length-small', 3)],
    ['gravity-ratio', number(now.gravity_ratio, 'plain')],
    ['rotation', quantity(Math.abs(now.speed_rad_s), 'rotation', 3)],
    ['turns', number(Math.abs(now.angle_rad) / (2 * Math.PI), 'plain')],
    ['force', quantity(U * now.speed_rad_s ** 2, 'force-large')],
    ['energy', quantity(now.kinetic_J, 'energy')],
    ['packing', quantity(now.packing, 'share', 3)],
  ];
  return (
    <dl className="shot-readings" aria-label={t('shot.readings')} data-testid="shot-readings">
      {rows.map(([word, value]) => (
        <div key={word}>
          <dt>{t(`shot.read-${word}`)}</dt>
          <dd className="mono" data-reading={word}>
            {value}
          </dd>
        </div>
      ))}
    </dl>
  );
}
