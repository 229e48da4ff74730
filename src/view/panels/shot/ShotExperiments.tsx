/** Experiments: one click sets one up, a prediction comes first, then it runs; everything may be changed before. */
import { EXPERIMENTS, PREDICTIONS, type Prediction } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { Segmented } from '../common/Segmented';
import { ShotFaults, ShotJobCard } from './ShotJobCard';
import { ShotSetupForm } from './ShotSetupForm';

function Draft() {
  const { t } = useSpeech();
  const commands = useCommands();
  const draft = useApp((s) => s.shot.draft);
  const busy = useApp((s) => s.shot.job !== null);
  if (draft === null) return null;
  const { experiment, comparedWith, prediction } = draft;
  return (
    <section className="shot-draft" aria-labelledby="shot-draft-title">
      <h4 id="shot-draft-title">{t(`shot.run-${experiment}`)}</h4>
      <p className="small">{t(`shot.what-${experiment}`)}</p>
      <Segmented<Prediction | 'none'>
        legend={t('shot.predict', { direction: t(`exciter.${comparedWith}`) })}
        fill
        choices={PREDICTIONS.map((value) => ({ value, label: t(`shot.predict-${value}`) }))}
        value={prediction ?? 'none'}
        onChange={(value) => value !== 'none' && commands.predictRun(value)}
      />
      <details open={experiment === 'free' ? true : undefined}>
        <summary>
          {t('shot.settings')} <Icon name="down" size={16} />
        </summary>
        <ShotSetupForm setup={draft.setup} />
      </details>
      <ShotFaults />
      {busy ? (
        <ShotJobCard />
      ) : (
        <div className="buttons">
          <button
            type="button"
            className="button act"
            disabled={prediction === null}
            onClick={() => void commands.runDraft()}
          >
            {t('shot.run')}
          </button>
          <button type="button" className="button plain" onClick={commands.closeDraft}>
            {t('shot.leave')}
          </button>
          {prediction === null && <p className="small faint shot-first">{t('shot.predict-first')}</p>}
        </div>
      )}
    </section>
  );
}

export function ShotExperiments() {
  const { t } = useSpeech();
  const commands = useCommands();
  const drafting = useApp((s) => s.shot.draft !== null);
  const direction = useApp((s) => s.exciter.direction);
  return (
    <section aria-labelledby="shot-experiments">
      <h3 id="shot-experiments">{t('shot.experiments')}</h3>
      {drafting ? (
        <Draft />
      ) : (
        <>
          <p className="small">{t('shot.experiments-intro', { direction: t(`exciter.${direction}`) })}</p>
          <ul className="shot-experiments">
            {[...EXPERIMENTS, 'free' as const].map((id) => (
              <li key={id}>
                <button type="button" className="button" onClick={() => commands.draftRun(id)}>
                  {t(`shot.run-${id}`)}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
