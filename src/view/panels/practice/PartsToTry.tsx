/** The list that equals the stage: everything that is still to be tried, searchable, by where it is. */
import { useMemo, useState } from 'react';
import { tryUnit } from '../../../core/assembly';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type PracticeRun } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { ItemBalloon } from '../common/ItemBalloon';
import { inSentence } from '../common/names';
import { bodyName } from './practice-words';
import { type PracticeRow, rowGroups } from './practice-rows';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  readonly hand: string | null;
}

export function PartsToTry({ run, machine, hand }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const [search, setSearch] = useState('');
  const { bench, state } = run;
  const { moves } = state;
  // What was sought has gone with the move: all that is left is listed again.
  const [listed, setListed] = useState(moves);
  if (listed !== moves) {
    setListed(moves);
    setSearch('');
  }
  const groups = useMemo(
    () => rowGroups(speech, machine, bench, state, search),
    // what is where follows from the moves alone
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [speech, machine, bench, moves, search],
  );
  /** Of several alike the one that can go now, if any can: the row stands for them all. */
  const choose = (row: PracticeRow, byKey: boolean): void => {
    const free =
      row.unitIds.length > 1
        ? row.unitIds.find((id) => tryUnit(bench, state, id).outcome.kind === 'legal')
        : undefined;
    commands.take(free ?? row.unitIds[0]!);
    // By the keyboard the try is next: Enter twice picks a part and takes it off.
    if (byKey)
      requestAnimationFrame(() => window.document.querySelector<HTMLElement>('.practice-try')?.focus());
  };
  return (
    <section className="practice-list" aria-labelledby="practice-list">
      <h3 id="practice-list">{t('practice.list')}</h3>
      <p className="small faint">{t('practice.list-note')}</p>
      <div className="parts-search">
        <Icon name="search" />
        <input
          type="search"
          aria-label={t('practice.search')}
          placeholder={t('practice.search')}
          value={search}
          onChange={(event) => setSearch(event.currentTarget.value)}
        />
      </div>
      {groups.length === 0 && <p className="faint">{t('practice.list-none')}</p>}
      {groups.map(({ place, rows }) => (
        <div key={place ?? ''} role="group" aria-label={placeText(place)}>
          <p className="label practice-place">{placeText(place)}</p>
          <ul>
            {rows.map((row) => (
              <li key={row.key}>
                <button
                  type="button"
                  className="practice-row"
                  data-unit={row.unitIds[0]}
                  aria-pressed={hand !== null && row.unitIds.includes(hand)}
                  onClick={(event) => choose(row, event.detail === 0)}
                >
                  <ItemBalloon item={row.item ?? '·'} />
                  <span>
                    {row.unitIds.length > 1
                      ? t('practice.row', { name: row.name, count: row.unitIds.length })
                      : row.name}
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );

  function placeText(place: string | null): string {
    if (place === null) return t('practice.place.machine');
    if (place === 'laid') return t('practice.place.laid');
    return t('practice.place.bench', { part: inSentence(bodyName(speech, machine, bench, place)) });
  }
}
