/** A strip over the stage on the first visit: one thing to do, then the next. It can be closed and found again in the settings. */
import { useState } from 'react';
import { addressOf } from '../../../store';
import { useApp, useAppStore, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { TOUR } from './steps';
import './tour.css';

export function FirstSteps() {
  const { t } = useSpeech();
  const commands = useCommands();
  const store = useAppStore();
  const shown = useApp((s) => s.settings.firstSteps && s.document !== null && s.route.place === 'bench');
  const [at, setAt] = useState(0);
  const step = TOUR[at];
  const done = useApp((s) => step !== undefined && step.done(s));
  // Whoever has done it already is led on at once.
  if (shown && done) setAt(at + 1);
  if (!shown) return null;
  const close = (): void => commands.change({ firstSteps: false });
  return (
    <section className="first-steps" aria-label={t('tour.title')}>
      <p className="mono" aria-hidden="true">
        {step === undefined ? '✓' : `${at + 1}/${TOUR.length}`}
      </p>
      <p role="status">{t(step === undefined ? 'tour.end' : `tour.${step.name}`)}</p>
      {step === undefined ? (
        <a className="button act" href={addressOf({ place: 'lessons', path: [] })} onClick={close}>
          {t('tour.end.act')}
        </a>
      ) : (
        <button type="button" className="button act" onClick={() => step.act(commands, store.getState())}>
          {t(`tour.${step.name}.act`)}
        </button>
      )}
      <button
        type="button"
        className="button plain icon"
        aria-label={t('tour.close')}
        title={t('tour.close')}
        onClick={close}
      >
        <Icon name="close" />
      </button>
    </section>
  );
}
