/** What is held now with its force, and what is off (or on) so far, in order. */
import type { Machine } from '../../../core/machine';
import type { PracticeRun } from '../../../store';
import { useSpeech } from '../../bind';
import { inSentence, unitName } from '../common/names';
import { namesText } from './practice-words';

export function HeldAndGone({ run, machine }: { readonly run: PracticeRun; readonly machine: Machine }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const apart = run.task.mode === 'take-apart';
  // The last word on each support holds: a later step may ask more of the same crib.
  const held = new Map(
    run.made
      .flatMap(({ legal }) => legal.before)
      .flatMap((step) => step.supports)
      .map((support) => [`${support.kind} ${support.what}`, support]),
  );
  return (
    <>
      <section aria-labelledby="practice-held">
        <h3 id="practice-held">{t('practice.held')}</h3>
        {held.size === 0 ? (
          <p className="faint small">{t('practice.held-none')}</p>
        ) : (
          <ul className="practice-plain">
            {[...held].map(([key, support]) => (
              <li key={key}>
                {t(`support.${support.kind}`, { what: inSentence(unitName(speech, machine, support.what)) })}{' '}
                {support.force_N > 0 && (
                  <span className="mono">{quantity(support.force_N, 'force-large')}</span>
                )}
              </li>
            ))}
          </ul>
        )}
      </section>
      <section aria-labelledby="practice-gone">
        <h3 id="practice-gone">{t(apart ? 'practice.gone-off' : 'practice.gone-on')}</h3>
        {run.made.length === 0 ? (
          <p className="faint small">{t('practice.gone-none')}</p>
        ) : (
          <ol className="practice-numbered">
            {run.made.map(({ legal }, i) => (
              <li key={i}>{namesText(speech, machine, run.bench, legal.move.bodies)}</li>
            ))}
          </ol>
        )}
      </section>
    </>
  );
}
