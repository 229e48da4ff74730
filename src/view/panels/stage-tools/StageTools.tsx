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
  const { t } = useSpeech();
  const commands = useCommands();
  const section = useApp((s) => s.section);
  const spinning = useApp((s) => s.spinning);
  const balloons = useApp((s) => s.balloons);
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
        <ShareTool />
      </div>
      {spinning && <SpinReadout />}
    </div>
  );
}
