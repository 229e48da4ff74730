/**
 * What a study moves on the stage, on top of every other pose: drum and frame shaken as computed (slowed down and
 * exaggerated), or the rear bent at the joint. Nothing of it stays once the study is closed.
 */
import { Quaternion, Vector3 } from 'three';
import { type Machine, partsOfRef } from '../../../core/machine';
import type { StudyStage } from '../../../store';
import { SHOWN_EXCITER_HZ } from './spin';

export interface StudyMotion {
  /** Moves on; `changed`: poses differ from the last frame; `moving`: another frame is wanted. */
  advance(
    dt_s: number,
    stage: StudyStage | null,
    still: boolean,
  ): { readonly changed: boolean; readonly moving: boolean };
  /** Moves a part's place and turn; returns false where the part is left out of the picture. */
  carry(part: number, place: Vector3, turn: Quaternion): boolean;
  readonly active: boolean;
}

const UP = new Vector3(0, 1, 0);
const ALONG = new Vector3(0, 0, 1);
const DEGREE = Math.PI / 180;

export function studyMotion(machine: Machine): StudyMotion {
  const { parts, articulation } = machine;
  const knuckle = new Set(articulation?.knuckle.flatMap((ref) => partsOfRef(machine, ref)));
  const leftOut = new Set(articulation?.left_out.flatMap((ref) => partsOfRef(machine, ref)));
  const steeringPin = new Vector3(...(articulation?.steering_pin_m ?? [0, 0, 0]));
  const oscillationPin = new Vector3(...(articulation?.oscillation_pin_m ?? [0, 0, 0]));
  const steering = new Quaternion();
  const oscillation = new Quaternion();
  let stage: StudyStage | null = null;
  let turns = 0;
  let drum_m = 0;
  let frame_m = 0;

  const about = (pin: Vector3, by: Quaternion, place: Vector3, turn: Quaternion): void => {
    place.sub(pin).applyQuaternion(by).add(pin);
    turn.premultiply(by);
  };

  return {
    get active() {
      return stage !== null && stage.kind !== 'sides';
    },
    advance(dt_s, next, still) {
      const changed =
        next !== stage && (next?.kind !== 'sides' || stage?.kind === 'shake' || stage?.kind === 'joint');
      stage = next;
      if (stage?.kind === 'joint') {
        steering.setFromAxisAngle(UP, stage.steering_deg * DEGREE);
        oscillation.setFromAxisAngle(ALONG, stage.oscillation_deg * DEGREE);
      }
      if (stage?.kind !== 'shake') return { changed, moving: false };
      if (still) {
        drum_m = frame_m = 0;
        return { changed, moving: false };
      }
      turns += SHOWN_EXCITER_HZ * dt_s;
      drum_m = sampleAt(stage.drum_m, turns * stage.samples_a_turn);
      frame_m = sampleAt(stage.frame_m, turns * stage.samples_a_turn);
      return { changed: true, moving: true };
    },
    carry(i, place, turn) {
      const part = parts[i]!;
      if (stage?.kind === 'shake') {
        // an isolator's middle moves half with either side
        if (part.side === 'vibrating') place.y += drum_m;
        else if (part.side === 'isolator') place.y += (drum_m + frame_m) / 2;
        else if (part.movesWith !== 'rear-frame') place.y += frame_m;
      }
      if (stage?.kind !== 'joint') return true;
      if (leftOut.has(part.id)) return false;
      if (part.movesWith !== 'rear-frame') return true;
      if (!knuckle.has(part.id)) about(oscillationPin, oscillation, place, turn);
      about(steeringPin, steering, place, turn);
      return true;
    },
  };
}

/** Sample at a running index, linear between samples, round and round. */
function sampleAt(samples: readonly number[], index: number): number {
  const n = samples.length;
  if (n === 0) return 0;
  const low = Math.floor(index);
  const share = index - low;
  const a = samples[low % n] ?? 0;
  const b = samples[(low + 1) % n] ?? 0;
  return a + share * (b - a);
}
