/**
 * What the stage hands to those who make a picture of it: ids and numbers of what it shows at this moment, and the frame
 * itself. Not state: the stage offers it while it stands, and nobody is told of changes.
 */
import type { Cut, EyePlace, PlacedPart } from '../../core/geometry';

export interface StageMoment {
  readonly parts: readonly {
    readonly id: string;
    readonly matrix: readonly number[];
    readonly ghost: boolean;
  }[];
  /** Bodies that stand in for those of a kind. */
  readonly bodies: Readonly<Record<string, PlacedPart['bodies']>>;
  readonly eye: EyePlace;
  /** From the eye to the middle of the view. */
  readonly middle_m: number;
  readonly cut: Cut | null;
  /** Size of the stage, CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** Balloons as they stand over the stage now: point on the part, middle of the balloon, CSS pixels. */
  readonly balloons: readonly {
    readonly id: string;
    readonly item: number;
    readonly x: number;
    readonly y: number;
    readonly bx: number;
    readonly by: number;
  }[];
  readonly balloonRadius: number;
}

/** Colours of the stage now. */
export interface StageInk {
  readonly paper: string;
  readonly ink: string;
  readonly card: string;
  readonly accent: string;
}

export interface StagePicture {
  moment(): StageMoment;
  ink(): StageInk;
  /** Draws the stage `scale` times as fine as a CSS pixel onto a canvas of its own; null when the browser refuses. */
  frame(scale: number): HTMLCanvasElement | null;
}

let offered: StagePicture | null = null;

/** Called by the stage; returns the function that takes the offer back. */
export function offerStagePicture(picture: StagePicture): () => void {
  offered = picture;
  return () => {
    if (offered === picture) offered = null;
  };
}

/** Null while no stage is drawn. */
export const stagePicture = (): StagePicture | null => offered;
