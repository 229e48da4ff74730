/** Chooses what the stage shows: one view at a time, and what stands there besides the drum. */
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
      <Also />
    </Menu>
  );
}

/** The rest of the machine, and its options. */
function Also() {
  const { t, language } = useSpeech();
  const commands = useCommands();
  const showContext = useApp((s) => s.showContext);
  const optionsOn = useApp((s) => s.optionsOn);
  const machine = useApp((s) => s.document?.machine);
  const hasContext = machine?.parts.some((part) => part.context) ?? false;
  const options = Object.entries(optionsOn);
  if (!hasContext && options.length === 0) return null;
  const optionName = (id: string): string =>
    optionNames(machine?.options[id], language) ??
    (t(`option.${id}`) === `option.${id}` ? id : t(`option.${id}`));
  return (
    <fieldset className="also">
      <legend className="label">{t('stage-tools.also')}</legend>
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
      {options.map(([id, on]) => (
        <label key={id} className="check">
          <input
            type="checkbox"
            checked={on}
            onChange={(event) => commands.setOption(id, event.currentTarget.checked)}
          />
          <span>{optionName(id)}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The machine file's own name of an option, where its data carries one. */
function optionNames(option: object | undefined, language: string): string | undefined {
  const names = (option as { names?: Readonly<Record<string, string>> } | undefined)?.names;
  return names?.[language] ?? names?.['en'];
}
