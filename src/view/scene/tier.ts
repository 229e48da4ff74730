/** Draw tiers: what the stage affords. 'auto' starts from what draws (a graphics card or software) and follows frame times. */
import type { DrawTier } from '../../store';

export type Tier = 'full' | 'middle' | 'low';

export interface TierLook {
  /** Four samples a pixel. */
  readonly antialias: boolean;
  readonly shadows: boolean;
  /** Highlights drawn out along turning marks. */
  readonly fine: boolean;
  readonly maxDpr: number;
}

export const TIERS: Readonly<Record<Tier, TierLook>> = {
  full: { antialias: true, shadows: true, fine: true, maxDpr: 2 },
  middle: { antialias: true, shadows: true, fine: false, maxDpr: 1.25 },
  low: { antialias: false, shadows: false, fine: false, maxDpr: 1 },
};

const ORDER: readonly Tier[] = ['low', 'middle', 'full'];

/** The tier that a person or an address asks for; null: find out. */
export function askedTier(setting: DrawTier, address: string): Tier | null {
  const inAddress = new URLSearchParams(address).get('tier');
  if (inAddress === 'low' || inAddress === 'full' || inAddress === 'middle') return inAddress;
  return setting === 'auto' ? null : setting;
}

/** First guess from the name of the renderer: software draws on the low tier. */
export const tierFor = (renderer: string): Tier =>
  /swiftshader|llvmpipe|softpipe|software|basic render/i.test(renderer) ? 'low' : 'full';

/** Frames of one run that must agree before the tier moves. */
const ENOUGH = 24;
const TOO_SLOW_MS = 34;
const EASY_MS = 11;

export interface TierMeter {
  /** Takes the time of one frame within an unbroken run; returns the tier to draw with from now on. */
  frame(ms: number, tier: Tier): Tier;
  /** The run of frames broke off: rest tells nothing. */
  rest(): void;
}

/** Steps down when half of the frames are slow, up (once) when nearly all are easy; never back up after a step down. */
export function tierMeter(): TierMeter {
  let times: number[] = [];
  let mayRise = true;
  return {
    frame(ms, tier) {
      times.push(ms);
      if (times.length < ENOUGH) return tier;
      times.sort((a, b) => a - b);
      const median = times[times.length >> 1]!;
      const nearlyAll = times[Math.floor(times.length * 0.9)]!;
      times = [];
      const at = ORDER.indexOf(tier);
      if (median > TOO_SLOW_MS && at > 0) {
        mayRise = false;
        return ORDER[at - 1]!;
      }
      if (mayRise && nearlyAll < EASY_MS && at < ORDER.length - 1) return ORDER[at + 1]!;
      return tier;
    },
    rest() {
      times = [];
    },
  };
}
