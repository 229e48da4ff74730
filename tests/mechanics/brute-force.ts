/**
 * The settled shot by brute force, written from the definition alone and sharing no code with the closed form:
 * the section as square cells, flooded cell by cell from the greatest radius inwards.
 */
export interface Chamber {
  readonly radius_m: number;
  readonly eccentricity_m: number;
  readonly chord_x_m: number | null;
}
export interface Baffle {
  readonly psi_deg: number;
  readonly beta_deg: number;
  readonly leg1_m: number;
  readonly leg2_m: number;
  readonly side: 1 | -1;
  readonly pocket_side: 1 | -1;
  readonly half_thickness_m: number;
}
export interface BruteForce {
  readonly free_m2: number;
  /** Null where there is no pocket; 0 where it never spills. */
  readonly spill_m: number | null;
  readonly capacity_m2: number | null;
  /** Area and first moment of shot of that area. */
  settle(area_m2: number, direction: 'low' | 'high'): { area_m2: number; moment_m3: [number, number] };
}

const RAD = Math.PI / 180;

export function bruteForce(chamber: Chamber, baffle: Baffle | null, cell_m: number): BruteForce {
  const { radius_m: R, eccentricity_m: e, chord_x_m } = chamber;
  const legs: [number, number, number, number][] = [];
  if (baffle !== null) {
    const d1 = (baffle.psi_deg + 180 + baffle.beta_deg) * RAD;
    const wx = e + R * Math.cos(baffle.psi_deg * RAD);
    const wy = R * Math.sin(baffle.psi_deg * RAD);
    const kx = wx + baffle.leg1_m * Math.cos(d1);
    const ky = wy + baffle.leg1_m * Math.sin(d1);
    const d2 = d1 - baffle.side * 90 * RAD;
    legs.push([wx, wy, kx, ky]);
    if (baffle.leg2_m > 0) {
      legs.push([kx, ky, kx + baffle.leg2_m * Math.cos(d2), ky + baffle.leg2_m * Math.sin(d2)]);
    }
  }
  const half = baffle?.half_thickness_m ?? 0;
  const inSteel = (x: number, y: number, which: typeof legs) =>
    which.some(([x1, y1, x2, y2]) => {
      const t = ((x - x1) * (x2 - x1) + (y - y1) * (y2 - y1)) / ((x2 - x1) ** 2 + (y2 - y1) ** 2);
      const c = Math.max(0, Math.min(1, t));
      return Math.hypot(x - x1 - c * (x2 - x1), y - y1 - c * (y2 - y1)) < half;
    });
  const inChamber = (x: number, y: number) =>
    Math.hypot(x - e, y) < R && (chord_x_m === null || x > chord_x_m);

  const n = Math.ceil((2 * R) / cell_m) + 2;
  const at = (i: number) => (i + 0.5 - n / 2) * cell_m;
  const radius = new Float64Array(n * n);
  const free = new Uint8Array(n * n);
  for (let j = 0; j < n; j++) {
    for (let i = 0; i < n; i++) {
      const x = e + at(i);
      const y = at(j);
      radius[j * n + i] = Math.hypot(x, y);
      free[j * n + i] = inChamber(x, y) && !inSteel(x, y, legs) ? 1 : 0;
    }
  }
  const order = [...free.keys()].filter((k) => free[k] === 1).sort((a, b) => radius[b]! - radius[a]!);
  const cellAt = (x: number, y: number) =>
    Math.round(y / cell_m - 0.5 + n / 2) * n + Math.round((x - e) / cell_m - 0.5 + n / 2);

  /** First free cell along the wall from the angle, well inside the chamber by two cells. */
  const wallCell = (start_deg: number, direction: number, which: typeof legs): number | null => {
    for (let k = 0; k < 36000; k++) {
      const phi = (start_deg + direction * 0.01 * k) * RAD;
      const x = e + (R - 2 * cell_m) * Math.cos(phi);
      const y = (R - 2 * cell_m) * Math.sin(phi);
      const cell = cellAt(x, y);
      const [cx, cy] = [e + at(cell % n), at(Math.floor(cell / n))];
      if (inSteel(e + R * Math.cos(phi), R * Math.sin(phi), which) || inSteel(cx, cy, which)) continue;
      return free[cell] === 1 ? cell : null;
    }
    return null;
  };

  let spill_m: number | null = null;
  let pocket = new Set<number>();
  const seed = baffle === null ? null : wallCell(baffle.psi_deg, baffle.pocket_side, legs.slice(0, 1));
  const far = baffle === null ? null : wallCell(0, -baffle.pocket_side, legs);
  if (seed !== null && far !== null) {
    const parent = new Int32Array(n * n).fill(-1);
    const root = (k: number): number => {
      let up = k;
      while (parent[up] !== up) up = parent[up] = parent[parent[up]!]!;
      return up;
    };
    const entered: number[] = [];
    spill_m = 0;
    for (const k of order) {
      parent[k] = k;
      const seedBefore = parent[seed]! >= 0 ? root(seed) : -1;
      const farBefore = parent[far]! >= 0 ? root(far) : -1;
      const rootsHere = [k - 1, k + 1, k - n, k + n].filter((o) => parent[o]! >= 0).map(root);
      const joins =
        (seedBefore >= 0 &&
          farBefore >= 0 &&
          rootsHere.includes(seedBefore) &&
          rootsHere.includes(farBefore)) ||
        (k === seed && farBefore >= 0 && rootsHere.includes(farBefore)) ||
        (k === far && seedBefore >= 0 && rootsHere.includes(seedBefore));
      if (joins) {
        if (k === seed || k === far || seedBefore === farBefore) spill_m = null;
        else {
          spill_m = radius[k]!;
          pocket = new Set(entered.filter((o) => root(o) === seedBefore));
        }
        break;
      }
      for (const o of rootsHere) parent[o] = k;
      entered.push(k);
    }
    if (spill_m === 0) pocket = new Set(entered.filter((o) => root(o) === root(seed)));
  }
  const cellArea = cell_m * cell_m;
  const capacity = pocket.size * cellArea;
  return {
    free_m2: order.length * cellArea,
    spill_m,
    capacity_m2: spill_m === null ? null : capacity,
    settle: (area_m2, direction) => {
      const inPocket = direction === 'low' && spill_m !== null ? Math.min(capacity, area_m2) : 0;
      let leftPocket = inPocket;
      let leftMain = area_m2 - inPocket;
      const moment: [number, number] = [0, 0];
      let area = 0;
      for (const k of order) {
        const isPocket = pocket.has(k);
        const part = Math.min(cellArea, Math.max(0, isPocket ? leftPocket : leftMain));
        if (isPocket) leftPocket -= part;
        else leftMain -= part;
        area += part;
        moment[0] += part * (e + at(k % n));
        moment[1] += part * at(Math.floor(k / n));
      }
      return { area_m2: area, moment_m3: moment };
    },
  };
}
