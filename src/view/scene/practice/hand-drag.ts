/**
 * A hand on a part in practice: it goes its way under the finger, gives only a little where it cannot go, and is let
 * go of. What comes of it is a try, as a click makes one. Fast values only; the store hears of grip and pull.
 */
import type { Vec3 } from '../../../core/kernel';
import { type AppStore, type Commands, type PracticeHold, requestFrame, transient } from '../../../store';
import type { StageLink } from '../stage-link';
import { type HandPath, handPath, straightPath } from './hand-path';
import { type HandView, handView, pulledTo, type ScreenWay, screenWay } from './screen-pull';

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface HandDrag {
  readonly active: boolean;
  /**
   * Takes hold of the part under the pointer, for a drag from `from` that has come to `now`; false where such a drag is
   * to turn the view.
   */
  take(partId: string, point: Vec3, from: Point, now: Point): boolean;
  move(now: Point, time_ms: number): void;
  /** Lets go; `cancelled`: nothing comes of it. */
  release(time_ms: number, cancelled: boolean): void;
}

/** A pull of this length is a try, CSS pixels: farther than a hand trembles. */
const PULL_PX = 28;
/** Of the way on which it comes clear, the share after which a part goes on by itself. */
const GOES_ON = 0.4;
/** Fast enough to go on by itself (or to be thrown back), pixels a millisecond, over at least so many pixels. */
const FLICK_PX_MS = 0.6;
const FLICK_PX = 12;
/** A hand that has not moved for so long rests. */
const RESTS_MS = 90;
/** What cannot go gives way by so much at most, pixels. */
const GIVES_PX = 8;
/** A drag within this of a part's way is meant for the part, cosine; any other turns the view. */
const ALONG = 0.5;
/** What fills this share of the stage is pulled only when it is in hand: a drag on it is likelier meant for the view. */
const LARGE = 0.35;

interface Held {
  readonly hold: PracticeHold;
  readonly path: HandPath;
  readonly view: HandView;
  readonly grabbed: Vec3;
  readonly way: ScreenWay;
  readonly from: Point;
  last: Point;
  last_ms: number;
  /** Where the hand is along the way: beyond its ends too. */
  at_m: number;
  /** Speed along the way, pixels a millisecond, smoothed. */
  speed: number;
  tried: boolean;
}

/** Whether a part is of the unit that is in hand in practice. */
export function isInHand(store: AppStore, partId: string | null): partId is string {
  const { selectedPart, practice } = store.getState();
  const run = practice.stage === null ? null : practice.run;
  if (run === null || partId === null || selectedPart === null) return false;
  const body = run.bench.bodyOf(partId);
  return body >= 0 && body === run.bench.bodyOf(selectedPart);
}

export function handDrag(store: AppStore, commands: Commands, link: StageLink): HandDrag {
  let held: Held | null = null;

  const isLarge = (part: number, view: HandView, at: Vec3): boolean => {
    const { table, width, height } = link;
    const radius_m = table === null ? 0 : table.kinds[table.kindOf[part]!]!.radius;
    return 2 * radius_m * view.perMetre(at) > LARGE * Math.min(width, height);
  };
  const attempt = (now: Held): void => {
    now.tried = true;
    commands.pull(now.hold.partId);
  };

  return {
    get active() {
      return held !== null;
    },
    take(partId, point, from, now) {
      const { camera } = link;
      commands.grip(partId);
      const { hold } = store.getState().practice;
      if (camera === null || hold === null) return false;
      const view = handView(camera, link.width, link.height);
      const way = screenWay(view, point, hold.direction);
      if (!isInHand(store, partId)) {
        const far = Math.hypot(now.x - from.x, now.y - from.y);
        const along = (now.x - from.x) * way.x + (now.y - from.y) * way.y;
        if (along < ALONG * far || isLarge(hold.lead, view, point)) return false;
        commands.select(partId);
      }
      const path = hold.way === null ? straightPath(hold.direction) : handPath(hold.way, hold.lead);
      const at = { last: from, last_ms: -Infinity, at_m: 0, speed: 0, tried: false };
      held = { hold, path, view, grabbed: point, way, from, ...at };
      transient.hand_m = 0;
      transient.handHolds = true;
      return true;
    },
    move(now, time_ms) {
      if (held === null) return;
      const drag = [now.x - held.last.x, now.y - held.last.y] as const;
      const before_m = held.at_m;
      held.at_m = pulledTo(held.path, before_m, held.grabbed, drag, held.view);
      const passed_ms = Math.max(1, time_ms - held.last_ms);
      const speed = (held.at_m - before_m) / held.way.perPixel_m / passed_ms;
      held.speed = held.last_ms === -Infinity ? 0 : 0.5 * held.speed + 0.5 * speed;
      held.last = now;
      held.last_ms = time_ms;
      if (held.hold.way !== null) transient.hand_m = Math.min(held.path.length_m, Math.max(0, held.at_m));
      else {
        const pulled_px = Math.max(0, held.at_m) / held.way.perPixel_m;
        transient.hand_m = GIVES_PX * (1 - Math.exp(-pulled_px / (2 * GIVES_PX))) * held.way.perPixel_m;
        // Whichever way it is tugged at: it is tried.
        const far = Math.hypot(now.x - held.from.x, now.y - held.from.y);
        if (!held.tried && far >= PULL_PX) attempt(held);
      }
      requestFrame();
    },
    release(time_ms, cancelled) {
      const now = held;
      held = null;
      transient.handHolds = false;
      requestFrame();
      if (now === null || cancelled || now.hold.way === null) return;
      const at_m = transient.hand_m;
      const pulled_px = at_m / now.way.perPixel_m;
      const far = at_m >= GOES_ON * Math.min(now.hold.clear_m, now.path.length_m);
      const flung =
        time_ms - now.last_ms < RESTS_MS && Math.abs(now.speed) >= FLICK_PX_MS && pulled_px >= FLICK_PX;
      if (flung ? now.speed > 0 : far && (pulled_px >= PULL_PX || at_m >= now.path.length_m)) attempt(now);
    },
  };
}
