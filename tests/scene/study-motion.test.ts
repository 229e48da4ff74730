import { Quaternion, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { studyMotion } from '../../src/view/scene/motion/study-motion';
import { machine } from '../models/alder-one';

const place = (motion: ReturnType<typeof studyMotion>, id: string) => {
  const i = machine.parts.findIndex((part) => part.id === id);
  const at = new Vector3(...machine.parts[i]!.pose.position_m);
  const turn = new Quaternion(...machine.parts[i]!.pose.rotation);
  return { stays: motion.carry(i, at, turn), at, turn };
};

describe('what a study moves on the stage', () => {
  it('shakes the drum, the frame as little as computed, an isolator half way, the rear not', () => {
    const motion = studyMotion(machine);
    const stage = {
      kind: 'shake',
      drum_m: [0.04, 0.04],
      frame_m: [0.002, 0.002],
      samples_a_turn: 2,
    } as const;
    expect(motion.advance(0.1, stage, false)).toEqual({ changed: true, moving: true });
    const rise = (id: string) => {
      const part = machine.parts.find((each) => each.id === id)!;
      return place(motion, id).at.y - part.pose.position_m[1];
    };
    expect(rise('shell')).toBeCloseTo(0.04, 12);
    expect(rise('side-plate-left')).toBeCloseTo(0.002, 12);
    expect(rise('isolator-left-1')).toBeCloseTo(0.021, 12);
    expect(rise('rear-frame')).toBe(0);
    // reduced motion: nothing moves
    motion.advance(0.1, stage, true);
    expect(rise('shell')).toBe(0);
  });

  it('bends at the pins: the axle turns about the steering pin, the drum stays, cylinders are left out', () => {
    const motion = studyMotion(machine);
    expect(motion.advance(0, { kind: 'joint', steering_deg: 90, oscillation_deg: 0 }, false).moving).toBe(
      false,
    );
    expect(place(motion, 'shell').at.toArray()).toEqual(
      machine.parts.find((part) => part.id === 'shell')!.pose.position_m,
    );
    const tyre = place(motion, 'tyre-left').at;
    // 1.65 m behind the pin becomes 1.65 m to the right of it
    expect(tyre.x).toBeCloseTo(1.65, 9);
    expect(tyre.z).toBeCloseTo(1.35 + 0.78, 9);
    expect(place(motion, 'steering-cylinder-left').stays).toBe(false);
    expect(place(motion, 'lock-bar').stays).toBe(false);
  });

  it('rolls the rear about the oscillation pin, but not the knuckle', () => {
    const motion = studyMotion(machine);
    motion.advance(0, { kind: 'joint', steering_deg: 0, oscillation_deg: 10 }, false);
    expect(place(motion, 'tyre-left').at.y).toBeCloseTo(-0.78 * Math.sin((10 * Math.PI) / 180), 9);
    const knuckle = machine.parts.find((part) => part.id === 'hitch-knuckle')!;
    expect(place(motion, 'hitch-knuckle').turn.toArray()).toEqual([...knuckle.pose.rotation]);
  });

  it('tints move nothing, and closing puts all back', () => {
    const motion = studyMotion(machine);
    motion.advance(0, { kind: 'sides' }, false);
    expect(motion.active).toBe(false);
    motion.advance(0, { kind: 'joint', steering_deg: 5, oscillation_deg: 0 }, false);
    expect(motion.advance(0, null, false)).toEqual({ changed: true, moving: false });
    expect(motion.active).toBe(false);
  });
});
