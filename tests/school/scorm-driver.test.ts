// @vitest-environment jsdom
/**
 * The driver against a SCORM run-time that was not written here (scorm-again): every kind of question, right and wrong,
 * is taken without an error by both standards, and goes on where it was left.
 */
import { Scorm12API, Scorm2004API } from 'scorm-again';
import { describe, expect, it } from 'vitest';
import { type Answer, type Item, rightAnswer } from '../../src/core/quiz';
import {
  RESUME_LIMIT_12,
  RESUME_LIMIT_2004,
  schoolAnswer,
  type SchoolReport,
  type SchoolTrouble,
} from '../../src/core/records';
import { type ScormApi, scormLink } from '../../src/edge/school';
import { ITEMS } from '../classroom/items';

interface Call {
  readonly name: string;
  readonly values: readonly string[];
  readonly result: string;
  readonly error: string;
}

const STANDARDS = ['scorm12', 'scorm2004'] as const;
type Standard = (typeof STANDARDS)[number];

/** A run-time, and everything that was asked of it. */
function runtime(standard: Standard, kept?: object) {
  const settings = { logLevel: 5, autocommit: false } as const;
  const api = standard === 'scorm12' ? new Scorm12API(settings) : new Scorm2004API(settings);
  if (kept !== undefined) api.loadFromJSON(kept as never, '' as never);
  const calls: Call[] = [];
  const own = api as unknown as Record<string, (...values: string[]) => string>;
  const lastError = standard === 'scorm12' ? 'LMSGetLastError' : 'GetLastError';
  const heard = Object.fromEntries(
    Object.keys({ ...CALLED[standard] }).map((name) => [
      name,
      (...values: string[]) => {
        const result = String(own[name]!.call(api, ...values));
        const error = name === lastError ? '0' : String(own[lastError]!.call(api));
        // What the run-time says of its last call is asked once, here: it says the same again.
        if (name !== lastError) calls.push({ name, values, result, error });
        return result;
      },
    ]),
  ) as ScormApi;
  return { api, heard, calls };
}
const names = (...list: string[]) => Object.fromEntries(list.map((name) => [name, true]));
const CALLED: Readonly<Record<Standard, object>> = {
  scorm12: names('LMSInitialize', 'LMSFinish', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSGetLastError'),
  scorm2004: names('Initialize', 'Terminate', 'GetValue', 'SetValue', 'Commit', 'GetLastError'),
};

function drive(standard: Standard, kept?: object) {
  const troubles: (SchoolTrouble | null)[] = [];
  const run = runtime(standard, kept);
  const link = scormLink(standard, run.heard, {
    language: 'en',
    hear: (trouble) => troubles.push(trouble),
    zone_min: -60,
  });
  return { ...run, link, troubles };
}

const REPORT: SchoolReport = {
  completed: true,
  passed: true,
  score: 11 / 13,
  attempts: 1,
  progress: 1,
  place: 'stop-first',
  resume: 'x',
  session_s: 754.239,
};

/** Answers to every kind: the right one, one that is wrong, one beside the list. */
function answers(item: Item): readonly Answer[] {
  const right = rightAnswer(item);
  switch (right.type) {
    case 'choice':
      return [right, { type: 'choice', ids: item.kind === 'direction' ? ['less'] : [] }];
    case 'order':
      return [right, { type: 'order', ids: [...right.ids].reverse() }];
    case 'number':
      return [right, { type: 'number', si: 1.5e-9 }, { type: 'number', si: -123456789.123 }];
    case 'part':
      return [right, { type: 'part', partId: 'left side/hub bolt 07' }];
    case 'match':
      return [
        right,
        {
          type: 'match',
          pairs: Object.fromEntries(
            Object.keys(right.pairs).map((id) => [id, Object.values(right.pairs)[0]!]),
          ),
        },
      ];
  }
}
const ALL = ITEMS.flatMap((item) => answers(item).map((answer) => ({ item, answer })));
const at_ms = Date.UTC(2026, 4, 3, 9, 59, 58, 760);

const said = (calls: readonly Call[], n: number, name: string): string | undefined =>
  calls.find((call) => call.name.endsWith('SetValue') && call.values[0] === `cmi.interactions.${n}.${name}`)
    ?.values[1];

/** Forms that the standards give: letters and digits in 1.2 (RTE 3.4.4), short identifiers in 2004 (RTE 4.1.1). */
const FORMS: Readonly<Record<Standard, Readonly<Record<string, RegExp>>>> = {
  scorm12: {
    choice: /^([0-9a-z](,[0-9a-z])*)?$/,
    sequencing: /^[0-9a-z](,[0-9a-z])*$/,
    matching: /^[0-9a-z]?\.[0-9a-z]?(,[0-9a-z]?\.[0-9a-z]?)*$/,
    numeric: /^-?\d+(\.\d+)?$/,
    'fill-in': /^.{0,255}$/,
  },
  scorm2004: {
    choice: /^([\w.-]+(\[,\][\w.-]+)*)?$/,
    sequencing: /^[\w.-]+(\[,\][\w.-]+)*$/,
    matching: /^[\w.-]+\[\.\][\w.-]+(\[,\][\w.-]+\[\.\][\w.-]+)*$/,
    numeric: /^-?\d+(\.\d+)?$/,
  },
};

describe.each(STANDARDS)('%s', (standard) => {
  it('takes an answer of every kind of question, and the whole report, without an error', async () => {
    const { link, calls, troubles } = drive(standard);
    const opening = await link.open();
    expect(opening).toMatchObject({ resume: '', judged: true });
    ALL.forEach(({ item, answer }, i) => {
      const given = { answer, certainty: 2 as const };
      link.answered(schoolAnswer(item, given, `Ask ${item.id}\nand more`, { latency_s: 3.456 + i, at_ms }));
    });
    link.tell(REPORT);
    link.end({ ...REPORT, session_s: 800 });
    expect(troubles.filter((each) => each !== null)).toEqual([]);
    // Mastery, name and mode may be absent in the run-time; everything that was set was taken.
    const refused = calls.filter(
      (call) => !call.name.endsWith('GetValue') && (call.result !== 'true' || call.error !== '0'),
    );
    expect(refused).toEqual([]);
    ALL.forEach(({ item }, n) => {
      const type = said(calls, n, 'type')!;
      const response = said(calls, n, standard === 'scorm12' ? 'student_response' : 'learner_response')!;
      expect(FORMS[standard][type], `${item.kind} as ${type}`).toBeDefined();
      if (response !== undefined) expect(response, item.kind).toMatch(FORMS[standard][type]!);
      expect(said(calls, n, 'id')).toBe(item.id);
      expect(said(calls, n, 'correct_responses.0.pattern')).toBeTruthy();
    });
    const results = ALL.map((_, n) => said(calls, n, 'result'));
    expect(results.filter((each) => each === 'correct')).toHaveLength(ITEMS.length);
    expect(said(calls, 0, 'latency')).toBe(standard === 'scorm12' ? '0000:00:03.46' : 'PT3.46S');
    if (standard === 'scorm12') expect(said(calls, 0, 'time')).toBe('10:59:58');
    else {
      expect(said(calls, 0, 'timestamp')).toBe('2026-05-03T09:59:55.3Z');
      expect(said(calls, 0, 'description')).toBe(`{lang=en}Ask ${ITEMS[0]!.id} and more`);
    }
  });

  it('a right answer says the same as its pattern; a number lies between the two of its pattern', async () => {
    const { link, calls } = drive(standard);
    await link.open();
    ITEMS.forEach((item) =>
      link.answered(
        schoolAnswer(item, { answer: rightAnswer(item), certainty: 3 }, 'q', { latency_s: 1, at_ms }),
      ),
    );
    ITEMS.forEach((item, n) => {
      const response = said(calls, n, standard === 'scorm12' ? 'student_response' : 'learner_response')!;
      const pattern = said(calls, n, 'correct_responses.0.pattern')!;
      if (item.kind === 'number' && standard === 'scorm2004') {
        const [from, to] = pattern.split('[:]').map(Number);
        expect(Number(response)).toBeGreaterThanOrEqual(from!);
        expect(Number(response)).toBeLessThanOrEqual(to!);
        expect(to! - from!).toBeGreaterThan(0);
      } else expect(response.split(/,|\[,\]/).sort()).toEqual(pattern.split(/,|\[,\]/).sort());
    });
  });

  it('says status and score as the standard has them, at each stage of the lesson', async () => {
    const get = standard === 'scorm12' ? 'LMSGetValue' : 'GetValue';
    const stages: readonly [Partial<SchoolReport>, Readonly<Record<string, string>>][] =
      standard === 'scorm12'
        ? [
            [{ completed: false, passed: null, score: null }, { 'cmi.core.lesson_status': 'incomplete' }],
            [
              { completed: true, passed: false, score: 0.5 },
              { 'cmi.core.lesson_status': 'failed', 'cmi.core.score.raw': '50' },
            ],
            [
              {},
              {
                'cmi.core.lesson_status': 'passed',
                'cmi.core.score.raw': '84.62',
                'cmi.core.score.max': '100',
              },
            ],
          ]
        : [
            [
              { completed: false, passed: null, score: null },
              { 'cmi.completion_status': 'incomplete', 'cmi.success_status': 'unknown' },
            ],
            [
              { completed: false, passed: false, score: 0.5, progress: 0.4 },
              {
                'cmi.completion_status': 'incomplete',
                'cmi.success_status': 'failed',
                'cmi.score.scaled': '0.5',
                'cmi.progress_measure': '0.4',
              },
            ],
            [
              {},
              {
                'cmi.completion_status': 'completed',
                'cmi.success_status': 'passed',
                'cmi.score.scaled': '0.8462',
              },
            ],
          ];
    for (const [part, expected] of stages) {
      const { link, heard } = drive(standard);
      await link.open();
      link.tell({ ...REPORT, ...part });
      for (const [element, value] of Object.entries(expected)) expect(heard[get]!(element)).toBe(value);
    }
  });

  it('keeps as much to go on with as the standard promises, and goes on with it', async () => {
    const limit = standard === 'scorm12' ? RESUME_LIMIT_12 : RESUME_LIMIT_2004;
    const resume = 'a'.repeat(limit);
    const { link, api, troubles } = drive(standard);
    await link.open();
    link.tell({ ...REPORT, completed: false, resume });
    link.end({ ...REPORT, completed: false, resume });
    expect(troubles.filter((each) => each !== null)).toEqual([]);
    const kept = JSON.parse(JSON.stringify(api.cmi)) as object;
    const again = drive(standard, { cmi: kept });
    expect((await again.link.open())?.resume).toBe(resume);
    expect((await again.link.open()) === null).toBe(true);
  });

  it('says plainly that no system is there, that it would not begin, that it did not take something', async () => {
    const heard: (SchoolTrouble | null)[] = [];
    const around = {
      language: 'en',
      hear: (trouble: SchoolTrouble | null) => heard.push(trouble),
      zone_min: 0,
    };
    expect(await scormLink(standard, null, around).open()).toBeNull();
    expect(heard.at(-1)?.what).toBe('missing');
    const refuses = {
      LMSInitialize: () => 'false',
      Initialize: () => 'false',
      LMSGetLastError: () => '101',
      GetLastError: () => '102',
    };
    expect(await scormLink(standard, refuses, around).open()).toBeNull();
    expect(heard.at(-1)).toMatchObject({ what: 'refused' });

    const { heard: good, api } = runtime(standard);
    let gone = false;
    const flaky = Object.fromEntries(
      Object.entries(good).map(([name, call]) => [
        name,
        (...values: string[]) => {
          if (gone && !name.includes('Error')) throw new Error('the window is gone');
          return gone && name.includes('Error') ? '391' : call(...values);
        },
      ]),
    );
    const link = scormLink(standard, flaky, around);
    await link.open();
    gone = true;
    link.answered(
      schoolAnswer(ITEMS[0]!, { answer: rightAnswer(ITEMS[0]!), certainty: 3 }, 'q', { latency_s: 1, at_ms }),
    );
    link.tell(REPORT);
    expect(heard.at(-1)).toMatchObject({ what: 'lost' });
    gone = false;
    link.tell(REPORT);
    expect(heard.at(-1)).toBeNull();
    // What was lost is there after all, once.
    const kept = JSON.parse(JSON.stringify(api.cmi)) as { interactions: Record<string, unknown> };
    expect(Object.keys(kept.interactions)).toHaveLength(1);
  });

  it('judges nothing where the learner only looks', async () => {
    const mode = standard === 'scorm12' ? { core: { lesson_mode: 'review' } } : { mode: 'review' };
    const { link, calls } = drive(standard, { cmi: mode });
    expect((await link.open())?.judged).toBe(false);
    link.tell(REPORT);
    expect(calls.some((call) => /SetValue/.test(call.name) && /score|status/.test(call.values[0]!))).toBe(
      false,
    );
  });
});
