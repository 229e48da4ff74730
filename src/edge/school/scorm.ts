/** Talks with a SCORM system, 1.2 or 2004: begins, sets what changed, has it kept, ends. */
import {
  answer12,
  answer2004,
  type HearTrouble,
  report12,
  report2004,
  RESUME_LIMIT_12,
  RESUME_LIMIT_2004,
  type SchoolAnswer,
  type SchoolLink,
  type SchoolOpening,
  type SchoolReport,
  type SchoolStandard,
  type SchoolTrouble,
  type Setting,
} from '../../core/records';
import type { ScormApi } from './find-api';

type ScormStandard = Exclude<SchoolStandard, 'cmi5'>;

/** Names of the calls, and of the elements asked for at the beginning. */
const CALLS = {
  scorm12: {
    begin: 'LMSInitialize',
    end: 'LMSFinish',
    get: 'LMSGetValue',
    set: 'LMSSetValue',
    keep: 'LMSCommit',
    error: 'LMSGetLastError',
    mode: 'cmi.core.lesson_mode',
    learner: 'cmi.core.student_name',
    mastery: 'cmi.student_data.mastery_score',
    /** Mastery is said of a hundred. */
    whole: 100,
    time: 'cmi.core.session_time',
    limit: RESUME_LIMIT_12,
  },
  scorm2004: {
    begin: 'Initialize',
    end: 'Terminate',
    get: 'GetValue',
    set: 'SetValue',
    keep: 'Commit',
    error: 'GetLastError',
    mode: 'cmi.mode',
    learner: 'cmi.learner_name',
    mastery: 'cmi.scaled_passing_score',
    whole: 1,
    time: 'cmi.session_time',
    limit: RESUME_LIMIT_2004,
  },
} as const;

/** What systems without questions' records answer: they need not have them in 1.2. */
const NOT_THERE = new Set(['401', '402']);

/** The value is not of the element's form, or out of its range. */
const NEVER = new Set(['405', '406', '407']);

interface Surroundings {
  readonly language: string;
  readonly hear: HearTrouble;
  /** Minutes that local time is behind UTC. */
  readonly zone_min: number;
}

/** @param api null where no system was found */
export function scormLink(
  standard: ScormStandard,
  api: ScormApi | null,
  { language, hear, zone_min }: Surroundings,
): SchoolLink {
  const calls = CALLS[standard];
  const set = new Map<string, string>();
  const waiting: SchoolAnswer[] = [];
  let open = false;
  let judged = true;
  let count = 0;
  let noAnswers = false;
  let lost = false;

  const call = (name: string, ...values: string[]): string => {
    try {
      return String(api?.[name]?.(...values) ?? '');
    } catch {
      return 'false';
    }
  };
  const lastError = (): string => call(calls.error) || '?';
  const get = (element: string): string => {
    const value = call(calls.get, element);
    return lastError() === '0' ? value : '';
  };
  const trouble = (what: SchoolTrouble['what'], about: string): void => {
    if (what === 'lost') lost = true;
    hear({ what, code: lastError(), about });
  };
  /** The first element that was not taken, or null. */
  const setAll = (settings: readonly Setting[], always?: string): string | null => {
    for (const [element, value] of settings) {
      if (set.get(element) === value && element !== always) continue;
      if (call(calls.set, element, value) !== 'true') return element;
      set.set(element, value);
    }
    return null;
  };
  const sendAnswers = (): void => {
    while (waiting.length > 0 && !noAnswers) {
      const answer = waiting[0]!;
      const settings =
        standard === 'scorm12' ? answer12(answer, count, zone_min) : answer2004(answer, count, language);
      const refused = setAll(settings);
      if (refused !== null) {
        const code = lastError();
        if (NOT_THERE.has(code)) noAnswers = true;
        else trouble('lost', refused);
        // What the system will never take must not hold up what comes after it.
        if (!NEVER.has(code)) return;
      }
      waiting.shift();
      count++;
    }
  };
  const tell = (report: SchoolReport): void => {
    if (!open) return;
    const settings = standard === 'scorm12' ? report12(report, judged) : report2004(report, judged);
    lost = false;
    sendAnswers();
    const refused = setAll(settings, calls.time);
    if (refused !== null) trouble('lost', refused);
    if (call(calls.keep, '') !== 'true') {
      // What was set may not be kept: all of it is set again with the next report.
      set.clear();
      trouble('lost', calls.keep);
    }
    if (!lost) hear(null);
  };

  return {
    open: () => {
      if (api === null) {
        hear({ what: 'missing', code: '', about: '' });
        return Promise.resolve(null);
      }
      if (call(calls.begin, '') !== 'true') {
        trouble('refused', calls.begin);
        return Promise.resolve(null);
      }
      open = true;
      const mode = get(calls.mode);
      judged = mode === '' || mode === 'normal';
      count = Math.max(0, Math.floor(Number(get('cmi.interactions._count')))) || 0;
      const mastery = get(calls.mastery);
      const share = Number(mastery) / calls.whole;
      const opening: SchoolOpening = {
        resume: get('cmi.suspend_data'),
        limit: calls.limit,
        judged,
        mastery: mastery !== '' && share >= 0 && share <= 1 ? share : null,
        learner: get(calls.learner),
      };
      return Promise.resolve(opening);
    },
    answered(answer) {
      if (!open) return;
      waiting.push(answer);
      sendAnswers();
    },
    tell,
    end(report) {
      if (!open) return;
      tell(report);
      open = false;
      if (call(calls.end, '') !== 'true') trouble('lost', calls.end);
    },
  };
}
