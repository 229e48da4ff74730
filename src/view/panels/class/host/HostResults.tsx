/** What a session came to: items, numbers, lessons that are needed; printable and as tables for a spreadsheet. */
import { useEffect } from 'react';
import type { HostPage } from '../../../../core/classroom';
import {
  addressOf,
  type ClassReportMessage,
  createClassCommands,
  createLessonCommands,
} from '../../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../../bind';
import { saveText } from '../../common/csv';
import { useTeller } from '../../learn/teller';
import { itemsCsv, seatsCsv } from './results-csv';

export function HostResults({ page }: { readonly page: HostPage }) {
  const { t, language } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const wanted = useApp((s) => s.route.path[2]) ?? page.view.session ?? page.past[0]?.id ?? null;
  const report = useApp((s) => s.class.report);
  const answered = page.view.list.reduce((sum, each) => sum + each.answered, 0);
  const mine = wanted === page.view.session ? answered : 0;
  useEffect(() => {
    if (wanted !== null) room.order({ type: 'report', session: wanted });
  }, [room, wanted, mine]);
  const date = new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <>
      <h2 className="no-print">{t('class.tab.results')}</h2>
      {page.past.length > 0 && (
        <details className="no-print">
          <summary>{t('class.past', { count: page.past.length })}</summary>
          <ul className="class-past">
            {page.past.map(({ id, title, at_ms }) => (
              <li key={id}>
                <a href={addressOf({ place: 'class', path: ['host', 'results', id] })}>
                  {title === '' ? t('class.untitled') : title}, {date.format(at_ms)}
                </a>
              </li>
            ))}
          </ul>
        </details>
      )}
      {wanted === null && <p>{t('class.no-results')}</p>}
      {report !== null && report.session === wanted && <Report report={report} />}
    </>
  );
}

function Report({ report: message }: { readonly report: ClassReportMessage }) {
  const { t, say, language } = useSpeech();
  const teller = useTeller();
  const { report, settings, at_ms } = message;
  const two = (value: number | null): string =>
    value === null ? '–' : new Intl.NumberFormat(language, { maximumFractionDigits: 2 }).format(value);
  const share = (value: number | null): string =>
    value === null ? '–' : t('class.percent', { value: Math.round(100 * value) });
  const date = new Intl.DateTimeFormat(language, { dateStyle: 'long', timeStyle: 'short' });
  const list = (numbers: readonly number[]): string => (numbers.length === 0 ? '–' : numbers.join(', '));
  const file = new Date(at_ms).toISOString().slice(0, 10);
  return (
    <div className="class-results">
      <header>
        <h3>{settings.title === '' ? t('class.untitled') : settings.title}</h3>
        <p className="small">
          {`${date.format(at_ms)}, ${t('class.result-size', { items: report.items.length, seats: report.seats.length })}`}
        </p>
      </header>
      <div className="buttons no-print">
        <button
          type="button"
          className="button"
          onClick={() => saveText(`class-items-${file}.csv`, itemsCsv(message, teller))}
        >
          {t('class.csv-items')}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => saveText(`class-numbers-${file}.csv`, seatsCsv(message))}
        >
          {t('class.csv-seats')}
        </button>
        <button type="button" className="button" onClick={() => window.print()}>
          {t('paper.print')}
        </button>
      </div>
      <section aria-labelledby="class-items">
        <h4 id="class-items">{t('class.items')}</h4>
        <div className="class-grid">
          <table className="class-table" data-testid="class-items">
            <thead>
              <tr>
                <th scope="col">{t('class.column.number')}</th>
                <th scope="col">{t('class.column.question')}</th>
                <th scope="col">{t('class.column.answers')}</th>
                <th scope="col">{t('class.column.difficulty')}</th>
                <th scope="col">{t('class.column.point-biserial')}</th>
                <th scope="col">{t('class.column.discrimination')}</th>
                <th scope="col">{t('class.column.sure-and-wrong')}</th>
              </tr>
            </thead>
            <tbody>
              {report.items.map((item) => (
                <tr key={item.at}>
                  <td className="mono">{item.at + 1}</td>
                  <th scope="row">{teller.text(item.question.item.prompt)}</th>
                  <td className="mono">{item.shares.count}</td>
                  <td className="mono">{share(item.difficulty)}</td>
                  <td className="mono">{two(item.point_biserial)}</td>
                  <td className="mono">
                    {two(item.discrimination)}
                    {item.band !== null && <span className="small"> {t(`class.band.${item.band}`)}</span>}
                  </td>
                  <td className="mono">{list(item.sureAndWrong)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
        <p>
          {t('class.kr20')} <strong className="mono">{two(report.kr20)}</strong>
        </p>
        {report.notes.map((note) => (
          <p key={note.key} className="class-notice small">
            {say(note)}
          </p>
        ))}
        <p className="small faint">{t('class.statistics-about')}</p>
      </section>
      <Needs report={message} />
      <section aria-labelledby="class-numbers">
        <h4 id="class-numbers">{t('class.numbers')}</h4>
        <table className="class-table" data-testid="class-numbers">
          <thead>
            <tr>
              <th scope="col">{t('class.grid-number')}</th>
              <th scope="col">{t('class.column.answers')}</th>
              <th scope="col">{t('class.column.right')}</th>
              <th scope="col">{t('class.column.mark')}</th>
              <th scope="col">{t('class.column.sure-and-wrong-at')}</th>
            </tr>
          </thead>
          <tbody>
            {report.seats.map((each) => (
              <tr key={each.seat}>
                <th scope="row">
                  <span className="mono">{each.seat}</span> {each.name}
                </th>
                <td className="mono">{each.answered}</td>
                <td className="mono">{each.right}</td>
                <td className="mono">{each.mark}</td>
                <td className="mono">{list(each.sureAndWrong.map((at) => at + 1))}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="small faint">{t('class.numbers-about')}</p>
      </section>
    </div>
  );
}

/** Which lesson whom would help: by how many need it. */
function Needs({ report: { report } }: { readonly report: ClassReportMessage }) {
  const { t } = useSpeech();
  const lessons = usePlaceCommands(createLessonCommands);
  useEffect(() => void lessons.loadCourse(), [lessons]);
  const course = useApp((s) => s.lessons.course);
  if (report.lessons.length === 0) return null;
  return (
    <section aria-labelledby="class-needs">
      <h4 id="class-needs">{t('class.needs')}</h4>
      <ul>
        {report.lessons.map(({ topic, seats }) => (
          <li key={topic}>
            <a href={addressOf({ place: 'lessons', path: [topic] })}>
              {course?.lessons.find((each) => each.id === topic)?.title ?? topic}
            </a>
            : {t('class.needs-numbers', { list: seats.join(', ') })}
          </li>
        ))}
      </ul>
    </section>
  );
}
