/** What it could be, the likeliest first: a bar, a number and a word each, and the reasons on opening. */
import { useState } from 'react';
import { NO_FAULT, type Ranked, SOMETHING_ELSE } from '../../../core/faults';
import { useSpeech } from '../../bind';
import { chanceWord, faultName, measureName, shareText } from './fault-words';

const FIRST = 4;
/** Factors on the odds from which a reading is worth naming, and from which it speaks strongly. */
const SPEAKS = Math.log(1.5);
const STRONGLY = Math.log(10);

interface Props {
  readonly ranking: readonly Ranked[];
  /** Reasons have been worked out. */
  readonly explained: boolean;
  readonly onShow?: (fault: string) => void;
}

export function Ranking({ ranking, explained, onShow }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const [all, setAll] = useState(false);
  const shown = all ? ranking : ranking.slice(0, FIRST);
  return (
    <>
      <ol className="fault-ranking">
        {shown.map((entry, place) => (
          <li key={entry.ids.join()} data-fault={entry.ids[0]}>
            <div className="fault-line">
              <b>{entry.ids.map((id) => faultName(speech, id)).join(' · ')}</b>
              <span className="mono">{shareText(speech, entry.probability)}</span>
            </div>
            <div className="fault-bar" aria-hidden="true">
              <span style={{ width: `${(100 * entry.probability).toFixed(1)}%` }} />
            </div>
            <p className="small faint">
              {chanceWord(speech, entry.probability)}
              {entry.ids.length > 1 && <> · {t('fault-bench.together')}</>}
              {entry.severity !== null && entry.probability > 0.15 && (
                <>
                  {' '}
                  ·{' '}
                  {t('fault-bench.severity', { word: t(`fault-bench.severity.${badness(entry.severity)}`) })}
                </>
              )}
            </p>
            {place < FIRST && (
              <Why entry={entry} explained={explained} {...(onShow === undefined ? {} : { onShow })} />
            )}
          </li>
        ))}
      </ol>
      {ranking.length > FIRST && (
        <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? t('fault-bench.fewer') : t('fault-bench.more', { count: ranking.length })}
        </button>
      )}
    </>
  );
}

function badness({ mean, sd }: { readonly mean: number; readonly sd: number }): string {
  if (sd > 0.26) return 'open';
  return mean < 1 / 3 ? 'mild' : mean < 2 / 3 ? 'middle' : 'severe';
}

function Why({ entry, explained, onShow }: { readonly entry: Ranked } & Pick<Props, 'explained' | 'onShow'>) {
  const speech = useSpeech();
  const { t } = speech;
  const first = entry.ids[0]!;
  const speaking = entry.why.filter((w) => Math.abs(w.logOdds) >= SPEAKS);
  return (
    <details className="fault-why">
      <summary>
        {t('fault-bench.why')} <span className="visually-hidden">{faultName(speech, first)}</span>
      </summary>
      {entry.ids.map((id) => (
        <p key={id}>{t(`fault-bench.fault.${id}.does`)}</p>
      ))}
      {explained && (
        <ul className="fault-reasons">
          {speaking.map((w) => (
            <li key={w.measurement} className={w.logOdds > 0 ? 'for' : 'against'}>
              {t(
                `fault-bench.why.${w.logOdds > 0 ? 'for' : 'against'}${Math.abs(w.logOdds) >= STRONGLY ? '-strong' : ''}`,
                { name: measureName(speech, w.measurement) },
              )}
            </li>
          ))}
          {speaking.length === 0 && <li>{t('fault-bench.why-none')}</li>}
        </ul>
      )}
      {onShow !== undefined && first !== NO_FAULT && first !== SOMETHING_ELSE && (
        <button type="button" className="button" onClick={() => onShow(first)}>
          {t('fault-bench.tab.show')}
        </button>
      )}
    </details>
  );
}
