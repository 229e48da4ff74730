/** Chooses what the stage shows besides the machine itself: one view at a time. */
import { STAGE_VIEWS, type StageView } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import type { Layout } from '../common/layout';
import { Menu } from '../common/Menu';

export function ShowTool({ layout }: { readonly layout: Layout }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const show = useApp((s) => s.views.show);
  const choose = (view: StageView | null): void => {
    commands.showView(view);
    // On a phone the legend stands on the sheet's first tab.
    if (layout === 'phone' && view !== null) commands.openSheet('none');
  };
  return (
    <Menu name={t('views.open')} side="right" chosen={show ?? 'none'}>
      <div className="view-choices" role="group" aria-label={t('views.choose')}>
        {[null, ...STAGE_VIEWS].map((view) => (
          <button
            key={view ?? 'none'}
            type="button"
            className="button plain tool"
            aria-pressed={view === show}
            onClick={() => choose(view)}
          >
            {t(`views.${view ?? 'none'}`)}
          </button>
        ))}
      </div>
    </Menu>
  );
}
