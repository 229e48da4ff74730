/** Setting up a session: what the class is, which questions are drawn, and the drawn list. */
import { useId, useState } from 'react';
import { type ClassSettings, type HostPage, MOST_SEATS, type SheetWish } from '../../../../core/classroom';
import { type Difficulty, ITEM_KINDS } from '../../../../core/quiz';
import { createClassCommands } from '../../../../store';
import { usePlaceCommands, useSpeech } from '../../../bind';
import { RangeField } from '../../common/RangeField';
import { Segmented } from '../../common/Segmented';
import { DraftList } from './DraftList';

const COUNTS = [5, 10, 15, 20, 30] as const;
const DIFFICULTIES: readonly Difficulty[] = [1, 2, 3];

export function HostSetup({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const { stock, view, draft } = page;
  const held = stock.topics.reduce((sum, each) => sum + each.class, 0);
  const [settings, setSettings] = useState<ClassSettings>(view.settings);
  const [wish, setWish] = useState<SheetWish>(() => ({
    topics: [],
    banks: held > 0 ? 'class' : 'practice',
    kinds: [],
    difficulties: [],
    generated: held > 0 ? 0 : 0.5,
    count: 10,
  }));
  return (
    <>
      <h2>{t(view.phase === 'ended' ? 'class.setup-next' : 'class.setup')}</h2>
      <SettingsFields settings={settings} onChange={setSettings} />
      <WishFields page={page} wish={wish} onChange={setWish} />
      <div className="buttons">
        <button
          type="button"
          className={draft === null ? 'button act' : 'button'}
          onClick={() => room.order({ type: 'draw', wish })}
        >
          {t(draft === null ? 'class.draw' : 'class.draw-again')}
        </button>
      </div>
      {draft !== null && (
        <>
          <DraftList draft={draft} />
          <div className="buttons">
            <button
              type="button"
              className="button act"
              disabled={draft.length === 0}
              onClick={() => {
                room.order({ type: 'settings', settings });
                room.order({ type: 'begin' });
              }}
            >
              {t('class.begin')}
            </button>
          </div>
        </>
      )}
    </>
  );
}

interface SettingsProps {
  readonly settings: ClassSettings;
  readonly onChange: (settings: ClassSettings) => void;
}

function SettingsFields({ settings, onChange }: SettingsProps) {
  const { t } = useSpeech();
  const id = useId();
  return (
    <section aria-labelledby={`${id}-class`}>
      <h3 id={`${id}-class`}>{t('class.the-class')}</h3>
      <div>
        <label htmlFor={`${id}-title`} className="field-name">
          {t('class.session-title')}
        </label>
        <input
          id={`${id}-title`}
          className="text-field"
          value={settings.title}
          maxLength={80}
          onChange={(event) => onChange({ ...settings, title: event.currentTarget.value })}
        />
      </div>
      <Segmented
        fill
        legend={t('class.mode')}
        value={settings.mode}
        choices={(['solo', 'team'] as const).map((value) => ({ value, label: t(`class.mode.${value}`) }))}
        onChange={(mode) => onChange({ ...settings, mode })}
      />
      <div>
        <label htmlFor={`${id}-seats`} className="field-name">
          {t(settings.mode === 'team' ? 'class.teams' : 'class.seats')}
        </label>
        <input
          id={`${id}-seats`}
          className="text-field mono"
          type="number"
          min={1}
          max={MOST_SEATS}
          value={settings.seats}
          onChange={(event) => {
            const seats = event.currentTarget.valueAsNumber;
            if (Number.isInteger(seats) && seats >= 1 && seats <= MOST_SEATS)
              onChange({ ...settings, seats });
          }}
        />
      </div>
      <label className="check">
        <input
          type="checkbox"
          checked={settings.names}
          onChange={(event) => onChange({ ...settings, names: event.currentTarget.checked })}
        />
        <span>{t('class.names')}</span>
      </label>
    </section>
  );
}

interface WishProps {
  readonly page: HostPage;
  readonly wish: SheetWish;
  readonly onChange: (wish: SheetWish) => void;
}

const toggled = <T,>(list: readonly T[], each: T): T[] =>
  list.includes(each) ? list.filter((other) => other !== each) : [...list, each];

function WishFields({ page: { stock }, wish, onChange }: WishProps) {
  const { t } = useSpeech();
  const id = useId();
  const held = stock.topics.reduce((sum, each) => sum + each.class, 0);
  return (
    <section aria-labelledby={`${id}-questions`}>
      <h3 id={`${id}-questions`}>{t('class.questions')}</h3>
      <Segmented
        fill
        legend={t('class.how-many')}
        value={String(wish.count)}
        choices={COUNTS.map((count) => ({ value: String(count), label: count }))}
        onChange={(value) => onChange({ ...wish, count: Number(value) })}
      />
      {stock.generates && (
        <RangeField
          label={t('class.generated')}
          value={wish.generated}
          min={0}
          max={1}
          step={0.1}
          text={t('class.percent', { value: Math.round(100 * wish.generated) })}
          onChange={(generated) => onChange({ ...wish, generated })}
        />
      )}
      <Segmented
        fill
        legend={t('class.banks')}
        value={wish.banks}
        choices={(['class', 'practice', 'both'] as const).map((value) => ({
          value,
          label: t(`class.banks.${value}`),
        }))}
        onChange={(banks) => onChange({ ...wish, banks })}
      />
      {wish.banks !== 'class' && <p className="class-notice small">{t('class.practice-known')}</p>}
      {held === 0 && <p className="small faint">{t('class.no-class-bank')}</p>}
      <details>
        <summary>{t('class.narrow')}</summary>
        <Checks
          legend={t('quiz.topics')}
          all={stock.topics.map(({ id: topic, title, class: own, practice }) => ({
            id: topic,
            label: t('class.topic-count', { title, own, practice }),
          }))}
          chosen={wish.topics}
          onToggle={(topic) => onChange({ ...wish, topics: toggled(wish.topics, topic) })}
        />
        <Checks
          legend={t('class.kinds')}
          all={ITEM_KINDS.map((kind) => ({ id: kind, label: t(`item-kind.${kind}`) }))}
          chosen={wish.kinds}
          onToggle={(kind) => onChange({ ...wish, kinds: toggled(wish.kinds, kind) })}
        />
        <Checks
          legend={t('class.difficulty')}
          all={DIFFICULTIES.map((each) => ({ id: each, label: t(`class.difficulty.${each}`) }))}
          chosen={wish.difficulties as readonly Difficulty[]}
          onToggle={(each) => onChange({ ...wish, difficulties: toggled(wish.difficulties, each) })}
        />
      </details>
    </section>
  );
}

/** None chosen stands for all. */
function Checks<T extends string | number>(props: {
  readonly legend: string;
  readonly all: readonly { readonly id: T; readonly label: string }[];
  readonly chosen: readonly T[];
  readonly onToggle: (id: T) => void;
}) {
  const { t } = useSpeech();
  return (
    <fieldset className="class-checks">
      <legend className="field-name">
        {props.legend} <span className="faint">({t('class.none-is-all')})</span>
      </legend>
      {props.all.map(({ id, label }) => (
        <label key={id} className="check">
          <input type="checkbox" checked={props.chosen.includes(id)} onChange={() => props.onToggle(id)} />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
