/** Hide, ghost and isolate for a set of parts, as toggle buttons. */
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from './icons';

interface Props {
  readonly partIds: readonly string[];
  /** What the buttons act on, for the screen reader. */
  readonly name: string;
  /** Icons only. */
  readonly compact?: boolean;
  /** Out of the tab order, where a grid's keys do the same. */
  readonly untabbed?: boolean;
}

export function Visibility({ partIds, name, compact = false, untabbed = false }: Props) {
  const { t } = useSpeech();
  const commands = useCommands();
  const hidden = useApp((s) => partIds.length > 0 && partIds.every((id) => s.hiddenParts.has(id)));
  const ghosted = useApp((s) => partIds.length > 0 && partIds.every((id) => s.ghostedParts.has(id)));
  const isolated = useApp(
    (s) =>
      s.isolatedParts !== null &&
      s.isolatedParts.size === partIds.length &&
      partIds.every((id) => s.isolatedParts?.has(id)),
  );
  const button = (icon: string, word: string, pressed: boolean, act: () => void) => (
    <button
      type="button"
      className={compact ? 'button plain icon' : 'button'}
      tabIndex={untabbed ? -1 : undefined}
      aria-pressed={pressed}
      aria-label={t('view.act-on', { act: t(word), name })}
      title={compact ? t(word) : undefined}
      onClick={(event) => {
        event.stopPropagation();
        act();
      }}
    >
      <Icon name={icon} />
      {!compact && <span>{t(word)}</span>}
    </button>
  );
  return (
    <>
      {button(hidden ? 'hidden' : 'hide', 'view.hide', hidden, () => commands.hide(partIds))}
      {button('ghost', 'view.ghost', ghosted, () => commands.ghost(partIds))}
      {button('isolate', 'view.isolate', isolated, () => commands.isolate(isolated ? null : partIds))}
    </>
  );
}
