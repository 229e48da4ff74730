/** A run under way: how far, how long still, and giving it up; and what was wrong with its setting. */
import { useApp, useCommands, useSpeech } from '../../bind';

export function ShotJobCard() {
  const { t, number } = useSpeech();
  const commands = useCommands();
  const job = useApp((s) => s.shot.job);
  if (job === null) return null;
  const left =
    job.left_s === null
      ? t('shot.job-starting')
      : t('shot.job-left', { seconds: number(Math.max(1, Math.round(job.left_s)), 'count') });
  return (
    <div className="shot-job" role="group" aria-label={t('shot.job')}>
      <p>
        <span>{t('shot.job')}</span> <span className="mono">{number(job.share, 'share', 3)} %</span>{' '}
        <span className="faint">{left}</span>
      </p>
      <progress value={job.share} max={1} aria-label={t('shot.job')} />
      <button type="button" className="button" onClick={commands.cancelRun}>
        {t('shot.cancel')}
      </button>
    </div>
  );
}

export function ShotFaults() {
  const { say } = useSpeech();
  const faults = useApp((s) => s.shot.faults);
  if (faults.length === 0) return null;
  return (
    <ul className="notes small" role="alert">
      {faults.map((fault) => (
        <li key={fault.path}>
          <b className="mono">{fault.path}</b>: {say(fault.expected)} ({fault.found})
        </li>
      ))}
    </ul>
  );
}
