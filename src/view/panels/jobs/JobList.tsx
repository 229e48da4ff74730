/** What a mechanic may have come for, by the side of the machine: time, heaviest lift, what must come off. */
import { useEffect } from 'react';
import { type Job, progressShare } from '../../../core/jobs';
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { inSentence } from '../common/names';
import { workTime } from '../teardown/step-words';
import { JobFiles } from './JobFiles';
import { comesOff, ownText } from './job-words';
import { massOf } from './use-job';

/** Names shown of what comes off. */
const NAMED = 4;

export function JobList() {
  const { t } = useSpeech();
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const list = useApp((s) => s.jobs.list);
  const history = useApp((s) => s.jobs.history.length);
  useEffect(() => void jobs.loadSummaries(), [jobs, list]);
  const families = [...new Set(list.map((j) => j.family))];
  return (
    <div className="panel-body jobs">
      <h2>{t('jobs.title')}</h2>
      <p>{t('jobs.intro')}</p>
      <UnderWay />
      {list.length === 0 && <p className="faint">{t('jobs.none')}</p>}
      {families.map((family) => (
        <section key={family} aria-labelledby={`family-${family}`}>
          <h3 id={`family-${family}`} className="label">
            {t(`job.family.${family}`)}
          </h3>
          <ul className="job-list">
            {list
              .filter((job) => job.family === family)
              .map((job) => (
                <li key={job.id}>
                  <JobRow job={job} onOpen={() => commands.go('jobs', job.id)} />
                </li>
              ))}
          </ul>
        </section>
      ))}
      <div className="buttons">
        <button type="button" className="button" onClick={() => commands.go('jobs', 'history')}>
          {t('jobs.history.open', { count: history })}
        </button>
      </div>
      <JobFiles />
    </div>
  );
}

function JobRow({ job, onOpen }: { readonly job: Job; readonly onOpen: () => void }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const document = useApp((s) => s.document);
  const summary = useApp((s) => s.jobs.summaries[job.id]);
  const off =
    document === null || summary === undefined
      ? []
      : comesOff(speech, {
          machine: document.machine,
          plan: summary.plan,
          massOf: (id) => massOf(document, id),
        });
  const named = off.slice(0, NAMED).map((name, i) => (i === 0 ? name : inSentence(name)));
  return (
    <button type="button" className="row-button" onClick={onOpen} data-job-row={job.id}>
      <b>{ownText(speech, job.title)}</b>
      {summary !== undefined && (
        <>
          <span className="job-facts mono">
            <span>{workTime(speech, summary.time_s)}</span>
            <span>{t('jobs.people', { count: summary.people })}</span>
            <span>
              {summary.heaviest === null
                ? t('jobs.no-lift')
                : t('jobs.heaviest-short', { mass: quantity(summary.heaviest.mass_kg, 'mass') })}
            </span>
          </span>
          <span className="small job-off">
            {off.length === 0
              ? t('jobs.nothing-off')
              : off.length <= NAMED
                ? t('jobs.comes-off', { parts: named })
                : t('jobs.comes-off-more', { parts: named.join(', '), count: off.length - NAMED })}
          </span>
        </>
      )}
    </button>
  );
}

/** Sheets that were begun and wait. */
function UnderWay() {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const kept = useApp((s) => s.jobs.kept);
  const list = useApp((s) => s.jobs.list);
  const summaries = useApp((s) => s.jobs.summaries);
  const open = useApp((s) => s.jobs.open);
  const rows = kept.flatMap((progress) => {
    const job = list.find((j) => j.id === progress.jobId);
    return job === undefined ? [] : [{ progress, job }];
  });
  if (rows.length === 0) return null;
  return (
    <section aria-labelledby="jobs-under-way">
      <h3 id="jobs-under-way">{t('jobs.under-way')}</h3>
      <ul className="job-list">
        {rows.map(({ progress, job }) => {
          const steps = summaries[job.id]?.steps;
          const share =
            open?.job.id === job.id
              ? progressShare(open.sheet, progress).share
              : steps === undefined
                ? null
                : progress.done.length / steps;
          return (
            <li key={progress.id}>
              <button
                type="button"
                className="row-button"
                onClick={() => void jobs.takeUp(progress.id).then(() => commands.go('jobs', job.id))}
                data-under-way={job.id}
              >
                <b>{ownText(speech, job.title)}</b>
                <span className="job-facts mono">
                  {share === null ? '' : t('jobs.share-done', { share: quantity(share, 'share') })}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
