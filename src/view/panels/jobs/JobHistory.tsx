/** What was done to this machine on this device, newest first. */
import { textIn } from '../../../core/jobs';
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { BackLink } from './BackLink';
import { JobFiles } from './JobFiles';
import { dateText, rateText } from './job-words';

export function JobHistory() {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const history = useApp((s) => s.jobs.history);
  const list = useApp((s) => s.jobs.list);
  return (
    <div className="panel-body jobs">
      <BackLink to={[]} name={t('jobs.all')} />
      <h2>{t('jobs.history.title')}</h2>
      {history.length === 0 && <p className="faint">{t('jobs.history.none')}</p>}
      <ol className="job-history">
        {[...history].reverse().map((entry) => {
          const job = list.find((j) => j.id === entry.jobId);
          const title = job === undefined ? entry.jobId : textIn(job.title, speech.language);
          return (
            <li key={entry.id}>
              <b>{title}</b>
              <p className="small">
                {dateText(speech, entry.at_ms)} ·{' '}
                {t(entry.complete ? 'jobs.history.complete' : 'jobs.history.ended')}
                {' · '}
                {t(`jobs.result.${entry.result}`)}
              </p>
              {(['high', 'low'] as const).map((direction) => {
                const found = entry.measured[direction];
                return found === null ? null : (
                  <p key={direction} className="small mono">
                    {t(`jobs.direction.${direction}`)}: {quantity(found.amplitude_m, 'length-small', 3)},{' '}
                    {rateText(speech, found.vibrations_per_minute)}
                  </p>
                );
              })}
              <button
                type="button"
                className="link"
                onClick={() => {
                  void jobs.reopen(entry.id).then(() => commands.go('jobs', entry.jobId));
                }}
              >
                {t('jobs.history.reopen')}
              </button>
            </li>
          );
        })}
      </ol>
      <JobFiles />
    </div>
  );
}
