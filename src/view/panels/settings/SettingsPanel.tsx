/** Settings that survive a reload. */
import type { ReactNode } from 'react';
import { LANGUAGES, loadLanguage, useApp, useCommands, useSpeech } from '../../bind';
import type { Settings } from '../../../store';
import { Segmented } from '../common/Segmented';

interface FieldProps<K extends keyof Settings> {
  readonly of: K;
  readonly values: readonly Settings[K][];
}

export function SettingsPanel() {
  const { t } = useSpeech();
  const commands = useCommands();
  const settings = useApp((s) => s.settings);
  const offline = useApp((s) => s.offline);
  function Field<K extends 'units' | 'theme' | 'motion' | 'drawTier'>(props: FieldProps<K>): ReactNode {
    return (
      <Segmented
        fill
        legend={t(`settings.${props.of}`)}
        choices={props.values.map((value) => ({ value, label: t(`settings.${props.of}.${value}`) }))}
        value={settings[props.of]}
        onChange={(value) => commands.change({ [props.of]: value } as Partial<Settings>)}
      />
    );
  }
  const speak = async (language: string): Promise<void> => {
    await loadLanguage(language);
    commands.change({ language });
  };
  return (
    <div className="panel-body settings">
      <h2>{t('settings.title')}</h2>
      {Field({ of: 'units', values: ['si', 'us'] })}
      {Field({ of: 'theme', values: ['paper', 'night', 'projector'] })}
      <label>
        <span className="field-name">{t('settings.language')}</span>
        <select value={settings.language} onChange={(event) => void speak(event.currentTarget.value)}>
          {Object.entries(LANGUAGES).map(([id, language]) => (
            <option key={id} value={id} lang={id}>
              {language.name}
            </option>
          ))}
        </select>
      </label>
      <label className="check">
        <input
          type="checkbox"
          checked={settings.glove}
          onChange={(event) => commands.change({ glove: event.currentTarget.checked })}
        />
        <span>{t('settings.glove')}</span>
      </label>
      <label className="check">
        <input
          type="checkbox"
          checked={settings.firstSteps}
          onChange={(event) => commands.change({ firstSteps: event.currentTarget.checked })}
        />
        <span>{t('settings.first-steps')}</span>
      </label>
      {Field({ of: 'motion', values: ['system', 'reduced', 'full'] })}
      {Field({ of: 'drawTier', values: ['auto', 'full', 'low'] })}
      <div>
        <p className="field-name">{t('settings.offline')}</p>
        <p role="status" data-offline={offline}>
          {t(`settings.offline.${offline}`)}
        </p>
      </div>
      <p className="small faint">{t('settings.kept')}</p>
    </div>
  );
}
