/** Answers as statements for a school's learning record store: who learned is named here and nowhere else. */
import { useId, useState } from 'react';
import { createRecordsCommands } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';

/** The store asks for an address of the school; any absolute one will do. */
const isAddress = (text: string): boolean => /^https?:\/\/[^\s/]+\S*$/.test(text);

export function StatementsFile() {
  const { t } = useSpeech();
  const records = usePlaceCommands(createRecordsCommands);
  const id = useId();
  const [homePage, setHomePage] = useState('');
  const [name, setName] = useState('');
  const complete = isAddress(homePage.trim()) && name.trim() !== '';
  return (
    <details className="records-more">
      <summary>{t('records.xapi')}</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (!complete) return;
          void records
            .statements({ homePage: homePage.trim(), name: name.trim() })
            .then((text) => saveText('drumbench-statements.json', text, 'application/json'));
        }}
      >
        <p className="small">{t('records.xapi-about')}</p>
        <label htmlFor={`${id}-home`} className="field-name">
          {t('records.xapi-home')}
        </label>
        <input
          id={`${id}-home`}
          type="url"
          className="text-field"
          placeholder="https://"
          value={homePage}
          onChange={(event) => setHomePage(event.currentTarget.value)}
        />
        <label htmlFor={`${id}-name`} className="field-name">
          {t('records.xapi-name')}
        </label>
        <input
          id={`${id}-name`}
          className="text-field"
          autoComplete="off"
          value={name}
          onChange={(event) => setName(event.currentTarget.value)}
        />
        <button type="submit" className="button" disabled={!complete}>
          {t('records.xapi-save')}
        </button>
      </form>
    </details>
  );
}
