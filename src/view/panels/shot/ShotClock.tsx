/**
 * Moves the shot's playhead while it plays, with or without a stage, and turns the exciter on the stage with it when the
 * eye stands still in the room. With reduced motion the picture goes on in stills, two a second.
 */
import { useEffect } from 'react';
import { onFrameRequest, playShot, requestFrame, shotTransient, transient } from '../../../store';
import { motionReduced, useAppStore, useApp, useCommands } from '../../bind';

const STILL_S = 0.5;

export function ShotClock() {
  const store = useAppStore();
  const commands = useCommands();
  const running = useApp((s) => s.shot.open && s.shot.playing);
  const open = useApp((s) => s.shot.open);

  useEffect(() => {
    if (!running) return;
    let last = performance.now();
    let due = 0;
    let frame = 0;
    const tick = (now: number): void => {
      frame = requestAnimationFrame(tick);
      const { shot, settings } = store.getState();
      // Stopped since the last frame; React is told later than the store.
      if (!shot.playing) return;
      // A page that was out of sight does not jump.
      due += Math.min(0.25, (now - last) / 1000);
      last = now;
      if (due < (motionReduced(settings.motion) ? STILL_S : 0)) return;
      const ended = playShot(due, shot.slow);
      due = 0;
      if (ended) commands.playShot(false);
    };
    frame = requestAnimationFrame(tick);
    return () => cancelAnimationFrame(frame);
  }, [running, store, commands]);

  useEffect(() => {
    if (!open) return;
    const turn = (): void => {
      const angle = store.getState().shot.eye === 'room' ? shotTransient.angle_rad : 0;
      if (transient.exciterAngle_rad !== angle) transient.exciterAngle_rad = angle;
    };
    turn();
    requestFrame();
    return onFrameRequest(turn);
  }, [open, store]);
  return null;
}
