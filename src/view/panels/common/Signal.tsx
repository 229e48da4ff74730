/**
 * A safety message: signal word in its colour with the safety alert mark, then the words. DANGER, WARNING and CAUTION
 * carry the alert mark; NOTICE (damage only, no injury) does not, as ANSI Z535.6 has it.
 */
import type { ReactNode } from 'react';
import { useSpeech } from '../../bind';

export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

export function Signal({ word, children }: { readonly word: SignalWord; readonly children: ReactNode }) {
  const { t } = useSpeech();
  return (
    <div className={`signal ${word}`} role="note">
      <p className="signal-word">
        {word !== 'notice' && (
          <svg width="18" height="16" viewBox="0 0 18 16" aria-hidden="true">
            <path d="M9 .8 17.4 15.2H.6Z" fill="currentColor" />
            <path d="M8 5.2h2l-.3 5H8.3Z M8.1 11.4h1.8v1.8H8.1Z" className="signal-mark" />
          </svg>
        )}
        <span>{t(`signal.${word}`)}</span>
      </p>
      <div className="signal-text">{children}</div>
    </div>
  );
}
