/**
 * Reports and answers as elements of the data model of SCORM 2004, 4th edition. Source: ADL, SCORM 2004 4th Edition
 * Run-Time Environment (2009), sections 4.1 and 4.2 (from memory).
 */
import type { Response, SchoolAnswer } from './answer';
import { decimal, identifier, time2004, timeinterval2004 } from './formats';
import type { SchoolReport, Setting } from './report';

/** Letters that the element for going on may hold. */
export const RESUME_LIMIT_2004 = 64000;
const LOCATION_LIMIT = 1000;
const DESCRIPTION_LIMIT = 250;

/** Everything that a report sets. `judged` is false where the system lets a learner only look. */
export function report2004(report: SchoolReport, judged = true): readonly Setting[] {
  const { completed, passed, score, progress } = report;
  const share = (n: number): string => decimal(Math.round(n * 10000) / 10000);
  const marks: Setting[] =
    score === null
      ? []
      : [
          ['cmi.score.min', '0'],
          ['cmi.score.max', '100'],
          ['cmi.score.raw', decimal(Math.round(score * 10000) / 100)],
          ['cmi.score.scaled', share(score)],
        ];
  const judgement: Setting[] = [
    ...marks,
    ['cmi.progress_measure', share(Math.min(1, Math.max(0, progress)))],
    ['cmi.completion_status', completed ? 'completed' : 'incomplete'],
    ['cmi.success_status', passed === null ? 'unknown' : passed ? 'passed' : 'failed'],
  ];
  return [
    ...(judged ? judgement : []),
    ['cmi.location', report.place.slice(0, LOCATION_LIMIT)],
    ['cmi.suspend_data', report.resume],
    ['cmi.session_time', timeinterval2004(report.session_s)],
    ['cmi.exit', 'suspend'],
  ];
}

/**
 * @param n number of the answer among those of this learner
 * @param language of the question's words
 */
export function answer2004(answer: SchoolAnswer, n: number, language: string): readonly Setting[] {
  const at = `cmi.interactions.${n}`;
  const type = answer.response?.type ?? answer.right[0]?.type ?? 'other';
  const patterns = [...new Set(answer.right.map((each) => patternOf(each)))];
  return [
    [`${at}.id`, identifier(answer.id)],
    [`${at}.type`, type],
    // When it was first there to be answered.
    [`${at}.timestamp`, time2004(answer.at_ms - answer.latency_s * 1000)],
    ...patterns.map((pattern, k): Setting => [`${at}.correct_responses.${k}.pattern`, pattern]),
    [`${at}.weighting`, decimal(answer.weighting)],
    ...(answer.response === null ? [] : [[`${at}.learner_response`, responseText(answer.response)] as const]),
    [`${at}.result`, answer.isRight ? 'correct' : 'incorrect'],
    [`${at}.latency`, timeinterval2004(answer.latency_s)],
    [`${at}.description`, `{lang=${language}}${answer.description.slice(0, DESCRIPTION_LIMIT)}`],
  ];
}

const responseText = (said: Response): string => {
  switch (said.type) {
    case 'numeric':
      return decimal(said.value);
    case 'matching':
      return said.pairs.map(([a, b]) => `${identifier(a)}[.]${identifier(b)}`).join('[,]');
    default:
      return said.ids.map(identifier).join('[,]');
  }
};

/** A number is right between two others. */
const patternOf = (right: Response): string =>
  right.type === 'numeric'
    ? `${decimal(right.value - right.off)}[:]${decimal(right.value + right.off)}`
    : responseText(right);
