/** The place of jobs: the list, and of the open job its summary, steps, sheet for printing and what was measured after. */
import { useEffect } from 'react';
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { AfterJob } from './AfterJob';
import { BackLink } from './BackLink';
import { JobFiles } from './JobFiles';
import { JobHistory } from './JobHistory';
import { JobList } from './JobList';
import { JobOverview } from './JobOverview';
import { JobPaper } from './JobPaper';
import { JobSteps } from './JobSteps';
import { ownText } from './job-words';
import { useJob } from './use-job';
import './jobs.css';

export default function JobsPlace() {
  const { t } = useSpeech();
  const jobs = usePlaceCommands(createJobCommands);
  const first = useApp((s) => s.route.path[0]);
  const ready = useApp((s) => s.document !== null);
  const phase = useApp((s) => s.jobs.phase);
  const machineId = useApp((s) => s.document?.machine.id);
  useEffect(() => {
    if (ready) void jobs.load();
  }, [ready, machineId, jobs]);
  useEffect(() => () => jobs.leaveStage(), [jobs]);
  if (!ready || phase === 'idle' || phase === 'loading')
    return <p className="panel-body faint">{t('jobs.wait')}</p>;
  if (phase === 'failed') return <p className="panel-body limit">{t('jobs.failed')}</p>;
  if (first === undefined) return <JobList />;
  if (first === 'history') return <JobHistory />;
  return <OneJob key={first} id={first} />;
}

const PAGES = ['step', 'sheet', 'after'] as const;

function OneJob({ id }: { readonly id: string }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const [, page, number] = useApp((s) => s.route.path);
  const failed = useApp((s) => s.jobs.opening === 'failed');
  const safe = useApp((s) => s.jobs.keptSafely);
  const view = useJob(id);
  useEffect(() => void jobs.open(id), [id, jobs]);
  const shown = PAGES.find((each) => each === page);
  useEffect(() => {
    if (shown !== 'step') jobs.leaveStage();
  }, [shown, jobs]);
  if (view === null) {
    return (
      <div className="panel-body jobs">
        <BackLink to={[]} name={t('jobs.all')} />
        <p className={failed ? 'limit' : 'faint'}>{t(failed ? 'jobs.not-here' : 'jobs.wait')}</p>
      </div>
    );
  }
  if (shown === 'sheet') return <JobPaper view={view} />;
  return (
    <div className="panel-body jobs" data-job={id}>
      {shown === undefined ? (
        <BackLink to={[]} name={t('jobs.all')} />
      ) : (
        <BackLink to={[id]} name={ownText(speech, view.sheet.title)} />
      )}
      {!safe && (
        <p className="limit" role="alert">
          {t('jobs.not-kept')}
        </p>
      )}
      {shown === 'step' ? (
        <JobSteps view={view} number={Number(number)} />
      ) : shown === 'after' ? (
        <AfterJob view={view} />
      ) : (
        <>
          <JobOverview view={view} onStep={(n) => commands.go('jobs', id, 'step', String(n))} />
          <JobFiles />
        </>
      )}
    </div>
  );
}
