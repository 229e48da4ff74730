/** What is selected, and what can be done with it; with the way back to seeing everything. */
import { useMemo } from 'react';
import { findUnit, findPart } from '../../../core/machine';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { kindName, partName } from '../common/names';
import { Visibility } from '../common/Visibility';

export function SelectionBar() {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const machine = useApp((s) => s.document?.machine);
  const selected = useApp((s) => s.selectedPart);
  const changed = useApp((s) => s.hiddenParts.size + s.ghostedParts.size > 0 || s.isolatedParts !== null);
  const target = useMemo(() => {
    if (machine === undefined || selected === null) return null;
    // A fastener stands for its whole group: nobody hides one bolt of sixteen.
    const unit = findUnit(machine, findPart(machine, selected)?.unit ?? '');
    return unit?.group != null ? unit.partIds : [selected];
  }, [machine, selected]);
  if (machine === undefined || (target === null && !changed)) return null;
  const name =
    selected === null || target === null
      ? ''
      : target.length > 1
        ? t('parts.all-of', {
            name: kindName(speech, machine, findPart(machine, selected)!.kind),
            count: target.length,
          })
        : partName(speech, machine, selected);
  return (
    <div className="selection">
      {selected !== null && target !== null && (
        <>
          <p className="selection-name">{name}</p>
          <div className="selection-tools">
            <Visibility partIds={target} name={name} compact />
            <button
              type="button"
              className="button plain icon"
              aria-label={t('view.act-on', { act: t('view.fit'), name })}
              title={t('view.fit')}
              onClick={() => commands.lookAt('fit', selected)}
            >
              <Icon name="fit" />
            </button>
          </div>
        </>
      )}
      {changed && (
        <button type="button" className="button act" onClick={commands.showAll}>
          {t('view.show-all')}
        </button>
      )}
    </div>
  );
}
