/**
 * npm run bench [-- topic...] [-- --long]: figures of speed and of long runs, each beside a named baseline of the same
 * run. Prints them and adds them to tests/bench/results/<topic>.csv.
 */
import { keepRows, printRow, type Measure } from './row';

/** Loaded one at a time, so that a topic's libraries do not stand in the way of another's figures. */
const TOPICS: Record<string, () => Promise<{ readonly measure: Measure }>> = {
  settled: () => import('./settled'),
  shot: () => import('./shot'),
  'shot-engines': () => import('./shot-engines'),
  'shot-frame': () => import('./shot-frame'),
  'shot-emergence': () => import('./shot-emergence'),
  sections: () => import('./sections'),
  blocking: () => import('./blocking'),
  lessons: () => import('./lessons'),
  diagnosis: () => import('./diagnosis'),
  classroom: () => import('./classroom'),
};

const given = process.argv.slice(2);
const long = given.includes('--long');
const named = given.filter((word) => !word.startsWith('--'));
const unknown = named.filter((topic) => !(topic in TOPICS));
if (unknown.length > 0) {
  console.error(`no topic ${unknown.join(', ')}; there are ${Object.keys(TOPICS).join(', ')}`);
  process.exit(2);
}
for (const topic of named.length > 0 ? named : Object.keys(TOPICS)) {
  console.log(topic);
  const rows = await (await TOPICS[topic]!()).measure(long);
  rows.forEach(printRow);
  keepRows(topic, rows);
}
