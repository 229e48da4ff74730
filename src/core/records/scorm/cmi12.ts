/**
 * Reports and answers as elements of the data model of SCORM 1.2. Source: ADL, SCORM 1.2 Run-Time Environment (2001),
 * section 3.4 (from memory).
 */
import type { Response, SchoolAnswer } from './answer';
import { decimal, identifier, lettersOf, time12, timespan12 } from './formats';
import type { SchoolReport, Setting } from './report';

/** Letters that the element for going on may hold. */
export const RESUME_LIMIT_12 = 4096;
const LOCATION_LIMIT = 255;
const FEEDBACK_LIMIT = 255;

/** Everything that a report sets. `judged` is false where the system lets a learner only look. */
export function report12(report: SchoolReport, judged = true): readonly Setting[] {
  const { completed, passed, score } = report;
  const status = !completed ? 'incomplete' : passed === null ? 'completed' : passed ? 'passed' : 'failed';
  const marks: Setting[] =
    score === null
      ? []
      : [
          ['cmi.core.score.min', '0'],
          ['cmi.core.score.max', '100'],
          ['cmi.core.score.raw', decimal(Math.round(score * 10000) / 100)],
        ];
  return [
    ...(judged ? [...marks, ['cmi.core.lesson_status', status] as const] : []),
    ['cmi.core.lesson_location', report.place.slice(0, LOCATION_LIMIT)],
    ['cmi.suspend_data', report.resume],
    ['cmi.core.session_time', timespan12(report.session_s)],
    ['cmi.core.exit', 'suspend'],
  ];
}

/** @param n number of the answer among those of this learner @param zone_min as a Date tells it */
export function answer12(answer: SchoolAnswer, n: number, zone_min: number): readonly Setting[] {
  const at = `cmi.interactions.${n}`;
  const write = writer(answer);
  const said = answer.response === null ? null : write(answer.response);
  const [first] = answer.right;
  const right = first === undefined ? null : write(first);
  const type = said?.type ?? right?.type ?? 'fill-in';
  return [
    [`${at}.id`, identifier(answer.id)],
    [`${at}.type`, type],
    [`${at}.time`, time12(answer.at_ms, zone_min)],
    ...answer.right.map((each, k): Setting => [
      `${at}.correct_responses.${k}.pattern`,
      write(each).text.slice(0, FEEDBACK_LIMIT),
    ]),
    [`${at}.weighting`, decimal(answer.weighting)],
    ...(said === null ? [] : [[`${at}.student_response`, said.text.slice(0, FEEDBACK_LIMIT)] as const]),
    [`${at}.result`, answer.isRight ? 'correct' : 'wrong'],
    [`${at}.latency`, timespan12(answer.latency_s)],
  ];
}

interface Written {
  readonly type: 'choice' | 'sequencing' | 'matching' | 'numeric' | 'fill-in';
  readonly text: string;
}

/** Letters for ids; what has no letter (a part picked beside the list) is written out, as a text filled in. */
function writer({ ids, options, right, response }: SchoolAnswer): (response: Response) => Written {
  const left = lettersOf(ids);
  const beside = lettersOf(options);
  const all = [...right, ...(response === null ? [] : [response])];
  const known = all.every(
    (each) => (each.type !== 'choice' && each.type !== 'sequencing') || each.ids.every((id) => left.has(id)),
  );
  return (said) => {
    switch (said.type) {
      case 'numeric':
        return { type: 'numeric', text: decimal(said.value) };
      case 'matching':
        return {
          type: 'matching',
          text: said.pairs.map(([a, b]) => `${left.get(a) ?? ''}.${beside.get(b) ?? ''}`).join(','),
        };
      default: {
        if (!known) return { type: 'fill-in', text: said.ids.join(',') };
        const letters = said.ids.map((id) => left.get(id)!);
        if (said.type === 'choice') letters.sort();
        return { type: said.type, text: letters.join(',') };
      }
    }
  };
}
