/** How each finish of the machine file looks: linear colour, roughness, metalness, turning marks, grain. */
import type { Finish } from '../machine';

export interface Surface {
  /** sRGB as people write it. */
  readonly colour: string;
  readonly roughness: number;
  readonly metalness: number;
  /** Turning marks round the kind's x axis, 0 to 1: fine streaks and a highlight drawn out across them. */
  readonly brushed: number;
  /** Cast or sprayed grain, 0 to 1. */
  readonly grain: number;
}

export const SURFACES: Readonly<Record<Finish, Surface>> = {
  shell: { colour: '#B9BCC0', roughness: 0.38, metalness: 0.94, brushed: 0.62, grain: 0.06 },
  machined: { colour: '#C9CBCE', roughness: 0.3, metalness: 1, brushed: 0.5, grain: 0 },
  polished: { colour: '#D9DADB', roughness: 0.15, metalness: 1, brushed: 0.2, grain: 0 },
  bolt: { colour: '#7E8388', roughness: 0.4, metalness: 0.92, brushed: 0, grain: 0.1 },
  cast: { colour: '#70767A', roughness: 0.6, metalness: 0.62, brushed: 0, grain: 0.75 },
  painted: { colour: '#445F58', roughness: 0.42, metalness: 0, brushed: 0, grain: 0.12 },
  rubber: { colour: '#1D1E1F', roughness: 0.88, metalness: 0, brushed: 0, grain: 0.3 },
  brass: { colour: '#C9A25A', roughness: 0.3, metalness: 1, brushed: 0.35, grain: 0 },
  oil: { colour: '#9A6A1E', roughness: 0.12, metalness: 0, brushed: 0, grain: 0 },
  shot: { colour: '#A3A7AB', roughness: 0.22, metalness: 1, brushed: 0, grain: 1 },
  plain: { colour: '#8E9397', roughness: 0.5, metalness: 0.8, brushed: 0, grain: 0.25 },
  hose: { colour: '#24262A', roughness: 0.62, metalness: 0, brushed: 0, grain: 0.2 },
  glass: { colour: '#B8C6C8', roughness: 0.08, metalness: 0, brushed: 0, grain: 0 },
  tyre: { colour: '#232425', roughness: 0.92, metalness: 0, brushed: 0, grain: 0.4 },
  pad: { colour: '#9CA1A5', roughness: 0.48, metalness: 0.85, brushed: 0, grain: 0.3 },
  copper: { colour: '#B87345', roughness: 0.3, metalness: 1, brushed: 0.3, grain: 0 },
};
