/** The short choice of units, for a bar. */
import { useApp, useCommands, useSpeech } from '../../bind';
import { Segmented } from './Segmented';

export function UnitsChoice() {
  const { t } = useSpeech();
  const commands = useCommands();
  const units = useApp((s) => s.settings.units);
  return (
    <Segmented
      legend={t('settings.units')}
      legendHidden
      choices={[
        { value: 'si', label: t('settings.units.si-short') },
        { value: 'us', label: t('settings.units.us-short') },
      ]}
      value={units}
      onChange={(next) => commands.change({ units: next })}
    />
  );
}
