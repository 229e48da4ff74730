/** Before a legal move: cautions, and what is held or drained with its force, each confirmed by hand. */
import { useEffect, useRef } from 'react';
import type { Machine } from '../../../core/machine';
import {
  type Confirmation,
  confirmations,
  createPracticeCommands,
  type PracticePending,
  type PracticeRun,
} from '../../../store';
import { type Speech, usePlaceCommands, useSpeech } from '../../bind';
import { inSentence, sayAbout, unitName } from '../common/names';
import { Signal } from '../common/Signal';
import { signalOf } from '../teardown/cautions';
import { namesText } from './practice-words';

interface Props {
  readonly run: PracticeRun;
  readonly machine: Machine;
  readonly pending: PracticePending;
}

export function ConfirmCard({ run, machine, pending }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = usePlaceCommands(createPracticeCommands);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    // All of the card that fits, not only its heading.
    heading.current?.parentElement?.scrollIntoView?.({ block: 'start' });
  }, [pending.unitId]);
  const desist = (): void => {
    commands.desist();
    // The card is gone: the part is still in hand.
    requestAnimationFrame(() => window.document.querySelector<HTMLElement>('.practice-try')?.focus());
  };
  const { legal, confirmed } = pending;
  const points = confirmations(legal, run.made);
  const all = points.every((_, point) => confirmed.includes(point));
  const apart = run.task.mode === 'take-apart';
  return (
    <section className="practice-confirm" aria-labelledby="practice-before" data-pending={pending.unitId}>
      <h3 id="practice-before" tabIndex={-1} ref={heading}>
        {t('practice.before')}: {inSentence(namesText(speech, machine, run.bench, legal.move.bodies))}
      </h3>
      <p className="small">{t('practice.before-intro')}</p>
      <ul>
        {points.map((point, i) => (
          <li key={i}>
            {point.kind === 'caution' && (
              <Signal word={signalOf(point.caution)}>
                <p>{t(`caution.${point.caution}`)}</p>
              </Signal>
            )}
            <label className="practice-point">
              <input
                type="checkbox"
                checked={confirmed.includes(i)}
                aria-label={
                  point.kind === 'caution'
                    ? `${t('practice.before-caution')}: ${t(`caution.${point.caution}`)}`
                    : undefined
                }
                onChange={(event) => commands.confirm(i, event.currentTarget.checked)}
              />
              <span>{pointText(speech, machine, point)}</span>
            </label>
          </li>
        ))}
      </ul>
      <div className="buttons">
        <button type="button" className="button act" disabled={!all} onClick={() => commands.proceed()}>
          {t(apart ? 'practice.proceed-off' : 'practice.proceed-on')}
        </button>
        <button type="button" className="button" onClick={desist}>
          {t('practice.desist')}
        </button>
      </div>
    </section>
  );
}

function pointText(speech: Speech, machine: Machine, point: Confirmation) {
  const { t, quantity } = speech;
  switch (point.kind) {
    case 'caution':
      return t('practice.before-caution');
    case 'drain':
      return t('step.drain', { what: inSentence(unitName(speech, machine, point.step.unitIds[0] ?? '')) });
    case 'support': {
      const { support } = point;
      return (
        <>
          {t(`support.${support.kind}`, { what: inSentence(unitName(speech, machine, support.what)) })}
          {support.force_N > 0 && (
            <>
              {' '}
              <b className="mono" data-force={support.kind}>
                {quantity(support.force_N, 'force-large')}
              </b>
            </>
          )}
          <span className="small faint practice-point-why">{sayAbout(speech, machine, support.why)}</span>
        </>
      );
    }
  }
}
