/** Where the numbers of a direction come from, the other way of telling them beside it, and why the two differ. */
import { type DirectionStudy, levelWhy } from '../../../core/studies';
import type { SpinDirection } from '../../../store';
import { useSpeech } from '../../bind';

export function SurfaceNote(props: { readonly study: DirectionStudy; readonly direction: SpinDirection }) {
  const { t, say, number, quantity, symbol } = useSpeech();
  const { surface, level, simulated, reasons } = props.study;
  const band = simulated === null ? 0 : simulated.band.U_kgm;
  const words = {
    direction: t(`exciter.${props.direction}`),
    level: quantity(level.U_kgm, 'unbalance'),
    simulated: `${number(simulated?.U_kgm, 'unbalance')} ± ${number(band, 'unbalance', 2)}\u202f${symbol('unbalance')}`,
    why: simulated === null ? '' : t(levelWhy(level.U_kgm, simulated.U_kgm, band)),
    reasons: reasons.map(say).join('; '),
  };
  const known = simulated === null ? 'alone' : 'both';
  const key = surface === 'level' ? `exciter.surface-level-${known}` : `exciter.surface-${surface}`;
  return (
    <p className="limit small" data-testid="surface-note">
      {t(key, words)}
    </p>
  );
}
