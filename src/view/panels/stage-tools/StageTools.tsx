/** The bar above the stage: views, cut, spin, balloons, what else is shown. */
import { useApp, useCommands, useSpeech } from '../../bind';
import type { CameraView } from '../../../store';
import type { Layout } from '../common/layout';
import { Icon } from '../common/icons';
import { Menu } from '../common/Menu';
import { ShareTool } from './ShareTool';
import { ShowTool } from './ShowTool';
import { SpinReadout } from './SpinReadout';
import './stage-tools.css';

const VIEWS: readonly CameraView[] = ['home', 'front', 'right', 'left', 'top', 'axis'];

function Toggle(props: {
  readonly icon: string;
  readonly word: string;
  readonly on: boolean;
  readonly act: () => void;
}) {
  const { t } = useSpeech();
  return (
    <button type="button" className="button plain tool" aria-pressed={props.on} onClick={props.act}>
      <Icon name={props.icon} />
      <span>{t(props.word)}</span>
    </button>
  );
}

function Views() {
  const { t } = useSpeech();
  const commands = useCommands();
  return (
    <div className="tool-group" role="group" aria-label={t('stage-tools.views')}>
      {VIEWS.map((view) => (
        <button
          key={view}
          type="button"
          className="button plain tool"
          title={t(`view-name.${view}.long`)}
          onClick={() => commands.lookAt(view)}
        >
          {t(`view-name.${view}`)}
        </button>
      ))}
    </div>
  );
}

export function StageTools({ layout }: { readonly layout: Layout }) {
  const { t, language } = useSpeech();
  const commands = useCommands();
  const section = useApp((s) => s.section);
  const spinning = useApp((s) => s.spinning);
  const balloons = useApp((s) => s.balloons);
  const showContext = useApp((s) => s.showContext);
  const optionsOn = useApp((s) => s.optionsOn);
  const machine = useApp((s) => s.document?.machine);
  const hasContext = machine?.parts.some((part) => part.context) ?? false;
  const optionName = (id: string): string =>
    optionNames(machine?.options[id], language) ??
    (t(`option.${id}`) === `option.${id}` ? id : t(`option.${id}`));
  return (
    <div className="stage-tools" role="toolbar" aria-label={t('stage-tools.title')}>
      {layout !== 'phone' && <Views />}
      <div className="tool-group" role="group" aria-label={t('stage-tools.shows')}>
        {layout === 'phone' && (
          <Menu name={t('stage-tools.views')} side="left">
            <Views />
          </Menu>
        )}
        <Toggle
          icon="section"
          word="stage-tools.section"
          on={section.on}
          act={() => commands.setSection({ on: !section.on })}
        />
        <Toggle
          icon="spin"
          word="stage-tools.spin"
          on={spinning}
          act={() => commands.setSpinning(!spinning)}
        />
        <Toggle
          icon="balloons"
          word="stage-tools.balloons"
          on={balloons}
          act={() => commands.setBalloons(!balloons)}
        />
        <ShowTool layout={layout} />
        {(hasContext || Object.keys(optionsOn).length > 0) && (
          <Menu name={t('stage-tools.also')} side="right">
            {hasContext && (
              <label className="check">
                <input
                  type="checkbox"
                  checked={showContext}
                  onChange={(event) => commands.setContext(event.currentTarget.checked)}
                />
                <span>{t('stage-tools.context')}</span>
              </label>
            )}
            {Object.entries(optionsOn).map(([id, on]) => (
              <label key={id} className="check">
                <input
                  type="checkbox"
                  checked={on}
                  onChange={(event) => commands.setOption(id, event.currentTarget.checked)}
                />
                <span>{optionName(id)}</span>
              </label>
            ))}
          </Menu>
        )}
        <ShareTool />
      </div>
      {spinning && <SpinReadout />}
    </div>
  );
}

/** The machine file's own name of an option, where its data carries one. */
function optionNames(option: object | undefined, language: string): string | undefined {
  const names = (option as { names?: Readonly<Record<string, string>> } | undefined)?.names;
  return names?.[language] ?? names?.['en'];
}
