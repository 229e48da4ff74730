/**
 * One lesson with its quiz as a package for a school's system, from the built app:
 *   npm run package -- --lesson two-directions --standard scorm12|scorm2004|cmi5 [--language en] [--mastery 80]
 *     [--out file.zip] [--app dist]
 */
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { CourseOutline } from '../src/core/lessons';
import { SCHOOL_STANDARDS, type SchoolStandard } from '../src/core/records';
import { zipPackage } from '../src/edge/school';
import { LANGUAGES } from '../src/words';
import { filesOf } from './lib/precache.mjs';

const USAGE = `npm run package -- --lesson <topic> --standard ${SCHOOL_STANDARDS.join('|')} [--language en] [--mastery 80] [--out file.zip]`;

function stop(why: string): never {
  console.error(`${why}\n${USAGE}`);
  process.exit(1);
}

const { values } = parseArgs({
  options: {
    lesson: { type: 'string' },
    standard: { type: 'string' },
    language: { type: 'string', default: 'en' },
    mastery: { type: 'string', default: '80' },
    out: { type: 'string' },
    app: { type: 'string', default: 'dist' },
    help: { type: 'boolean', default: false },
  },
});
if (values.help) {
  console.log(USAGE);
  process.exit(0);
}
const { language } = values;
const app = resolve(values.app);
const standard = SCHOOL_STANDARDS.find((each) => each === values.standard) as SchoolStandard | undefined;
if (standard === undefined) stop(`No such standard: ${values.standard ?? '(none)'}`);
const mastery = Number(values.mastery) / 100;
if (!(mastery >= 0 && mastery <= 1)) stop(`The pass mark is from 0 to 100 percent, got ${values.mastery}`);
if (!existsSync(join(app, 'index.html'))) stop(`No built app in ${values.app}`);
const words = await LANGUAGES[language]?.load();
if (words === undefined) stop(`No such language: ${language}`);

const own = join(app, 'baked', 'lessons', language, 'course.json');
const outline = existsSync(own) ? own : join(app, 'baked', 'lessons', 'en', 'course.json');
const course = JSON.parse(readFileSync(outline, 'utf8')) as CourseOutline;
const lesson = course.lessons.find((each) => each.id === values.lesson);
if (lesson === undefined)
  stop(
    `No such lesson: ${values.lesson ?? '(none)'}. Lessons: ${course.lessons.map(({ id }) => id).join(', ')}`,
  );

const files = filesOf(app).map(({ url }) => ({ url, bytes: statSync(join(app, url)).size }));
const zip = await zipPackage(
  { files, read: (url) => Promise.resolve(new Uint8Array(readFileSync(join(app, url)))) },
  { standard, lesson: lesson.id, language, mastery },
  { title: lesson.title, summary: lesson.summary, waiting: words['packages.waiting'] ?? '' },
);
const out = values.out ?? `drumbench-${lesson.id}-${standard}.zip`;
writeFileSync(out, new Uint8Array(await zip.arrayBuffer()));
console.log(`${out}: ${(zip.size / 1e6).toFixed(1)} MB, ${standard}, ${lesson.title}`);
