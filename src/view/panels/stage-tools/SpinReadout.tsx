/** While the drum spins on the stage: how much slower than true, measured from what the stage really shows. */
import { useEffect, useState } from 'react';
import { transient } from '../../../store';
import { useApp, useSpeech } from '../../bind';

const EVERY_MS = 500;

export function SpinReadout() {
  const { t, number } = useSpeech();
  const direction = useApp((s) => s.exciter.direction);
  const true_Hz = useApp((s) => {
    const own = s.document?.machine.operation;
    return s.exciter.direction === 'high'
      ? (s.exciter.frequencyHigh_Hz ?? own?.frequency_high_Hz)
      : (s.exciter.frequencyLow_Hz ?? own?.frequency_low_Hz);
  });
  const [shown_Hz, setShown] = useState(0);
  useEffect(() => {
    let lastAngle = transient.exciterAngle_rad;
    let lastTime = performance.now();
    const timer = setInterval(() => {
      const now = performance.now();
      const turned = Math.abs(transient.exciterAngle_rad - lastAngle) / (2 * Math.PI);
      setShown((1000 * turned) / (now - lastTime));
      lastAngle = transient.exciterAngle_rad;
      lastTime = now;
    }, EVERY_MS);
    return () => clearInterval(timer);
  }, []);
  if (true_Hz === undefined || shown_Hz === 0) return null;
  return (
    <p className="spin-readout small">
      {t('stage-tools.slow', {
        direction: t(`exciter.${direction}`),
        factor: number(true_Hz / shown_Hz, 'plain', 2),
        frequency: number(true_Hz, 'frequency'),
      })}
    </p>
  );
}
