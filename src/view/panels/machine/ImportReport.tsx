/** What came of a dropped file: every fault at once, and that the machine on the stage has not changed. */
import { useState } from 'react';
import { useApp, useCommands, useSpeech } from '../../bind';
import { faultText } from './fault-text';

export function ImportReport() {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const report = useApp((s) => s.importReport);
  const name = useApp((s) => s.document?.machine.name ?? '');
  const [copied, setCopied] = useState(false);
  if (report === null) return null;
  const lines = report.faults.map((fault) => faultText(speech, fault));
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(lines.join('\n'));
      setCopied(true);
      commands.announce('import.copied');
    } catch {
      commands.announce('import.copy-refused');
    }
  };
  return (
    <section
      className={report.accepted ? 'import-report accepted' : 'import-report'}
      aria-labelledby="import-title"
    >
      <h3 id="import-title">
        {t(report.accepted ? 'import.accepted' : 'import.refused', {
          file: report.fileName,
          count: report.faults.length,
        })}
      </h3>
      {!report.accepted && <p>{t('import.unchanged', { name })}</p>}
      {lines.length > 0 && (
        <ol className="import-faults mono" tabIndex={0} aria-label={t('import.faults')}>
          {lines.map((line, i) => (
            <li key={i}>{line}</li>
          ))}
        </ol>
      )}
      <div className="buttons">
        {lines.length > 0 && (
          <button type="button" className="button" onClick={() => void copy()}>
            {t(copied ? 'import.copied' : 'import.copy')}
          </button>
        )}
        <button type="button" className="button" onClick={commands.closeImportReport}>
          {t('import.close')}
        </button>
      </div>
    </section>
  );
}
