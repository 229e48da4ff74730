/** The closed form beside what was read off the balls at the end of the run, and why they differ. */
import type { ShotRun } from '../../../store';
import { useSpeech } from '../../bind';

/** Nearer than this the two agree: balls of another seed scatter as much. */
const AGREE_WITHIN = 0.03;

export function LevelNote({ run }: { readonly run: ShotRun }) {
  const { t, quantity, number, symbol } = useSpeech();
  const { U_kgm, level_U_kgm, settled } = run.outcome;
  if (level_U_kgm === null) return null;
  const off = level_U_kgm / U_kgm - 1;
  const agrees = Math.abs(off) <= AGREE_WITHIN;
  const why = agrees ? 'agree' : run.experiment !== 'own' ? 'run' : off > 0 ? 'coat' : 'below';
  return (
    <section aria-labelledby="shot-level">
      <h3 id="shot-level">{t('shot.level')}</h3>
      <dl className="facts">
        <dt>{t('shot.level-balls')}</dt>
        <dd className="mono" data-testid="shot-U">
          {quantity(U_kgm, 'unbalance')}
        </dd>
        <dt>{t('shot.level-table')}</dt>
        <dd className="mono" data-testid="shot-settled-U">
          {settled === null
            ? t('exciter.from-unknown')
            : `${number(settled.U_kgm, 'unbalance')} ± ${number(settled.band_kgm, 'unbalance', 2)}\u202f${symbol('unbalance')}`}
        </dd>
        <dt>{t('shot.level-form')}</dt>
        <dd className="mono" data-testid="shot-level-U">
          {quantity(level_U_kgm, 'unbalance')}{' '}
          <span className="faint">
            ({`${off >= 0 ? '+' : '−'}${number(Math.abs(off), 'share')}`}&thinsp;%)
          </span>
        </dd>
      </dl>
      <p className="small">{t(`shot.level-${why}`)}</p>
    </section>
  );
}
