/** What this browser keeps of a person's work: what it came to, one file out and in, erasing. */
import { useEffect } from 'react';
import { createRecordsCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';
import { EraseButton } from './EraseButton';
import { ImportFile } from './ImportFile';
import { Packages } from './Packages';
import { RecordStore } from './RecordStore';
import { StatementsFile } from './StatementsFile';
import { Work } from './Work';
import './records.css';

export default function RecordsPlace() {
  const { t } = useSpeech();
  const records = usePlaceCommands(createRecordsCommands);
  const { phase, counts, unreadable } = useApp((s) => s.records);
  useEffect(() => void records.look(), [records]);
  const total = Object.values(counts).reduce((sum, each) => sum + each, 0);
  return (
    <div className="panel-body records">
      <h2>{t('records.title')}</h2>
      <p>{t('records.private')}</p>
      {phase === 'ready' && (
        <>
          <Answers />
          <Work />
          <section aria-labelledby="records-kept">
            <h3 id="records-kept">{t('records.kept')}</h3>
            {total === 0 ? <p className="faint">{t('records.nothing')}</p> : <Collections />}
            {unreadable > 0 && (
              <p className="records-notice">{t('records.unreadable', { count: unreadable })}</p>
            )}
          </section>
          <Storage />
          <section aria-labelledby="records-file">
            <h3 id="records-file">{t('records.file')}</h3>
            <p className="small">{t('records.file-about')}</p>
            <div className="buttons">
              <button
                type="button"
                className="button act"
                disabled={total === 0}
                onClick={() =>
                  void records
                    .exported()
                    .then((text) =>
                      saveText(
                        `drumbench-records-${new Date().toISOString().slice(0, 10)}.json`,
                        text,
                        'application/json',
                      ),
                    )
                }
              >
                {t('records.export')}
              </button>
            </div>
            <ImportFile />
            <StatementsFile />
          </section>
          <RecordStore />
          <Packages />
          <section aria-labelledby="records-erase">
            <h3 id="records-erase">{t('records.erase')}</h3>
            <p className="small">{t('records.erase-about')}</p>
            <div className="buttons">
              <EraseButton
                name={t('records.erase-all')}
                // What is open in this page still holds what it read: it begins anew.
                onErase={() => void records.eraseAll().then(() => window.location.reload())}
              />
            </div>
          </section>
        </>
      )}
    </div>
  );
}

function Answers() {
  const { t, language } = useSpeech();
  const answers = useApp((s) => s.records.answers);
  if (answers === null || answers.answered === 0) return null;
  const day = new Intl.DateTimeFormat(language, { dateStyle: 'medium' });
  return (
    <section aria-labelledby="records-answers">
      <h3 id="records-answers">{t('records.answers')}</h3>
      <dl className="facts">
        <dt>{t('records.answered')}</dt>
        <dd className="mono" data-testid="answered">
          {answers.answered}
        </dd>
        <dt>{t('records.right')}</dt>
        <dd className="mono">{answers.right}</dd>
        <dt>{t('records.sure-and-wrong')}</dt>
        <dd className="mono">{answers.sureAndWrong}</dd>
        <dt>{t('records.items')}</dt>
        <dd className="mono">{answers.items}</dd>
        {answers.first_ms !== null && answers.last_ms !== null && (
          <>
            <dt>{t('records.days')}</dt>
            <dd>{day.formatRange(answers.first_ms, answers.last_ms)}</dd>
          </>
        )}
      </dl>
    </section>
  );
}

function Collections() {
  const { t, has } = useSpeech();
  const records = usePlaceCommands(createRecordsCommands);
  const counts = useApp((s) => s.records.counts);
  return (
    <ul className="records-list">
      {Object.entries(counts)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([collection, count]) => {
          const key = `records.of.${collection}`;
          const name = has(key) ? t(key) : t('records.of-other', { name: collection });
          return (
            <li key={collection} data-collection={collection}>
              <span>{name}</span> <span className="mono">{count}</span>
              <EraseButton
                name={t('records.erase-one')}
                of={name}
                onErase={() => void records.eraseOne(collection).then(() => window.location.reload())}
              />
            </li>
          );
        })}
    </ul>
  );
}

const MEGA = 1e6;

function Storage() {
  const { t, language } = useSpeech();
  const records = usePlaceCommands(createRecordsCommands);
  const { lasting, space } = useApp((s) => s.records);
  const mega = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  return (
    <section aria-labelledby="records-storage">
      <h3 id="records-storage">{t('records.storage')}</h3>
      {!lasting && <p className="records-notice">{t('records.not-lasting')}</p>}
      {lasting && <p>{t(space?.persisted === true ? 'records.held' : 'records.lasting')}</p>}
      {space !== null && (
        <p className="small faint">
          {t('records.space', {
            used: mega.format(space.used_bytes / MEGA),
            most: mega.format(space.most_bytes / MEGA),
          })}
        </p>
      )}
      {lasting && space !== null && !space.persisted && (
        <div className="buttons">
          <button type="button" className="button" onClick={() => void records.hold()}>
            {t('records.hold')}
          </button>
        </div>
      )}
    </section>
  );
}
