/** What tests, practice runs and job sheets came to. */
import { useApp, useSpeech } from '../../bind';

const MINUTE_s = 60;

export function Work() {
  const { t, language } = useSpeech();
  const work = useApp((s) => s.records.work);
  if (work === null) return null;
  const { tests, practice, jobs, unreadable } = work;
  const some = {
    tests: tests.taken > 0,
    practice: practice.finished + practice.open > 0,
    jobs: jobs.open + jobs.finished + jobs.endedEarly > 0,
  };
  if (!some.tests && !some.practice && !some.jobs && unreadable === 0) return null;
  const percent = new Intl.NumberFormat(language, { style: 'percent', maximumFractionDigits: 0 });
  const rows: readonly (readonly [string, string | number])[] = [
    ...(some.tests
      ? ([
          ['records.tests', tests.taken],
          [
            'records.tests-best',
            [tests.best, tests.last].map((share) => percent.format(share ?? 0)).join(', '),
          ],
        ] as const)
      : []),
    ...(some.practice
      ? ([
          ['records.practice-done', practice.finished],
          ['records.practice-open', practice.open],
          ['records.practice-lost', practice.fewestLost ?? '–'],
          ['records.practice-time', Math.round(practice.time_s / MINUTE_s)],
        ] as const)
      : []),
    ...(some.jobs
      ? ([
          ['records.jobs-open', jobs.open],
          ['records.jobs-done', jobs.finished],
          ['records.jobs-early', jobs.endedEarly],
          ['records.jobs-result', `${jobs.passed}, ${jobs.failed}`],
        ] as const)
      : []),
  ];
  return (
    <section aria-labelledby="records-work">
      <h3 id="records-work">{t('records.work')}</h3>
      <dl className="facts" data-testid="work">
        {rows.map(([key, value]) => (
          <div key={key} className="facts-row">
            <dt>{t(key)}</dt>
            <dd className="mono">{value}</dd>
          </div>
        ))}
      </dl>
      {unreadable > 0 && (
        <p className="records-notice">{t('records.work-unreadable', { count: unreadable })}</p>
      )}
    </section>
  );
}
