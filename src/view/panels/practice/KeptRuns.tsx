/** Runs that were kept: what can be gone on with, and what is finished. */
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type KeptRun } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { minutesText, pointsText, taskText } from './practice-words';

export function KeptRuns({ machine }: { readonly machine: Machine }) {
  const { t } = useSpeech();
  const kept = useApp((s) => s.practice.kept);
  if (kept === null) return null;
  const open = kept.filter((each) => each.score === null);
  const done = kept.filter((each) => each.score !== null);
  return (
    <>
      <section aria-labelledby="practice-kept">
        <h3 id="practice-kept">{t('practice.kept')}</h3>
        {open.length === 0 && <p className="faint small">{t('practice.none-kept')}</p>}
        <ul className="practice-kept">
          {open.map((each) => (
            <Kept key={each.id} kept={each} machine={machine} />
          ))}
        </ul>
      </section>
      {done.length > 0 && (
        <section aria-labelledby="practice-done">
          <h3 id="practice-done">{t('practice.done-runs')}</h3>
          <ul className="practice-kept">
            {done.map((each) => (
              <Kept key={each.id} kept={each} machine={machine} />
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Kept({ kept, machine }: { readonly kept: KeptRun; readonly machine: Machine }) {
  const speech = useSpeech();
  const { t, language } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const refused = useApp((s) => (s.practice.refused?.id === kept.id ? s.practice.refused.faults : null));
  const task = taskText(speech, machine, kept.task);
  const when = new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' }).format(
    kept.saved_ms,
  );
  const time = minutesText(speech, kept.elapsed_s);
  const own = kept.machineId === machine.id;
  return (
    <li data-kept={kept.id}>
      <div>
        <b>{task}</b> <span className="small">({t(`practice.aid.${kept.task.aid}`)})</span>
        <p className="small faint">
          {kept.score === null
            ? t('practice.kept-line', { moves: kept.moves, least: kept.leastMoves, time, when })
            : t('practice.done-line', { points: pointsText(speech, kept.score.lost), time, when })}
        </p>
        {!own && <p className="small limit">{t('practice.other-machine')}</p>}
        {refused?.map((fault, i) => (
          <p key={i} className="small limit" role="alert">
            {t('practice.refused', { expected: speech.say(fault.expected) })}
          </p>
        ))}
      </div>
      <div className="buttons">
        {own && refused === null && (
          <button
            type="button"
            className="button"
            aria-label={t(kept.score === null ? 'practice.resume-of' : 'practice.score-of', { task })}
            onClick={() => void commands.resume(kept.id)}
          >
            {t(kept.score === null ? 'practice.resume' : 'practice.see-score')}
          </button>
        )}
        <button
          type="button"
          className="button plain"
          aria-label={t('practice.forget-of', { task })}
          onClick={() => void commands.forget(kept.id)}
        >
          {t('practice.forget')}
        </button>
      </div>
    </li>
  );
}
