/**
 * Radial internal clearance of unmounted roller bearings with cylindrical bore, micrometres. ISO 5753-1:
 * cylindrical roller bearings seen in secondary listings, spherical roller bearings from memory. Confirm both
 * before use on real bearings.
 */
export type RollerBearingType = 'cylindrical-roller' | 'spherical-roller';
export type ClearanceClass = 'CN' | 'C3' | 'C4';

export const CLEARANCE_CLASSES = ['CN', 'C3', 'C4'] as const satisfies readonly ClearanceClass[];

/** Least and greatest clearance of a class. */
export type ClearanceBand = readonly [number, number];

interface Row {
  /** Bore up to and including, mm; the first row starts over 50. */
  readonly upTo_mm: number;
  readonly bands: readonly [ClearanceBand, ClearanceBand, ClearanceBand];
}

const row = (upTo_mm: number, ...bands: Row['bands']): Row => ({ upTo_mm, bands });
const LEAST_BORE_MM = 50;

export const CLEARANCE_UM: Readonly<Record<RollerBearingType, readonly Row[]>> = {
  'cylindrical-roller': [
    row(65, [40, 70], [60, 90], [80, 110]),
    row(80, [40, 75], [65, 100], [90, 125]),
    row(100, [50, 85], [75, 110], [105, 140]),
    row(120, [50, 90], [85, 125], [125, 165]),
    row(140, [60, 105], [100, 145], [145, 190]),
    row(160, [70, 120], [115, 165], [165, 215]),
    row(180, [75, 125], [120, 170], [170, 220]),
    row(200, [90, 145], [140, 195], [195, 250]),
  ],
  'spherical-roller': [
    row(65, [40, 65], [65, 90], [90, 120]),
    row(80, [50, 80], [80, 110], [110, 145]),
    row(100, [60, 100], [100, 135], [135, 180]),
    row(120, [75, 120], [120, 160], [160, 210]),
    row(140, [95, 145], [145, 190], [190, 240]),
    row(160, [110, 170], [170, 220], [220, 280]),
    row(180, [120, 180], [180, 240], [240, 310]),
    row(200, [130, 200], [200, 260], [260, 340]),
  ],
};

/** Band of a class at a bore, micrometres; null outside bores over 50 up to 200 mm. */
export function clearanceBand(
  type: RollerBearingType,
  bore_mm: number,
  clearanceClass: ClearanceClass,
): ClearanceBand | null {
  if (!(bore_mm > LEAST_BORE_MM)) return null;
  const found = CLEARANCE_UM[type].find((each) => bore_mm <= each.upTo_mm);
  return found?.bands[CLEARANCE_CLASSES.indexOf(clearanceClass)] ?? null;
}
