/** Choosing a task: take apart or put together, how far, with what help; and runs to go on with. */
import { type ReactNode, useEffect, useId, useMemo, useState } from 'react';
import { leastWalk, type PracticeBench, type PracticeGoal } from '../../../core/assembly';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, PRACTICE_AIDS } from '../../../store';
import { type Speech, useApp, usePlaceCommands, useSpeech } from '../../bind';
import { inSentence, unitName } from '../common/names';
import { Segmented } from '../common/Segmented';
import { KeptRuns } from './KeptRuns';
import { bodyName } from './practice-words';

const MODES = ['take-apart', 'put-together'] as const;

/** What blocks what, once it is there; null till then. */
function usePracticeBench(): PracticeBench | null {
  const { bench } = usePlaceCommands(createPracticeCommands);
  const document = useApp((s) => s.document);
  const [found, setFound] = useState<PracticeBench | null>(null);
  useEffect(() => {
    let wanted = true;
    void bench().then((each) => wanted && setFound(each));
    return () => {
      wanted = false;
    };
  }, [document, bench]);
  return found?.machine === document?.machine ? found : null;
}

/** The heaviest that turns with the exciter: as far as that is a whole side's work. */
function sideGoal(machine: Machine, bench: PracticeBench): string | null {
  const turning = bench.graph.bodies.filter((body, u) => {
    const part = machine.parts[body.parts[0] ?? -1];
    return !body.fixed && u !== bench.base && part?.movesWith === 'exciter';
  });
  return (
    turning.reduce<(typeof turning)[number] | null>(
      (best, each) => (best === null || each.mass_kg > best.mass_kg ? each : best),
      null,
    )?.id ?? null
  );
}

interface Option {
  readonly id: string;
  readonly name: string;
}

/** Every kind of thing that can be freed, one of those alike. */
function targets(speech: Speech, machine: Machine, bench: PracticeBench): readonly Option[] {
  const seen = new Set<string>();
  return bench.graph.bodies
    .flatMap((body, u): Option[] => {
      const entry = bench.entryOf[u]!;
      if (body.fixed || u === bench.base || seen.has(entry)) return [];
      seen.add(entry);
      return [{ id: body.id, name: bodyName(speech, machine, bench, body.id) }];
    })
    .sort((a, b) => a.name.localeCompare(b.name, speech.language));
}

export function TaskChooser({ machine }: { readonly machine: Machine }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const { mode, goal, aid } = useApp((s) => s.practice.task);
  const phase = useApp((s) => s.practice.phase);
  const lasting = useApp((s) => s.practice.lasting);
  const bench = usePracticeBench();
  const explode = useApp((s) => s.document?.explode);
  const side = useMemo(() => (bench === null ? null : sideGoal(machine, bench)), [machine, bench]);
  const options = useMemo(
    () => (bench === null ? [] : targets(speech, machine, bench)),
    [speech, machine, bench],
  );
  const unitId = goal.kind === 'unit' ? goal.unitId : null;
  // A part named by another machine's task is no goal here.
  const known = goal.kind === 'all' || bench === null || bench.bodyOf(goal.unitId) >= 0;
  const [one, setOne] = useState(unitId !== null && unitId !== side);
  const sideName = useMemo(() => {
    if (side === null || bench === null || explode === undefined) return '';
    const part = bench.graph.bodies[bench.bodyOf(side)]!.parts[0]!;
    return t('practice.goal.side', {
      side: t((explode.groupOffsets[3 * part] ?? 0) < 0 ? 'place.left' : 'place.right'),
      part: inSentence(unitName(speech, machine, side)),
    });
  }, [side, bench, explode, speech, machine, t]);
  const moves = (to: PracticeGoal): string =>
    bench === null ? '' : t('practice.goal.moves', { count: leastWalk(bench, to).moves.length });
  const choose = (to: PracticeGoal): void => {
    setOne(false);
    commands.choose({ goal: to });
  };
  const ready = known && (!one || (unitId !== null && options.some((option) => option.id === unitId)));
  return (
    <>
      <p>{t('practice.intro')}</p>
      <form
        className="practice-task"
        onSubmit={(event) => {
          event.preventDefault();
          if (ready) void commands.start();
        }}
      >
        <Segmented
          legend={t('practice.mode')}
          fill
          choices={MODES.map((value) => ({ value, label: t(`practice.mode.${value}`) }))}
          value={mode}
          onChange={(next) => commands.choose({ mode: next })}
        />
        <fieldset className="practice-goals">
          <legend className="field-name">{t(`practice.goal.${mode}`)}</legend>
          <Choice
            name="goal"
            checked={!one && goal.kind === 'all'}
            onChoose={() => choose({ kind: 'all' })}
            title={t('practice.goal.all')}
            note={moves({ kind: 'all' })}
          />
          {side !== null && (
            <Choice
              name="goal"
              checked={!one && unitId === side}
              onChoose={() => choose({ kind: 'unit', unitId: side })}
              title={sideName.charAt(0).toLocaleUpperCase() + sideName.slice(1)}
              note={moves({ kind: 'unit', unitId: side })}
            />
          )}
          {options.length > 0 && (
            <Choice name="goal" checked={one} onChoose={() => setOne(true)} title={t('practice.goal.one')} />
          )}
          {one && (
            <label className="practice-target">
              <span className="field-name">{t('practice.goal.part')}</span>
              <select
                value={unitId ?? ''}
                onChange={(event) =>
                  commands.choose({ goal: { kind: 'unit', unitId: event.currentTarget.value } })
                }
              >
                <option value="" disabled>
                  {t('practice.goal.choose')}
                </option>
                {options.map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
              {unitId !== null && known && (
                <span className="small faint">{moves({ kind: 'unit', unitId })}</span>
              )}
            </label>
          )}
        </fieldset>
        <fieldset className="practice-goals">
          <legend className="field-name">{t('practice.aid')}</legend>
          {PRACTICE_AIDS.map((each) => (
            <Choice
              key={each}
              name="aid"
              checked={each === aid}
              onChoose={() => commands.choose({ aid: each })}
              title={t(`practice.aid.${each}`)}
              note={t(`practice.aid.${each}.does`)}
            />
          ))}
        </fieldset>
        <button type="submit" className="button act" disabled={!ready}>
          {t('practice.start')}
        </button>
        {phase === 'failed' && <p role="alert">{t('practice.failed')}</p>}
      </form>
      <KeptRuns machine={machine} />
      {!lasting && <p className="small limit">{t('practice.not-kept')}</p>}
    </>
  );
}

interface ChoiceProps {
  readonly name: string;
  readonly checked: boolean;
  readonly onChoose: () => void;
  readonly title: ReactNode;
  readonly note?: string;
}

function Choice({ name, checked, onChoose, title, note }: ChoiceProps) {
  const id = useId();
  return (
    <label className="practice-choice">
      <input
        type="radio"
        name={`practice-${name}`}
        checked={checked}
        aria-describedby={note === undefined ? undefined : id}
        onChange={onChoose}
      />
      <span>
        <b>{title}</b>
        {note !== undefined && (
          <span className="small faint" id={id}>
            {note}
          </span>
        )}
      </span>
    </label>
  );
}
