/** The numbered steps: a film strip along the bottom, a list on a phone. */
import { useEffect, useRef } from 'react';
import { useApp, useCommands, useSpeech } from '../../bind';
import { ItemBalloon } from '../common/ItemBalloon';
import { alikeCount, stepItem, stepTitle } from './step-words';

export function StepList() {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const current = useApp((s) => s.teardown.step);
  const list = useRef<HTMLOListElement>(null);
  useEffect(() => {
    const row = list.current?.querySelector<HTMLElement>('[aria-current="step"]');
    const box = list.current;
    if (row == null || box === null) return;
    // Moved by hand: scrollIntoView would also scroll the page.
    box.scrollTo?.({
      left: row.offsetLeft - box.offsetLeft - (box.clientWidth - row.offsetWidth) / 2,
      top: row.offsetTop - box.offsetTop - (box.clientHeight - row.offsetHeight) / 2,
    });
  }, [current]);
  if (document === null) return null;
  const { machine, teardown } = document;
  return (
    <ol className="step-list" ref={list} aria-label={t('teardown.steps')} tabIndex={-1}>
      {teardown.steps.map((step) => {
        const count = alikeCount(machine, step);
        const item = stepItem(machine, step);
        const state = step.index === current ? 'now' : step.index < current ? 'done' : 'ahead';
        return (
          <li key={step.index} className={state}>
            <button
              type="button"
              aria-current={state === 'now' ? 'step' : undefined}
              onClick={() => commands.goToStep(step.index, { playing: false })}
            >
              <span className="step-number mono">{step.index + 1}</span>
              <ItemBalloon item={item ?? '·'} strong={state === 'now'} />
              <span className="step-name">
                {stepTitle(speech, machine, step)}
                {count > 1 && <span className="faint"> × {count}</span>}
              </span>
              {step.cautions.length > 0 && (
                <span className="step-alert" title={t('teardown.has-caution')}>
                  !<span className="visually-hidden">{t('teardown.has-caution')}</span>
                </span>
              )}
            </button>
          </li>
        );
      })}
    </ol>
  );
}
