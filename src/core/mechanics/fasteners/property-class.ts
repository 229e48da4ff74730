/**
 * Proof strength of bolts by property class. Source: ISO 898-1 (from memory; 8.8 above 16 mm, 10.9 and 12.9 also seen
 * in a secondary listing).
 */
const PROOF_MPA: Readonly<Record<string, readonly [number, number]>> = {
  '8.8': [580, 600],
  '10.9': [830, 830],
  '12.9': [970, 970],
};

/** Null for a class that the table does not hold; diameters up to 16 mm and above may differ. */
export function proofStrength_Pa(propertyClass: string, diameter_m: number): number | null {
  const row = PROOF_MPA[propertyClass];
  return row === undefined ? null : row[diameter_m <= 0.016 + 1e-9 ? 0 : 1] * 1e6;
}
