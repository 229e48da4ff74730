/**
 * The teardown strip. Its keys while the focus is inside: Right and Left a step on and back, Home assembled,
 * End all apart, Space plays and pauses.
 */
import type { KeyboardEvent } from 'react';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { StepCard } from './StepCard';
import { StepList } from './StepList';
import { Transport } from './Transport';
import './teardown.css';

export function TeardownStrip({ tall = false }: { readonly tall?: boolean }) {
  const { t } = useSpeech();
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const { open, step, playing, reverse } = useApp((s) => s.teardown);
  const steps = document?.teardown.steps ?? [];
  const onKey = (event: KeyboardEvent<HTMLElement>): void => {
    const target = event.target as HTMLElement;
    // Sliders and choices keep their own keys; Space on a button presses it.
    if (target.closest('input') !== null || event.altKey || event.ctrlKey || event.metaKey) return;
    const keys: Readonly<Record<string, () => void>> = {
      ArrowRight: () => commands.goToStep(step + 1, { playing: false }),
      ArrowLeft: () => commands.goToStep(step - 1, { playing: false }),
      Home: () => commands.goToStep(-1, { playing: false }),
      End: () => commands.goToStep(steps.length - 1, { playing: false }),
      ...(target.closest('button') === null ? { ' ': () => commands.setPlaying(!playing, reverse) } : {}),
    };
    const act = keys[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };
  const shown = open || tall;
  return (
    <section
      className={tall ? 'teardown tall' : 'teardown'}
      aria-label={t('teardown.title')}
      onKeyDown={onKey}
    >
      <h2 className="visually-hidden">{t('teardown.title')}</h2>
      <div className="teardown-bar">
        <button
          type="button"
          className="teardown-toggle button plain"
          aria-expanded={shown}
          onClick={() => commands.openTeardown(!open)}
        >
          <Icon name="steps" />
          <span>{t('teardown.title')}</span>
          <span className="faint mono small">{t('teardown.count', { steps: steps.length })}</span>
          {!tall && <Icon name={open ? 'down' : 'up'} size={16} />}
        </button>
        <Transport />
      </div>
      {shown && (
        <div className="teardown-open" tabIndex={0} role="group" aria-label={t('teardown.keys')}>
          <StepList />
          <StepCard step={steps[step] ?? null} />
        </div>
      )}
    </section>
  );
}
