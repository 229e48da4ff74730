/** Puts the shot into the chamber: a loose lattice in the free section, low places first, jittered by the seed. */
import { seededRandom } from '../kernel';
import { createBalls, setBall, type Balls } from './balls';
import { ballCount, DISC_PACKING } from './count';
import type { ShotParameters } from './parameters';
import { wallDistance, WALL_STRIDE, type Walls } from './walls';

export interface Filled {
  readonly balls: Balls;
  /** Share of their full size at which the balls fit on the lattice; they grow to 1 while they settle. */
  readonly start_size: number;
}

const normal = new Float64Array(4);
const place = new Float64Array(3);

/** Distance in m of a point from the nearest wall, negative inside steel. */
function clearance(walls: Walls, x: number, y: number, z: number): number {
  let least = Infinity;
  place[0] = x;
  place[1] = y;
  place[2] = z;
  for (let w = 0; w < walls.length / WALL_STRIDE; w++) {
    wallDistance(walls, w, place, 0, normal);
    least = Math.min(least, normal[3]!);
  }
  return least;
}

/** Balls of full size and mass on their first places; sizes and jitter come from the seed alone. */
export function fillChamber(p: ShotParameters, walls: Walls): Filled {
  const { chamber, shot, slice } = p;
  const random = seededRandom(p.seed);
  const count = ballCount(p);
  const flat = slice.dimension === 2;
  const mean = shot.ball_diameter_m / 2;
  const greatest = mean * (1 + shot.size_spread);
  const radii = Array.from({ length: count }, () => mean * (1 + shot.size_spread * random.between(-1, 1)));

  const down: [number, number] = [Math.cos(p.start_angle_rad), -Math.sin(p.start_angle_rad)];
  let size = 1;
  let sites = latticeSites(p, walls, greatest, down);
  while (sites.length < count) {
    size *= 0.96;
    sites = latticeSites(p, walls, greatest * size, down);
  }
  const balls = createBalls(count);
  const disc_kg = (volume: number): number => (volume * shot.mass_kg) / (shot.length_m * bulkDiscArea(p));
  for (let i = 0; i < count; i++) {
    const r = radii[i]!;
    const [x, y, z] = sites[i]!;
    const mass = flat
      ? disc_kg(Math.PI * r * r) * slice.depth_m
      : (shot.density_kg_m3 * 4 * Math.PI * r ** 3) / 3;
    const jitter = 0.04 * greatest * size;
    const centre: [number, number, number] = [
      x + jitter * random.between(-1, 1),
      y + jitter * random.between(-1, 1),
      flat ? 0 : z + jitter * random.between(-1, 1),
    ];
    setBall(balls, i, centre, r, mass, slice.dimension);
  }
  if (chamber.radius_m < greatest) throw new Error('shot/fillChamber: the chamber is smaller than a ball');
  return { balls, start_size: size };
}

/** Area in m2 of all discs that stand for the shot in two dimensions. */
const bulkDiscArea = (p: ShotParameters): number =>
  (p.shot.mass_kg / (p.shot.density_kg_m3 * p.shot.packing * p.shot.length_m)) * DISC_PACKING;

type Site = readonly [number, number, number];

/** Free lattice places for balls of radius `r`, the lowest first. */
function latticeSites(p: ShotParameters, walls: Walls, r: number, down: readonly [number, number]): Site[] {
  const { chamber, slice } = p;
  const pitch = 2.1 * r;
  const flat = slice.dimension === 2;
  const layers = flat ? 1 : Math.max(1, Math.floor(slice.depth_m / pitch));
  const across = Math.ceil(chamber.radius_m / pitch);
  const sites: Site[] = [];
  for (let u = -across; u <= across; u++) {
    for (let v = -across; v <= across; v++) {
      const x = chamber.eccentricity_m + pitch * (u * down[0] - v * down[1]);
      const y = pitch * (u * down[1] + v * down[0]);
      for (let layer = 0; layer < layers; layer++) {
        const z = flat ? 0 : ((layer + 0.5) * slice.depth_m) / layers;
        if (clearance(walls, x, y, z) > 1.05 * r) sites.push([x, y, z]);
      }
    }
  }
  const depth = (site: Site): number => site[0] * down[0] + site[1] * down[1];
  return sites.sort((a, b) => depth(b) - depth(a) || a[2] - b[2] || a[1] - b[1] || a[0] - b[0]);
}
