/**
 * Solves the trim bar of a shot exciter so that the fixed moment of its housing, from solids, is what is wanted:
 *   npx tsx scripts/solve-trim.ts [models/alder-one] [Mx_kgm My_kgm] [--write]
 * Unknowns are the bar's direction and its width across it (arm and height stay); Newton's method with the Jacobian
 * by differences. Prints the numbers; with --write puts them into exciter.yaml.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';
import { buildKind, kindMass, loadSolidKernel, poseMass, type SolidKernel } from '../src/core/geometry';
import { entryPose, type ExciterHousingParams, type Kind, machineFileSchema } from '../src/core/machine';

const TOLERANCE_KGM = 1e-4;

type Moment = readonly [number, number];

const words = process.argv.slice(2).filter((word) => word !== '--write');
const folder = resolve(words[0] ?? join(import.meta.dirname, '..', 'models', 'alder-one'));
const wanted: Moment = [Number(words[1] ?? 0.6), Number(words[2] ?? 0)];

const read = (name: string) => machineFileSchema.parse(parse(readFileSync(join(folder, name), 'utf8')));
const { kinds = {}, parts = [] } = read('exciter.yaml');
const { materials = {}, operation } = read('machine.yaml');
if (operation === undefined) throw new Error('scripts/solve-trim: machine.yaml has no operation');

/** Fixed moment about the shaft axis in the body frame, of what is welded to the housing but the shot. */
function fixedMoment(kernel: SolidKernel, housing: ExciterHousingParams): Moment {
  const moment: [number, number] = [0, 0];
  for (const part of parts.filter((p) => p.moves_with === 'exciter' && p.id !== operation!.shot_part)) {
    const found = kinds[part.kind]!;
    const kind: Kind = found.params.builder === 'exciter-housing' ? { ...found, params: housing } : found;
    const solid = buildKind(kernel, kind, { kinds, operation: operation! });
    const { mass_kg, centre_m } = poseMass(
      entryPose(part.at_m, part.turn_deg),
      kindMass(kind, solid, materials),
    );
    moment[0] -= mass_kg * centre_m[1];
    moment[1] -= mass_kg * centre_m[2];
  }
  return moment;
}

const given = Object.values(kinds).find((kind) => kind.params.builder === 'exciter-housing')?.params;
if (given?.builder !== 'exciter-housing') throw new Error('scripts/solve-trim: no exciter-housing kind');
const kernel = await loadSolidKernel();
const withBar = (angle_deg: number, tangential_m: number): ExciterHousingParams => ({
  ...given,
  trim_bar: { ...given.trim_bar, angle_deg, tangential_m },
});
let { angle_deg, tangential_m } = given.trim_bar;
let moment = fixedMoment(kernel, given);
for (let round = 0; round < 10; round++) {
  const miss: Moment = [wanted[0] - moment[0], wanted[1] - moment[1]];
  if (Math.hypot(...miss) < TOLERANCE_KGM) break;
  const steps = { angle: 0.5, width: 0.001 };
  const a = fixedMoment(kernel, withBar(angle_deg + steps.angle, tangential_m));
  const w = fixedMoment(kernel, withBar(angle_deg, tangential_m + steps.width));
  const ja: Moment = [(a[0] - moment[0]) / steps.angle, (a[1] - moment[1]) / steps.angle];
  const jw: Moment = [(w[0] - moment[0]) / steps.width, (w[1] - moment[1]) / steps.width];
  const det = ja[0] * jw[1] - jw[0] * ja[1];
  angle_deg = Number((angle_deg + (miss[0] * jw[1] - jw[0] * miss[1]) / det).toFixed(3));
  tangential_m = Number((tangential_m + (ja[0] * miss[1] - miss[0] * ja[1]) / det).toFixed(6));
  moment = fixedMoment(kernel, withBar(angle_deg, tangential_m));
}
console.log(JSON.stringify({ angle_deg, tangential_m, fixed_kgm: moment, wanted_kgm: wanted }));
if (process.argv.includes('--write')) {
  const file = join(folder, 'exciter.yaml');
  const text = readFileSync(file, 'utf8');
  const bar = /(trim_bar:[^}]*?angle_deg: )[-\d.]+([^}]*?tangential_m: )[-\d.]+/;
  if (!bar.test(text)) throw new Error('scripts/solve-trim: no trim_bar in exciter.yaml');
  writeFileSync(file, text.replace(bar, `$1${angle_deg}$2${tangential_m}`));
}
