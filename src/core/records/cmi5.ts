/**
 * A lesson launched by cmi5: what its address says, and the statements that the specification asks for, in their order.
 * Source: AICC and ADL, cmi5 specification, Quartz 1st Edition (2016), sections 8.1, 9 and 10.
 */
import { decimal, timeinterval2004 } from './scorm/formats';
import type { Response, SchoolAnswer } from './scorm/answer';
import type { SchoolReport } from './scorm/report';

export interface Cmi5Launch {
  readonly endpoint: string;
  /** Address that gives the token, once. */
  readonly fetch: string;
  readonly actor: Readonly<Record<string, unknown>>;
  readonly registration: string;
  readonly activityId: string;
}

export interface Cmi5LaunchData {
  readonly contextTemplate: Readonly<Record<string, unknown>>;
  readonly launchMode: 'Normal' | 'Browse' | 'Review';
  readonly masteryScore: number | null;
  readonly returnURL: string | null;
}

/** Documents of state: the system's own, and ours. */
export const LAUNCH_DATA = 'LMS.LaunchData';
export const RESUME_STATE = 'drumbench.resume';
export const LEARNER_PREFERENCES = 'cmi5LearnerPreferences';

const isObject = (x: unknown): x is Readonly<Record<string, unknown>> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return null;
  }
}

/** @param search of the page's address; null where it is no launch */
export function readCmi5Launch(search: string): Cmi5Launch | null {
  const params = new URLSearchParams(search);
  const [endpoint, fetch, registration, activityId] = ['endpoint', 'fetch', 'registration', 'activityId'].map(
    (name) => params.get(name) ?? '',
  ) as [string, string, string, string];
  const actor = parsed(params.get('actor') ?? '');
  const whole = [endpoint, fetch, registration, activityId].every((each) => each !== '') && isObject(actor);
  return whole ? { endpoint, fetch, actor, registration, activityId } : null;
}

/** Null where the document is none; a mode that is not known judges nothing. */
export function readLaunchData(text: string): Cmi5LaunchData | null {
  const data = parsed(text);
  if (!isObject(data) || !isObject(data['contextTemplate'])) return null;
  const { contextTemplate, launchMode, masteryScore, returnURL } = data;
  return {
    contextTemplate,
    launchMode: launchMode === 'Normal' || launchMode === 'Review' ? launchMode : 'Browse',
    masteryScore:
      typeof masteryScore === 'number' && masteryScore >= 0 && masteryScore <= 1 ? masteryScore : null,
    returnURL: typeof returnURL === 'string' && returnURL !== '' ? returnURL : null,
  };
}

/** What has been said in this registration, kept beside the place to go on from. */
export interface Cmi5Kept {
  readonly resume: string;
  readonly completed: boolean;
  readonly passed: boolean;
  /** Quizzes that a failed statement was sent for. */
  readonly failed: number;
}
export const NOTHING_KEPT: Cmi5Kept = { resume: '', completed: false, passed: false, failed: 0 };

export function readCmi5Kept(text: string): Cmi5Kept {
  const data = parsed(text);
  if (!isObject(data) || typeof data['resume'] !== 'string') return NOTHING_KEPT;
  const { resume, completed, passed, failed } = data;
  return {
    resume,
    completed: completed === true,
    passed: passed === true,
    failed: typeof failed === 'number' ? failed : 0,
  };
}

export type Cmi5Verb = 'initialized' | 'completed' | 'passed' | 'failed' | 'terminated' | 'answered';

export interface Cmi5Said {
  readonly verb: Cmi5Verb;
  readonly result?: Readonly<Record<string, unknown>>;
  /** Id of what was answered; left out: the unit itself. */
  readonly answered?: SchoolAnswer;
}

