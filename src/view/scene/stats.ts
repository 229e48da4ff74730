/** Figures of the last frame, for tests and the benchmark: `window.__drumbench.stats`. */
import type { WebGLRenderer } from 'three';

export interface StageStats {
  /** Draw calls and triangles of the main pass (shadow and contact passes apart). */
  calls: number;
  triangles: number;
  /** Frames drawn since the stage opened. */
  frames: number;
  tier: string;
  renderer: string;
  geometries: number;
  textures: number;
  programs: number;
  /** Parts that show. */
  parts: number;
  capTriangles: number;
  /** Script time of the last frame up to submission, ms. */
  script_ms: number;
}

export interface StageProbe {
  stats: StageStats;
  /** Where a person can click a part, CSS pixels of the page; null when it is covered or out of sight. */
  screenOf(partId: string): { x: number; y: number } | null;
}

declare global {
  interface Window {
    __drumbench?: Partial<StageProbe>;
  }
}

export const newStats = (): StageStats => ({
  calls: 0,
  triangles: 0,
  frames: 0,
  tier: '',
  renderer: '',
  geometries: 0,
  textures: 0,
  programs: 0,
  parts: 0,
  capTriangles: 0,
  script_ms: 0,
});

/** `casters`: draw calls and triangles of this frame's shadow pass, which three counts with the main one. */
export function readInfo(
  stats: StageStats,
  { info }: WebGLRenderer,
  casters: { readonly calls: number; readonly triangles: number },
): void {
  stats.calls = info.render.calls - casters.calls;
  stats.triangles = info.render.triangles - casters.triangles;
  stats.geometries = info.memory.geometries;
  stats.textures = info.memory.textures;
  stats.programs = info.programs?.length ?? 0;
}
