/** Reading a step aloud, where the browser can. */
import { useCallback, useEffect, useState } from 'react';

export interface Reader {
  readonly can: boolean;
  readonly reading: boolean;
  start(text: string, language: string): void;
  stop(): void;
}

const synthesis = (): SpeechSynthesis | null =>
  typeof window !== 'undefined' && 'speechSynthesis' in window ? window.speechSynthesis : null;

/** @param about what is read; when it changes, reading stops */
export function useReader(about: string): Reader {
  const [reading, setReading] = useState(false);
  const stop = useCallback(() => {
    synthesis()?.cancel();
    setReading(false);
  }, []);
  useEffect(() => stop, [about, stop]);
  const start = useCallback((text: string, language: string) => {
    const speech = synthesis();
    if (speech === null) return;
    speech.cancel();
    const utterance = new SpeechSynthesisUtterance(text);
    utterance.lang = language;
    utterance.onend = () => setReading(false);
    utterance.onerror = () => setReading(false);
    setReading(true);
    speech.speak(utterance);
  }, []);
  return { can: synthesis() !== null, reading, start, stop };
}