/** What a report adds to what was said before: completed once, passed once, failed once a quiz and never after passed. */
export function newsOf(report: SchoolReport, kept: Cmi5Kept): readonly Cmi5Said[] {
  const duration = timeinterval2004(report.session_s);
  const score = { scaled: Math.min(1, Math.max(0, Math.round((report.score ?? 0) * 10000) / 10000)) };
  return [
    ...(report.completed && !kept.completed
      ? [{ verb: 'completed' as const, result: { completion: true, duration } }]
      : []),
    ...(report.passed === true && !kept.passed
      ? [{ verb: 'passed' as const, result: { success: true, score, duration } }]
      : []),
    ...(report.passed === false && !kept.passed && report.attempts > kept.failed
      ? [{ verb: 'failed' as const, result: { success: false, score, duration } }]
      : []),
  ];
}

export const keptAfter = (report: SchoolReport, kept: Cmi5Kept, judged: boolean): Cmi5Kept => ({
  resume: report.resume,
  completed: kept.completed || (judged && report.completed),
  passed: kept.passed || (judged && report.passed === true),
  failed: judged && report.passed === false ? Math.max(kept.failed, report.attempts) : kept.failed,
});

const CMI5 = 'https://w3id.org/xapi/cmi5/context/categories/cmi5';
const MOVE_ON = 'https://w3id.org/xapi/cmi5/context/categories/moveon';
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';
const INTERACTION = 'http://adlnet.gov/expapi/activities/cmi.interaction';

/** A statement of this session: the system's context stands as it is, with what the verb adds. */
export function cmi5Statement(
  { verb, result, answered }: Cmi5Said,
  launch: Cmi5Launch,
  data: Cmi5LaunchData,
  made: { readonly id: string; readonly at_ms: number },
): Readonly<Record<string, unknown>> {
  const template = data.contextTemplate;
  const activities = isObject(template['contextActivities']) ? template['contextActivities'] : {};
  const before = activities['category'];
  const moves = result !== undefined && ('success' in result || 'completion' in result);
  const category = [
    ...(Array.isArray(before) ? (before as readonly unknown[]) : before === undefined ? [] : [before]),
    // Answers are allowed statements: they are not of the categories of cmi5.
    ...(answered === undefined
      ? [CMI5, ...(moves ? [MOVE_ON] : [])].map((id) => ({ objectType: 'Activity', id }))
      : []),
  ];
  const judged = verb === 'passed' || verb === 'failed';
  const own = isObject(template['extensions']) ? template['extensions'] : {};
  const extensions = judged && data.masteryScore !== null ? { ...own, [MASTERY]: data.masteryScore } : own;
  return {
    id: made.id,
    actor: launch.actor,
    verb: { id: `http://adlnet.gov/expapi/verbs/${verb}`, display: { en: verb } },
    object:
      answered === undefined
        ? { objectType: 'Activity', id: launch.activityId }
        : answerObject(answered, launch.activityId),
    ...(answered !== undefined ? { result: answerResult(answered) } : result === undefined ? {} : { result }),
    context: {
      ...template,
      registration: launch.registration,
      contextActivities: { ...activities, ...(category.length === 0 ? {} : { category }) },
      extensions,
    },
    timestamp: new Date(made.at_ms).toISOString(),
  };
}

function answerObject(answer: SchoolAnswer, unit: string) {
  const type = answer.response?.type ?? answer.right[0]?.type ?? 'other';
  return {
    objectType: 'Activity',
    id: `${unit}${unit.includes('#') ? '/' : '#'}${encodeURIComponent(answer.id)}`,
    definition: {
      type: INTERACTION,
      interactionType: type,
      description: { und: answer.description },
      correctResponsesPattern: answer.right.map((each) => patternOf(each)),
    },
  };
}

const answerResult = (answer: SchoolAnswer) => ({
  ...(answer.response === null ? {} : { response: said(answer.response) }),
  success: answer.isRight,
  duration: timeinterval2004(answer.latency_s),
});

const said = (response: Response): string =>
  response.type === 'numeric'
    ? decimal(response.value)
    : response.type === 'matching'
      ? response.pairs.map(([a, b]) => `${a}[.]${b}`).join('[,]')
      : response.ids.join('[,]');

const patternOf = (right: Response): string =>
  right.type === 'numeric'
    ? `${decimal(right.value - right.off)}[:]${decimal(right.value + right.off)}`
    : said(right);
