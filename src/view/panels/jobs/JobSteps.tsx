/** A job step by step: the stage shows each, cautions stand before it, fields are filled, hold points hold. */
import { useEffect, useRef } from 'react';
import { mayTick, openHold, progressShare, type SheetStep, startProgress } from '../../../core/jobs';
import { createJobCommands } from '../../../store';
import { useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { Signal } from '../common/Signal';
import { cautionText, sayJob, stepText } from './job-words';
import { phasesOf } from './order-of-work';
import { StepBody } from './StepBody';
import type { JobView } from './use-job';

export function JobSteps({ view, number }: { readonly view: JobView; readonly number: number }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const { sheet, progress, job } = view;
  const count = sheet.steps.length;
  const at = Number.isFinite(number) ? Math.min(count, Math.max(1, Math.round(number))) : 1;
  const step = sheet.steps[at - 1];
  const head = useRef<HTMLDivElement>(null);
  const moved = useRef(false);
  useEffect(() => {
    jobs.show(at);
    if (moved.current) head.current?.focus({ preventScroll: true });
    moved.current = true;
  }, [at, jobs, job.id]);
  if (step === undefined) return null;
  const goTo = (n: number): void =>
    commands.go('jobs', job.id, 'step', String(Math.min(count, Math.max(1, n))));
  const done = progress?.done ?? [];
  const share = progress === null ? 0 : progressShare(sheet, progress).share;
  return (
    <div className="job-steps" data-step={step.id}>
      <progress value={share} max={1} aria-label={t('jobs.progress')} />
      <div className="job-step-bar">
        <button
          type="button"
          className="button icon"
          aria-label={t('jobs.step-back')}
          disabled={at <= 1}
          onClick={() => goTo(at - 1)}
        >
          <Icon name="back" />
        </button>
        <label className="job-jump">
          <span className="visually-hidden">{t('jobs.jump')}</span>
          <select value={at} onChange={(event) => goTo(Number(event.currentTarget.value))}>
            {phasesOf(sheet.steps).map(({ phase, steps }) => (
              <optgroup key={`${phase} ${steps[0]!.number}`} label={t(`job.phase.${phase}`)}>
                {steps.map((s) => (
                  <option key={s.id} value={s.number}>
                    {t(s.hold ? 'jobs.jump-hold' : 'jobs.jump-step', {
                      mark: done.includes(s.id) ? '✓' : '',
                      step: s.number,
                      text: shortened(stepText(speech, view, s)),
                    })}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        </label>
        <button
          type="button"
          className="button icon"
          aria-label={t('jobs.step-next')}
          disabled={at >= count}
          onClick={() => goTo(at + 1)}
        >
          <Icon name="next" />
        </button>
      </div>
      {/* What can hurt stands before what to do (ANSI Z535.6); the focus begins above both. */}
      <div
        ref={head}
        tabIndex={-1}
        role="group"
        className="job-step-title"
        aria-label={t('jobs.step-of', { step: at, steps: count })}
      >
        <p className="label job-step-head">
          <span>{`${t('jobs.step-of', { step: at, steps: count })} · ${t(`job.phase.${step.phase}`)}`}</span>
          {step.hold && <b className="job-hold-mark">{t('jobs.hold')}</b>}
        </p>
        {step.cautions.map((caution, i) => (
          <Signal key={i} word={caution.signal}>
            <p>{cautionText(speech, caution)}</p>
          </Signal>
        ))}
        <h2>{stepText(speech, view, step)}</h2>
      </div>
      <StepBody view={view} step={step} />
      <Tick key={step.id} view={view} step={step} onDone={() => (at < count ? goTo(at + 1) : undefined)} />
    </div>
  );
}

const LONG = 60;
const shortened = (text: string): string =>
  text.length <= LONG ? text : `${text.slice(0, text.lastIndexOf(' ', LONG))} …`;

/** Done or not; at a hold point only what is filled and right, or signed for, lets it be confirmed. */
function Tick(props: { readonly view: JobView; readonly step: SheetStep; readonly onDone: () => void }) {
  const { view, step, onDone } = props;
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const { sheet, machine } = view;
  const progress = view.progress ?? startProgress(sheet, '', 0);
  const done = progress.done.includes(step.id);
  const bars = mayTick(sheet, progress, step.id);
  const outside = openHold(step, progress).some((m) => m.key === 'job.hold.outside');
  const signed = progress.signed[step.id];
  const act = (): void => {
    if (done) {
      jobs.happen({ type: 'untick', stepId: step.id });
      return;
    }
    if (jobs.happen({ type: 'tick', stepId: step.id })) {
      commands.announce('jobs.said.done', { step: step.number });
      onDone();
    } else commands.announce('jobs.said.held', { count: bars.length });
  };
  const before = bars.find((m) => m.key === 'job.hold.before')?.params?.['step'];
  return (
    <section
      className={step.hold ? 'job-tick hold' : 'job-tick'}
      aria-label={t(step.hold ? 'jobs.hold' : 'jobs.done')}
    >
      {step.hold && <p className="small">{t('jobs.hold-about')}</p>}
      {(outside || signed !== undefined) && (
        <label className="job-field">
          <span>{t('jobs.sign')}</span>
          <input
            type="text"
            value={signed ?? ''}
            onChange={(event) =>
              jobs.happen({ type: 'sign', stepId: step.id, text: event.currentTarget.value })
            }
          />
          <span className="small faint">{t('jobs.sign-about')}</span>
        </label>
      )}
      {!done && bars.length > 0 && (
        <div className="job-bars">
          <p className="label">{t('jobs.still-open')}</p>
          <ul className="plain-list">
            {bars.map((message, i) => (
              <li key={i}>{sayJob(speech, machine, sheet, message)}</li>
            ))}
          </ul>
          {typeof before === 'number' && (
            <button
              type="button"
              className="link"
              onClick={() => commands.go('jobs', sheet.jobId, 'step', String(before))}
            >
              {t('jobs.to-hold', { step: before })}
            </button>
          )}
        </div>
      )}
      <div className="buttons">
        <button
          type="button"
          className={done ? 'button' : 'button act'}
          aria-disabled={!done && bars.length > 0}
          aria-pressed={done}
          onClick={act}
        >
          {t(done ? 'jobs.undo' : step.hold ? 'jobs.confirm' : 'jobs.tick')}
        </button>
      </div>
      <label className="job-field">
        <span>{t('jobs.note')}</span>
        <input
          type="text"
          value={progress.notes[step.id] ?? ''}
          onChange={(event) =>
            jobs.happen({ type: 'note', stepId: step.id, text: event.currentTarget.value })
          }
        />
      </label>
    </section>
  );
}
