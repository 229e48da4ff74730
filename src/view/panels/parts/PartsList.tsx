/**
 * The parts list: what is on the drawing, with item numbers, counts and masses; the keyboard's twin of the stage.
 * Arrows move, Right and Left open and close, Enter selects and frames, Space hides or shows, G ghosts, I isolates.
 */
import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { findPart } from '../../../core/machine';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { kindName } from '../common/names';
import { ListRow } from './ListRow';
import { partRows, type Row } from './rows';
import { SelectionBar } from './SelectionBar';
import './parts.css';

const NONE: ReadonlySet<string> = new Set();

const flipped = (set: ReadonlySet<string>, key: string): ReadonlySet<string> => {
  const next = new Set(set);
  if (!next.delete(key)) next.add(key);
  return next;
};

export function PartsList() {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const search = useApp((s) => s.search);
  const showContext = useApp((s) => s.showContext);
  const optionsOn = useApp((s) => s.optionsOn);
  const selected = useApp((s) => s.selectedPart);
  const [closedFamilies, setClosedFamilies] = useState(NONE);
  const [openKinds, setOpenKinds] = useState(NONE);
  const [current, setCurrent] = useState('');
  const grid = useRef<HTMLTableElement>(null);

  const list = useMemo(
    () =>
      document === null
        ? { rows: [], kinds: 0, parts: 0, mass_kg: 0 }
        : partRows(document, {
            showContext,
            optionsOn,
            search,
            closedFamilies,
            openKinds,
            nameOf: (kind) => kindName(speech, document.machine, kind),
          }),
    [document, showContext, optionsOn, search, closedFamilies, openKinds, speech],
  );
  const { rows } = list;
  const selectedKind =
    document === null || selected === null ? undefined : findPart(document.machine, selected)?.kind;
  const isSelected = useCallback(
    (row: Row): boolean =>
      row.level === 3 ? row.partId === selected : row.level === 2 && row.kind === selectedKind && !row.open,
    [selected, selectedKind],
  );

  // A part selected on the stage is opened up to here, and becomes the row that Tab leads to.
  const [followed, setFollowed] = useState(selected);
  if (selected !== followed) {
    setFollowed(selected);
    const family = selectedKind === undefined ? undefined : document?.machine.kinds[selectedKind]?.family;
    if (family !== undefined && selectedKind !== undefined) {
      if (closedFamilies.has(family)) setClosedFamilies(flipped(closedFamilies, family));
      setCurrent(openKinds.has(selectedKind) ? `part:${selected}` : `kind:${selectedKind}`);
    }
  }
  useEffect(() => {
    grid.current
      ?.querySelector<HTMLElement>('[aria-selected="true"]')
      ?.scrollIntoView?.({ block: 'nearest' });
  }, [selected]);

  const tabStop = rows.some((row) => row.key === current) ? current : (rows[0]?.key ?? '');

  const setOpen = (row: Row, open: boolean): void => {
    if (row.level === 1 && row.open !== open) setClosedFamilies((closed) => flipped(closed, row.family));
    if (row.level === 2 && row.open !== open && row.partIds.length > 1)
      setOpenKinds((kinds) => flipped(kinds, row.kind));
  };
  const choose = (row: Row): void => {
    setCurrent(row.key);
    if (row.level === 1) setOpen(row, !row.open);
    else commands.select(row.partIds[0]!);
  };
  const moveTo = (row: Row | undefined): void => {
    if (row === undefined) return;
    setCurrent(row.key);
    const lines = grid.current?.querySelectorAll<HTMLElement>('[data-key]') ?? [];
    [...lines].find((line) => line.dataset['key'] === row.key)?.focus();
  };
  const onKey = (event: KeyboardEvent<HTMLTableElement>): void => {
    const key = (event.target as HTMLElement).closest<HTMLElement>('[data-key]')?.dataset['key'];
    const at = rows.findIndex((row) => row.key === key);
    const row = rows[at];
    if (row === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.target instanceof HTMLButtonElement && (event.key === 'Enter' || event.key === ' ')) return;
    const parent = (): Row | undefined => rows.slice(0, at).findLast((r) => r.level < row.level);
    const keys: Readonly<Record<string, () => void>> = {
      ArrowDown: () => moveTo(rows[at + 1]),
      ArrowUp: () => moveTo(rows[at - 1]),
      Home: () => moveTo(rows[0]),
      End: () => moveTo(rows.at(-1)),
      ArrowRight: () => (row.level !== 3 && !row.open ? setOpen(row, true) : moveTo(rows[at + 1])),
      ArrowLeft: () => (row.level !== 3 && row.open ? setOpen(row, false) : moveTo(parent())),
      Enter: () => {
        choose(row);
        if (row.level !== 1) commands.lookAt('fit', row.partIds[0]!);
      },
      ' ': () => commands.hide(row.partIds),
      g: () => commands.ghost(row.partIds),
      i: () => commands.isolate(row.partIds),
    };
    const act = keys[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };

  return (
    <section className="parts" aria-labelledby="parts-title">
      <header className="parts-head">
        <h2 id="parts-title">{t('parts.title')}</h2>
        <div className="parts-search">
          <Icon name="search" />
          <input
            type="search"
            value={search}
            placeholder={t('parts.search-hint')}
            aria-label={t('parts.search')}
            onChange={(event) => commands.setSearch(event.currentTarget.value)}
            onKeyDown={(event) => {
              if (event.key === 'Escape' && search !== '') {
                event.stopPropagation();
                commands.setSearch('');
              }
            }}
          />
        </div>
      </header>
      <div className="parts-scroll">
        <table
          ref={grid}
          role="treegrid"
          aria-label={t('parts.title')}
          aria-describedby="parts-keys"
          aria-multiselectable="false"
          onKeyDown={onKey}
        >
          <thead>
            <tr role="row">
              <th role="columnheader" scope="col">
                {t('parts.item')}
              </th>
              <th role="columnheader" scope="col">
                {t('parts.name')}
              </th>
              <th role="columnheader" scope="col" className="number">
                {t('parts.count')}
              </th>
              <th role="columnheader" scope="col" className="number">
                {speech.symbol('mass')}
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <ListRow
                key={row.key}
                row={row}
                selected={isSelected(row)}
                tabStop={row.key === tabStop}
                onChoose={choose}
                onOpen={setOpen}
                onFit={(r) => commands.lookAt('fit', r.partIds[0]!)}
              />
            ))}
          </tbody>
        </table>
        {document === null && <p className="parts-empty faint">{t('parts.waiting')}</p>}
        {document !== null && rows.length === 0 && (
          <div className="parts-empty">
            <p>{t('parts.none-found', { search })}</p>
            <button type="button" className="button" onClick={() => commands.setSearch('')}>
              {t('parts.clear-search')}
            </button>
          </div>
        )}
      </div>
      <p id="parts-keys" className="visually-hidden">
        {t('parts.keys')}
      </p>
      <SelectionBar />
      <p className="parts-total">
        <span>{t('parts.total', { kinds: list.kinds, parts: list.parts })}</span>
        <span className="mono">{quantity(list.mass_kg, 'mass', 4)}</span>
      </p>
    </section>
  );
}
