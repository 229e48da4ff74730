/** A run's setting in one short line. */
import type { ShotRun, ShotSetup } from '../../../store';
import type { Speech } from '../../bind';

export function setupLine({ t, quantity, number }: Speech, setup: ShotSetup): string {
  return [
    t(`exciter.${setup.direction}`),
    t('shot.set-fill', { fill: quantity(setup.fill, 'share') }),
    t(`shot.set-${setup.spinUp}`, { time: number(setup.spinUpTime_s, 'plain', 2) }),
    t('shot.set-friction', { friction: number(setup.friction, 'plain', 2) }),
    ...(setup.baffle === 'fitted' ? [] : [t(`shot.set-baffle-${setup.baffle}`)]),
    ...(setup.gravity ? [] : [t('shot.set-no-gravity')]),
    t('shot.set-seed', { seed: setup.seed }),
  ].join(', ');
}

export const runName = ({ t }: Speech, run: Pick<ShotRun, 'experiment' | 'setup'>): string =>
  run.experiment === 'own'
    ? t('shot.run-own', { direction: t(`exciter.${run.setup.direction}`) })
    : t(`shot.run-${run.experiment}`);
