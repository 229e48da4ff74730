/** Practice by doing: choosing a task, the run itself, its score. */
import { useEffect } from 'react';
import { createPracticeCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { RunView } from './RunView';
import { TaskChooser } from './TaskChooser';
import './practice.css';

export default function PracticePlace() {
  const { t } = useSpeech();
  const commands = usePlaceCommands(createPracticeCommands);
  const document = useApp((s) => s.document);
  const run = useApp((s) => s.practice.run);
  const phase = useApp((s) => s.practice.phase);
  const onStage = useApp((s) => s.practice.stage !== null);
  const asked = useApp((s) => (s.route.path[0] === 'run' ? (s.route.path[1] ?? null) : null));
  const share = useApp((s) => (s.graph.phase === 'working' ? s.graph.share : null));
  const open = run !== null && run.bench.machine === document?.machine && onStage;
  useEffect(() => {
    if (document !== null) void commands.open();
  }, [document, commands]);
  // An address with a run takes it up again; another machine on the stage ends what was open.
  useEffect(() => {
    if (document === null) return;
    if (asked === null) {
      if (onStage) commands.leave();
    } else if (!open || run.id !== asked) void commands.resume(asked);
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [document, asked, commands]);
  return (
    <div className="panel-body practice" data-phase={phase} data-run={open ? run.id : undefined}>
      <h2>{t('practice.title')}</h2>
      {document === null ? (
        <p className="faint">{t('practice.wait')}</p>
      ) : phase === 'opening' ? (
        <div role="status">
          <p>{t('practice.opening')}</p>
          <progress max={1} value={share ?? undefined} aria-label={t('practice.opening')} />
        </div>
      ) : open && asked !== null ? (
        <RunView run={run} machine={document.machine} />
      ) : (
        <TaskChooser machine={document.machine} />
      )}
    </div>
  );
}
