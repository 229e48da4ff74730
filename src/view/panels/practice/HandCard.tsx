/**
 * The unit in hand: its mass and how it is lifted, its tool, its cautions as far as they were confirmed before (others
 * are asked for before the move); and the try itself.
 */
import { useMemo } from 'react';
import type { Step } from '../../../core/assembly';
import type { Machine } from '../../../core/machine';
import { createPracticeCommands, type PracticeRun } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { ItemBalloon } from '../common/ItemBalloon';
import { Signal } from '../common/Signal';
import { bySeverity, signalOf } from '../teardown/cautions';
import { toolText } from '../teardown/step-words';
import { bodyName, itemOf } from './practice-words';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  /** Body in hand, by id. */
  readonly hand: string | null;
}

/** Above this a lift needs gear (common practice for one person). */
const HOIST_KG = 25;

export function HandCard({ run, machine, hand }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const { bench, task } = run;
  const step = useMemo((): Step | null => {
    if (hand === null) return null;
    // The last step that it is in: by itself, where it first leaves with others.
    const steps = bench.plan({ kind: 'all' }).steps;
    return (
      steps.findLast((s) => (s.kind === 'remove' || s.kind === 'bench') && s.unitIds.includes(hand)) ?? null
    );
  }, [bench, hand]);
  if (hand === null) return <p className="practice-hand-none faint">{t('practice.hand-none')}</p>;
  const body = bench.graph.bodies[bench.bodyOf(hand)]!;
  const apart = task.mode === 'take-apart';
  const item = itemOf(machine, bench, hand);
  const asked = new Set(run.made.flatMap(({ legal }) => legal.step.cautions));
  const cautions = bySeverity(step?.cautions ?? []).filter((caution) => asked.has(caution));
  return (
    <section className="practice-hand" aria-label={t('practice.hand')} data-hand={hand}>
      <div className="practice-hand-head">
        {item !== null && <ItemBalloon item={item} strong />}
        <h3>{bodyName(speech, machine, bench, hand)}</h3>
        <button type="button" className="button act practice-try" onClick={() => commands.tryUnit(hand)}>
          {t(apart ? 'practice.off' : 'practice.on')}
        </button>
      </div>
      <dl className="step-facts">
        <div>
          <dt>{t('practice.hand-mass')}</dt>
          <dd>
            <span className="mono">{quantity(body.mass_kg, 'mass', 3)}</span>
            {!body.fastener && (
              <span className="small">
                {', '}
                {t(body.mass_kg > HOIST_KG ? 'practice.hand-hoist' : 'practice.hand-person')}
              </span>
            )}
          </dd>
        </div>
        {step !== null && (
          <div>
            <dt>{t('practice.hand-tool')}</dt>
            <dd>
              {step.tools.length === 0
                ? t('tool.hand')
                : step.tools.map((tool) => toolText(speech, tool)).join(' · ')}
            </dd>
          </div>
        )}
      </dl>
      {cautions.map((caution) => (
        <Signal key={caution} word={signalOf(caution)}>
          <p>{t(`caution.${caution}`)}</p>
        </Signal>
      ))}
    </section>
  );
}
