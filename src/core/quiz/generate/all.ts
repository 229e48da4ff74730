/** All generators by name. A question is made again from its generator, its seed and the machine. */
import { seededRandom } from '../../kernel';
import type { Item } from '../item';
import type { Subject } from '../subject';
import { faultReadings } from './fault-readings';
import type { Generator } from './frame';
import * as mechanics from './mechanics';
import { ORDER_GENERATORS, orderQuestion } from './order';
import * as units from './units';

const OWN = {
  heaviest: units.heaviest,
  'moves-with': units.movesWith,
  shakes: units.shakes,
  'part-does': units.partDoes,
  'part-fails': units.partFails,
  'match-functions': units.matchFunctions,
  'pick-named': units.pickNamed,
  'force-by-speed': mechanics.forceBySpeed,
  'follows-speed': mechanics.whatFollowsSpeed,
  'force-number': mechanics.forceNumber,
  'two-weights': mechanics.twoWeights,
  'life-by-load': mechanics.lifeByLoad,
  'drum-pull': mechanics.drumPull,
  'range-on-slope': mechanics.rangeOnSlope,
  'linear-load': mechanics.linearLoad,
  'blow-spacing': mechanics.blowSpacing,
  'fault-readings': faultReadings,
} as const satisfies Readonly<Record<string, Generator>>;

type OwnName = keyof typeof OWN;
const isOwn = (name: string): name is OwnName => name in OWN;
const isOrder = (name: string): name is (typeof ORDER_GENERATORS)[number] =>
  ORDER_GENERATORS.some((each) => each === name);

export const GENERATOR_NAMES: readonly string[] = [...Object.keys(OWN), ...ORDER_GENERATORS];

/** Null where the machine has nothing to ask of that kind, or the graph is not known yet. */
export function generateItem(subject: Subject, name: string, seed: number): Item | null {
  if (isOwn(name)) return OWN[name](subject, seed);
  return isOrder(name) ? orderQuestion(subject, name, seed) : null;
}

/** The item of an id `gen/<generator>/<seed>`; null when it is none or cannot be made of this machine. */
export function regenerate(subject: Subject, id: string): Item | null {
  const found = /^gen\/([a-z-]+)\/(\d+)$/.exec(id);
  return found === null ? null : generateItem(subject, found[1]!, Number(found[2]));
}

/** Different items, the generators taking turns in random order. Shorter than `count` only where all have run dry. */
export function generateItems(
  subject: Subject,
  count: number,
  seed: number,
  names: readonly string[] = GENERATOR_NAMES,
): readonly Item[] {
  const random = seededRandom(seed);
  const out: Item[] = [];
  const asked = new Set<string>();
  let open = [...names];
  for (let round = 0; out.length < count && open.length > 0 && round < count + 4; round++) {
    const turn = [...open];
    while (turn.length > 0 && out.length < count) {
      const [name] = turn.splice(random.index(turn.length), 1);
      const item = generateItem(subject, name!, random.index(1_000_000));
      if (item === null) {
        open = open.filter((each) => each !== name);
        continue;
      }
      const said = JSON.stringify([item.prompt, 'options' in item ? item.options : null]);
      if (asked.has(said)) continue;
      asked.add(said);
      out.push(item);
    }
  }
  return out;
}
