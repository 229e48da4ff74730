/** Watch the shot: the slice, its playing, what is read off it, experiments and their results. */
import { useEffect, useRef } from 'react';
import type { ExciterStudy } from '../../../core/studies';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { Signal } from '../common/Signal';
import { LevelNote } from './LevelNote';
import { runName, setupLine } from './setup-words';
import { ShotChart } from './ShotChart';
import { ShotDrawing } from './ShotDrawing';
import { ShotExperiments } from './ShotExperiments';
import { ShotFaults, ShotJobCard } from './ShotJobCard';
import { ShotReadings } from './ShotReadings';
import { ShotResult } from './ShotResult';
import { ShotRuns } from './ShotRuns';
import { ShotTransport } from './ShotTransport';
import { useShotBase, useShownRun } from './use-shot';
import './shot.css';

/** Says what came of a run when it is done. */
function useTold(): void {
  const { t, quantity } = useSpeech();
  const commands = useCommands();
  const runs = useApp((s) => s.shot.runs);
  const known = useRef(runs);
  useEffect(() => {
    const last = runs[runs.length - 1];
    if (last !== undefined && runs.length > known.current.length)
      commands.announce('shot.said-done', {
        run: t(`shot.run-${last.experiment}`),
        captured: quantity(last.outcome.captured, 'share'),
        unbalance: quantity(last.outcome.U_kgm, 'unbalance'),
      });
    known.current = runs;
  }, [runs, commands, t, quantity]);
}

function RunOwn() {
  const { t } = useSpeech();
  const commands = useCommands();
  const busy = useApp((s) => s.shot.job !== null);
  return (
    <>
      {busy ? (
        <ShotJobCard />
      ) : (
        <button type="button" className="button act" onClick={() => void commands.runOwn()}>
          {t('shot.run-both')}
        </button>
      )}
      <ShotFaults />
    </>
  );
}

export function ShotWatch({ study }: { readonly study: ExciterStudy }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const loading = useApp((s) => s.shot.loading);
  const base = useShotBase();
  const run = useShownRun();
  useTold();
  if (base === null) return <p className="faint">{t('exciter.none')}</p>;
  if (run === null)
    return (
      <>
        {loading === 'failed' ? (
          <div className="shot-wait">
            <p>{t('shot.load-failed')}</p>
            <button type="button" className="button" onClick={() => void commands.loadShot()}>
              {t('loading.again')}
            </button>
          </div>
        ) : (
          <p className="faint shot-wait">
            {t(loading === 'none-shipped' ? 'shot.none-shipped' : 'shot.loading')}
          </p>
        )}
        {loading === 'none-shipped' && <RunOwn />}
      </>
    );
  const { slice, shot, stop_Hz } = run.take.parameters;
  return (
    <>
      <section className="shot-watch" aria-label={t('shot.title')}>
        <p className="shot-title">
          <b>
            <Icon name={run.setup.direction === 'low' ? 'turn-ccw' : 'turn-cw'} size={18} />{' '}
            {runName(speech, run)}
          </b>
          <small>{setupLine(speech, run.setup)}</small>
        </p>
        <ShotDrawing run={run} base={base} study={study} />
        <ShotTransport run={run} />
        <ShotReadings run={run} base={base} />
        <ShotChart run={run} base={base} />
      </section>
      <ShotResult run={run} />
      <LevelNote run={run} />
      <ShotExperiments />
      <ShotRuns />
      <Signal word="notice">
        <p>
          {t('shot.notice', {
            depth: quantity(slice.depth_m, 'length-small', 2),
            ball: quantity(shot.ball_diameter_m, 'length-small', 2),
            spread: quantity(shot.size_spread, 'share'),
            stop: quantity(stop_Hz, 'frequency'),
          })}
        </p>
      </Signal>
    </>
  );
}
