/** A file of records taken in: what was taken, what was there already, what of it is damaged. */
import { useRef, useState } from 'react';
import { MOST_ARCHIVE_BYTES } from '../../../core/records';
import { createRecordsCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';

export function ImportFile() {
  const { t, say } = useSpeech();
  const records = usePlaceCommands(createRecordsCommands);
  const imported = useApp((s) => s.records.imported);
  const input = useRef<HTMLInputElement>(null);
  const [replace, setReplace] = useState(false);
  const [tooLarge, setTooLarge] = useState(false);
  const take = async (file: File): Promise<void> => {
    setTooLarge(file.size > MOST_ARCHIVE_BYTES);
    if (file.size <= MOST_ARCHIVE_BYTES) await records.take(file.name, await file.text(), replace);
  };
  return (
    <div className="records-import">
      <label className="check">
        <input
          type="checkbox"
          checked={replace}
          onChange={(event) => setReplace(event.currentTarget.checked)}
        />
        <span>{t('records.replace')}</span>
      </label>
      <input
        ref={input}
        type="file"
        accept=".json,application/json"
        className="visually-hidden"
        aria-label={t('records.import')}
        tabIndex={-1}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = '';
          if (file !== undefined) void take(file);
        }}
      />
      <button type="button" className="button" onClick={() => input.current?.click()}>
        {t('records.import')}
      </button>
      <div role="status">
        {tooLarge && <p className="records-notice">{t('records.too-large')}</p>}
        {imported !== null && (
          <div className="records-notice">
            <p>{t('records.imported', { ...imported, faults: imported.faults.length })}</p>
            {imported.refused > 0 && <p>{t('records.refused', { count: imported.refused })}</p>}
            {imported.faults.length > 0 && (
              <ul className="small">
                {imported.faults.slice(0, 20).map((fault) => (
                  <li key={fault.path}>
                    <span className="mono">{fault.path}</span>: {say(fault.expected)}
                  </li>
                ))}
              </ul>
            )}
            {imported.taken > 0 && (
              <button type="button" className="button" onClick={() => window.location.reload()}>
                {t('records.use')}
              </button>
            )}
          </div>
        )}
      </div>
    </div>
  );
}
