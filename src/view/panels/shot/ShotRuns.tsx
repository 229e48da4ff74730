/** Runs side by side, the machine's own first; a row shows its run. */
import { useMemo } from 'react';
import type { ShotRun } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';
import { runsCsv } from './runs-csv';
import { runName, setupLine } from './setup-words';
import { useShownRun } from './use-shot';

export function ShotRuns() {
  const speech = useSpeech();
  const { t, number, symbol, quantity } = speech;
  const commands = useCommands();
  const own = useApp((s) => s.shot.own);
  const made = useApp((s) => s.shot.runs);
  const machine = useApp((s) => s.document?.machine.id ?? '');
  const shown = useShownRun();
  const runs = useMemo(
    () => [own.high, own.low, ...made].filter((run): run is ShotRun => run !== null),
    [own, made],
  );
  if (runs.length === 0) return null;
  return (
    <section aria-labelledby="shot-runs">
      <h3 id="shot-runs">{t('shot.runs')}</h3>
      <table className="exciter-table shot-runs">
        <thead>
          <tr>
            <th scope="col" className="first">
              {t('shot.col-run')}
            </th>
            <th scope="col">{t('shot.col-captured')}</th>
            <th scope="col">
              U <span className="unit">{symbol('unbalance')}</span>
            </th>
            <th scope="col">
              <abbr title={t('shot.col-ratio-long')}>{t('shot.col-ratio')}</abbr>
            </th>
          </tr>
        </thead>
        <tbody>
          {runs.map((run) => (
            <tr key={run.id} className={run === shown ? 'now' : undefined} data-run={run.id}>
              <th scope="row">
                <button
                  type="button"
                  className="link"
                  aria-pressed={run === shown}
                  onClick={() => {
                    if (run.experiment === 'own') commands.setExciter({ direction: run.setup.direction });
                    commands.showRun(run.experiment === 'own' ? null : run.id);
                  }}
                >
                  <b>{runName(speech, run)}</b>
                  <small>{setupLine(speech, run.setup)}</small>
                </button>
              </th>
              <td className="number mono">{quantity(run.outcome.captured, 'share')}</td>
              <td className="number mono">{number(run.outcome.U_kgm, 'unbalance')}</td>
              <td className="number mono">{number(run.outcome.ofOwnHigh, 'plain', 2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="buttons">
        <button
          type="button"
          className="button"
          onClick={() => saveText(`${machine}-shot-runs.csv`, runsCsv(runs))}
        >
          {t('shot.export')}
        </button>
        {made.length > 0 && (
          <button type="button" className="button plain" onClick={commands.clearRuns}>
            {t('shot.clear')}
          </button>
        )}
      </div>
    </section>
  );
}
