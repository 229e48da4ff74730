/** A run's result against what was predicted. */
import { type ShotRun, verdict } from '../../../store';
import { useSpeech } from '../../bind';
import { runName } from './setup-words';

export function ShotResult({ run }: { readonly run: ShotRun }) {
  const speech = useSpeech();
  const { t, quantity, number, has } = speech;
  const { prediction, outcome, experiment, comparedWith, setup } = run;
  if (experiment === 'own') return null;
  const of = outcome.ofCompared;
  const found = of === null ? null : verdict(of);
  const why = `shot.why-${experiment}-${comparedWith}`;
  return (
    <section className="shot-result" aria-label={t('shot.result')}>
      <h3>{runName(speech, run)}</h3>
      {found !== null && of !== null && (
        <p>
          {prediction !== null && (
            <b>
              {t(found === prediction ? 'shot.predicted-right' : 'shot.predicted-else', {
                said: t(`shot.predict-${prediction}`).toLocaleLowerCase(speech.language),
              })}
            </b>
          )}{' '}
          {t(`shot.found-${found}`, {
            unbalance: quantity(outcome.U_kgm, 'unbalance'),
            share: number(of, 'share'),
            direction: t(`exciter.${comparedWith}`),
          })}
        </p>
      )}
      {has(why) && found !== null && <p className="small">{t(why)}</p>}
      {setup.baffle !== 'fitted' && <p className="small faint">{t(`shot.limit-${setup.baffle}`)}</p>}
    </section>
  );
}
