/** One row of the parts list. */
import { memo } from 'react';
import { useApp, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { ItemBalloon } from '../common/ItemBalloon';
import { kindName, partName } from '../common/names';
import { Visibility } from '../common/Visibility';
import type { Row } from './rows';

interface Props {
  readonly row: Row;
  readonly selected: boolean;
  readonly tabStop: boolean;
  readonly onChoose: (row: Row) => void;
  readonly onOpen: (row: Row, open: boolean) => void;
  readonly onFit: (row: Row) => void;
}

export const ListRow = memo(function ListRow(props: Props) {
  const { row, selected } = props;
  const speech = useSpeech();
  const machine = useApp((s) => s.document?.machine);
  const hidden = useApp((s) => row.partIds.every((id) => s.hiddenParts.has(id)));
  const hovered = useApp(
    (s) => row.level !== 1 && s.hoveredPart !== null && row.partIds.includes(s.hoveredPart),
  );
  if (machine === undefined) return null;
  const name =
    row.level === 1
      ? speech.t(`family.${row.family}`)
      : row.level === 2
        ? kindName(speech, machine, row.kind)
        : partName(speech, machine, row.partId);
  const opens = row.level === 1 || (row.level === 2 && row.partIds.length > 1);
  const open = row.level !== 3 && row.open;
  const className = ['row', `level-${row.level}`, hidden ? 'hidden' : '', hovered ? 'hovered' : ''].join(' ');
  return (
    <tr
      role="row"
      className={className}
      data-key={row.key}
      aria-level={row.level}
      aria-selected={row.level === 1 ? undefined : selected}
      aria-expanded={opens ? open : undefined}
      tabIndex={props.tabStop ? 0 : -1}
      onClick={() => props.onChoose(row)}
      onDoubleClick={() => row.level !== 1 && props.onFit(row)}
    >
      <td role="gridcell" className="cell-item">
        {row.level === 2 ? (
          <ItemBalloon item={row.item} strong={selected} />
        ) : row.level === 1 ? (
          <Icon name={open ? 'down' : 'right'} size={16} />
        ) : null}
      </td>
      <td role="gridcell" className="cell-name">
        <div>
          <span className="row-name">{name}</span>
          {hidden && <span className="row-note">{speech.t('parts.hidden')}</span>}
          {row.level === 3 && <span className="row-note mono">{row.partId}</span>}
        </div>
        {row.level === 2 && opens && (
          <button
            type="button"
            className="row-open"
            tabIndex={-1}
            aria-label={speech.t(open ? 'parts.close-pieces' : 'parts.open-pieces', {
              name,
              count: row.partIds.length,
            })}
            title={speech.t(open ? 'parts.fewer' : 'parts.each', { count: row.partIds.length })}
            onClick={(event) => {
              event.stopPropagation();
              props.onOpen(row, !open);
            }}
          >
            <Icon name={open ? 'up' : 'down'} size={14} />
          </button>
        )}
      </td>
      <td role="gridcell" className="number mono">
        {row.level === 3 ? '' : row.partIds.length}
      </td>
      <td role="gridcell" className="number mono cell-mass">
        {speech.number(row.mass_kg, 'mass')}
        {row.level === 2 && row.partIds.length > 1 && (
          <span className="row-note">
            {speech.t('parts.each-mass', { mass: speech.number(row.each_kg, 'mass') })}
          </span>
        )}
        <span className="row-tools">
          <Visibility partIds={row.partIds} name={name} compact untabbed />
        </span>
      </td>
    </tr>
  );
});
