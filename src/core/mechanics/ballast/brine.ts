/**
 * Calcium chloride brine: density and freezing point, by table.
 *
 * Source: CoolProp 8.0.0, INCOMP::MCA (CaCl2 brine, fit to A. Melinder's data), computed every 5 K and 5 mass
 * percent; pure water: IAPWS (from memory). Sources agree within 0.4 % in density and 1 K in freezing point up to
 * 25 %; at 30 % they give -41 to -55 degrees Celsius, so that is noted. Beyond about 30 % the freezing point rises
 * again. Calcium chloride corrodes steel and harms plants and water.
 */
import {
  above,
  atLeast,
  checkNumbers,
  fail,
  finished,
  message,
  within,
  type Message,
  type Result,
} from '../../kernel';

const TEMPERATURES_C = [-40, -30, -20, -10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40] as const;

/** Rows [mass percent of salt, densities kg/m3 at the last temperatures of the list (above freezing only)]. */
const DENSITIES: readonly (readonly [number, readonly number[]])[] = [
  [0, [999.8, 1000.0, 999.7, 999.1, 998.2, 997.0, 995.7, 994.0, 992.2]],
  [5, [1043.1, 1041.7, 1040.8, 1040.2, 1039.6, 1038.8, 1037.4, 1035.2, 1031.9]],
  [10, [1089.8, 1088.3, 1087.4, 1086.8, 1086.4, 1085.9, 1085.0, 1083.6, 1081.4, 1078.1]],
  [15, [1137.8, 1136.3, 1135.4, 1134.8, 1134.4, 1133.9, 1133.2, 1132.1, 1130.4, 1128.0, 1124.6]],
  [20, [1186.9, 1185.7, 1184.8, 1183.9, 1183.0, 1181.9, 1180.6, 1178.8, 1176.5, 1173.6, 1169.8]],
  [25, [1243.6, 1240.2, 1238.5, 1236.9, 1235.2, 1233.3, 1231.3, 1229.1, 1226.5, 1223.7, 1220.4, 1216.8]],
  [
    30,
    [
      1307.8, 1304.9, 1301.1, 1296.7, 1294.2, 1291.7, 1289.1, 1286.5, 1283.9, 1281.2, 1278.7, 1276.2, 1273.7,
      1271.5,
    ],
  ],
];

/** Rows [mass percent of salt, freezing point in degrees Celsius]. */
const FREEZING: readonly (readonly [number, number])[] = [
  [0, 0],
  [2.5, -1.1],
  [5, -2.4],
  [7.5, -3.9],
  [10, -5.8],
  [12.5, -8.2],
  [15, -11.1],
  [17.5, -14.4],
  [20, -18.3],
  [22.5, -23.0],
  [25, -29.0],
  [27.5, -37.1],
  [30, -48.0],
];

export interface BrineInput {
  /** Anhydrous CaCl2 over the whole mass, percent, 0 to 30. */
  readonly salt_mass_percent: number;
  /** -40 to 40. */
  readonly temperature_C: number;
}

export interface Brine {
  /** Null when frozen. */
  readonly density_kg_m3: number | null;
  readonly freezing_C: number;
  readonly notes: readonly Message[];
}

/** Above this the sources part in the freezing point. */
const SURE_PERCENT = 25;

/** Refused outside the table. */
export function brine(input: BrineInput): Result<Brine> {
  const faults = checkNumbers(input, { salt_mass_percent: within(0, 30), temperature_C: within(-40, 40) });
  if (faults.length > 0) return fail(faults);
  const { salt_mass_percent, temperature_C } = input;
  const freezing_C = interpolate(FREEZING, salt_mass_percent);
  const notes: Message[] = [];
  if (salt_mass_percent > SURE_PERCENT) notes.push(message('mechanics.note.brine-sources-part'));
  const frozen = temperature_C < freezing_C;
  if (frozen) notes.push(message('mechanics.note.brine-frozen', { freezing_C }));
  const byPercent = DENSITIES.map(([percent, densities]): [number, number] => [
    percent,
    // a row that ends above this temperature is run on by its last slope, to interpolate between rows
    interpolate(
      TEMPERATURES_C.slice(-densities.length).map((t, i): [number, number] => [t, densities[i] ?? 0]),
      temperature_C,
    ),
  ]);
  const density_kg_m3 = frozen ? null : interpolate(byPercent, salt_mass_percent);
  return finished({ density_kg_m3, freezing_C, notes });
}

export interface BrineFillInput {
  /** Volume of the liquid (leave air space: about 75 % of the room, common practice). */
  readonly volume_m3: number;
  readonly density_kg_m3: number;
  readonly salt_mass_percent: number;
}

export interface BrineFill {
  readonly total_kg: number;
  readonly salt_kg: number;
  readonly water_kg: number;
  readonly notes: readonly Message[];
}

/** Masses of a fill; salt counted as anhydrous. */
export function brineFill(input: BrineFillInput): Result<BrineFill> {
  const faults = checkNumbers(input, {
    volume_m3: atLeast(0),
    density_kg_m3: above(0),
    salt_mass_percent: within(0, 100),
  });
  if (faults.length > 0) return fail(faults);
  const total_kg = input.volume_m3 * input.density_kg_m3;
  const salt_kg = (total_kg * input.salt_mass_percent) / 100;
  return finished({ total_kg, salt_kg, water_kg: total_kg - salt_kg, notes: [] });
}

/** Linear between points that rise in x; beyond the ends by the first and last slope. */
function interpolate(points: readonly (readonly [number, number])[], x: number): number {
  const found = points.findIndex(([at]) => at >= x);
  const right = Math.max(1, found < 0 ? points.length - 1 : found);
  const [x0, y0] = points[right - 1] ?? [0, 0];
  const [x1, y1] = points[right] ?? [1, 0];
  return y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}
