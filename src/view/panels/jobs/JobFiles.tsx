/** Sheets and histories as files: out whole, in with every fault listed, and nothing kept is ever written over. */
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';
import { faultText } from '../machine/fault-text';
import { readFiles } from '../machine/read-files';
import { fileName } from './job-words';

const JSON_TYPE = 'application/json';

export function JobFiles() {
  const { t } = useSpeech();
  const jobs = usePlaceCommands(createJobCommands);
  const commands = useCommands();
  const progress = useApp((s) => s.jobs.progress);
  const inJob = useApp((s) => s.route.path[0] !== undefined && s.route.path[0] !== 'history');
  const history = useApp((s) => s.jobs.history);
  const save = (): void => {
    const text = jobs.exportText();
    if (progress === null || text === null) return;
    saveText(fileName(progress.jobId, progress.changed_ms, 'json'), text, JSON_TYPE);
    commands.announce('jobs.said.saved');
  };
  return (
    <section className="job-files" aria-labelledby="job-files">
      <h3 id="job-files">{t('jobs.files')}</h3>
      <p className="small">{t('jobs.files-about')}</p>
      <div className="buttons">
        {inJob && (
          <button type="button" className="button" disabled={progress === null} onClick={save}>
            {t('jobs.export')}
          </button>
        )}
        {!inJob && (
          <button
            type="button"
            className="button"
            disabled={history.length === 0}
            onClick={() => {
              const last = history.at(-1)?.at_ms ?? 0;
              saveText(fileName('job-history', last, 'json'), jobs.historyText(), JSON_TYPE);
            }}
          >
            {t('jobs.export-history')}
          </button>
        )}
        <label className="button file-choice">
          <input
            type="file"
            accept=".json,application/json"
            className="visually-hidden"
            onChange={(event) => {
              const input = event.currentTarget;
              void readFiles(input.files ?? []).then(([file]) => {
                input.value = '';
                if (file !== undefined) void jobs.importFile(file.name, file.text);
              });
            }}
          />
          {t('jobs.import')}
        </label>
      </div>
      <ImportReport />
      <Damaged />
    </section>
  );
}

function ImportReport() {
  const speech = useSpeech();
  const { t } = speech;
  const jobs = usePlaceCommands(createJobCommands);
  const commands = useCommands();
  const report = useApp((s) => s.jobs.imported);
  if (report === null) return null;
  const lines = report.faults.map((fault) => faultText(speech, fault));
  return (
    <div
      className={report.result === 'taken' ? 'import-report accepted' : 'import-report'}
      role={report.result === 'taken' ? 'status' : 'alert'}
      data-import={report.result}
    >
      <h4>{t(`jobs.import.${report.result}`, { file: report.fileName, count: report.faults.length })}</h4>
      {report.result !== 'taken' && <p>{t('jobs.import.unchanged')}</p>}
      {report.entries > 0 && <p>{t('jobs.import.entries', { count: report.entries })}</p>}
      {lines.length > 0 && (
        <ol className="faults mono" tabIndex={0} aria-label={t('import.faults')}>
          {lines.map((line, i) => (
            <li key={i}>{line}</li>
          ))}
        </ol>
      )}
      <div className="buttons">
        {report.offered !== null && (
          <button type="button" className="button act" onClick={jobs.takeOffered}>
            {t('jobs.import.take')}
          </button>
        )}
        {report.result === 'taken' && report.jobId !== null && (
          <button
            type="button"
            className="button"
            onClick={() => {
              const id = report.jobId;
              if (id === null) return;
              jobs.closeImport();
              commands.go('jobs', id);
            }}
          >
            {t('jobs.import.open')}
          </button>
        )}
        <button type="button" className="button" onClick={jobs.closeImport}>
          {t('import.close')}
        </button>
      </div>
    </div>
  );
}

/** Kept records that no longer read back whole: their texts can be saved before they are let go. */
function Damaged() {
  const speech = useSpeech();
  const { t } = speech;
  const jobs = usePlaceCommands(createJobCommands);
  const damaged = useApp((s) => s.jobs.damaged);
  return damaged.map((record) => (
    <div key={record.key} className="import-report" role="note">
      <h4>{t('jobs.damaged', { key: record.key })}</h4>
      <p>{t('jobs.damaged-about')}</p>
      <ol className="faults mono" tabIndex={0} aria-label={t('import.faults')}>
        {record.faults.map((fault, i) => (
          <li key={i}>{faultText(speech, fault)}</li>
        ))}
      </ol>
      <div className="buttons">
        <button
          type="button"
          className="button"
          onClick={() => saveText(`${record.key}.json`, record.text, JSON_TYPE)}
        >
          {t('jobs.damaged-save')}
        </button>
        <button type="button" className="button" onClick={() => void jobs.forgetDamaged(record.key)}>
          {t('jobs.damaged-drop')}
        </button>
      </div>
    </div>
  ));
}
