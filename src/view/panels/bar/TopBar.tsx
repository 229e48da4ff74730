/** The slim bar on top: name, machine, the places, units, and the ways to the sheets on smaller screens. */
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import type { Layout } from '../common/layout';
import { UnitsChoice } from '../common/UnitsChoice';
import { PlaceNav } from '../places/PlaceNav';
import { Mark } from './Mark';
import './bar.css';

export function TopBar({ layout }: { readonly layout: Layout }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const machine = useApp((s) => s.document?.machine);
  const sheet = useApp((s) => s.sheet);
  const panel = useApp((s) => s.panel);
  const bench = useApp((s) => s.route.place === 'bench');
  const asSheet = layout !== 'desktop' || !bench;
  const settingsOpen = panel === 'settings' && (!asSheet || sheet === 'panel');
  return (
    <header className="top-bar">
      <p className="word-mark">
        <Mark />
        <span>{t('app.name')}</span>
      </p>
      <h1 className="machine-name">
        {machine === undefined ? (
          <span className="faint">{t('app.no-machine')}</span>
        ) : (
          <>
            <span>{machine.name}</span>
            {machine.place !== '' && <span className="machine-place faint">{machine.place}</span>}
          </>
        )}
      </h1>
      <PlaceNav folded={layout !== 'desktop'} />
      <div className="top-tools">
        {layout === 'tablet' && (
          <>
            <button
              type="button"
              className="button"
              aria-pressed={sheet === 'parts'}
              onClick={() => commands.openSheet(sheet === 'parts' ? 'none' : 'parts')}
            >
              <Icon name="list" />
              <span>{t('parts.title')}</span>
            </button>
            <button
              type="button"
              className="button"
              aria-pressed={sheet === 'panel'}
              onClick={() => commands.openSheet(sheet === 'panel' ? 'none' : 'panel')}
            >
              <Icon name="panel" />
              <span>{t(`panel.${panel}`)}</span>
            </button>
          </>
        )}
        <UnitsChoice />
        {layout !== 'phone' && (
          <button
            type="button"
            className="button icon"
            aria-label={t('settings.title')}
            title={t('settings.title')}
            aria-pressed={settingsOpen}
            onClick={() => {
              commands.openPanel(settingsOpen ? 'exciter' : 'settings');
              if (asSheet) commands.openSheet(settingsOpen ? 'none' : 'panel');
            }}
          >
            <Icon name="settings" />
          </button>
        )}
      </div>
    </header>
  );
}
