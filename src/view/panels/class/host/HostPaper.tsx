/** Paper: the session's questions printed with their key on a page of its own, and the results entered by grid. */
import { useEffect } from 'react';
import { type GivenFromSeat, handIds, type HostPage, LETTERED_KINDS } from '../../../../core/classroom';
import type { Item } from '../../../../core/quiz';
import { createClassCommands } from '../../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../../bind';
import { Picture } from '../../learn/Picture';
import { Said } from '../../learn/Said';
import { useTeller } from '../../learn/teller';
import { keyOf, letter, PaperBody } from '../../quiz/PaperSheet';
import { QtiFile } from './QtiFile';
import '../../quiz/quiz.css';

export function HostPaper({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const keys = useApp((s) => s.class.keys);
  const report = useApp((s) => s.class.report);
  const { session } = page.view;
  useEffect(() => {
    room.order({ type: 'keys' });
    if (session !== null) room.order({ type: 'report', session: null });
  }, [room, session]);
  if (session === null || keys === null) return <p>{t('class.paper-none')}</p>;
  return (
    <>
      <div className="no-print class-paper-head">
        <h2>{t('class.tab.paper')}</h2>
        <p>{t('class.paper-about')}</p>
        <p className="class-notice small">{t('class.paper-keys')}</p>
        <div className="buttons">
          <button type="button" className="button act" onClick={() => window.print()}>
            {t('paper.print')}
          </button>
        </div>
        <QtiFile items={keys} />
      </div>
      {report?.session === session && (
        <ResultGrid seats={page.view.settings.seats} items={keys} given={report.given} />
      )}
      <Sheet items={keys} title={page.view.settings.title} />
    </>
  );
}

function Sheet({ items, title }: { readonly items: readonly Item[]; readonly title: string }) {
  const teller = useTeller();
  const { t } = teller.speech;
  return (
    <div className="paper-sheet">
      <header>
        <h2>{title === '' ? t('paper.title') : title}</h2>
        <p className="paper-lines">
          <span>{t('class.roster-number')} ______</span> <span>{t('paper.date')} __________</span>
        </p>
      </header>
      <ol className="paper-items">
        {items.map((item) => (
          <li key={item.id}>
            <Said content={item.prompt} />
            {item.picture !== undefined && <Picture picture={item.picture} />}
            <PaperBody item={item} teller={teller} />
          </li>
        ))}
      </ol>
      <section className="paper-key">
        <h2>{t('paper.key')}</h2>
        <ol>
          {items.map((item) => (
            <li key={item.id}>{keyOf(teller, item)}</li>
          ))}
        </ol>
      </section>
    </div>
  );
}

interface GridProps {
  readonly seats: number;
  readonly items: readonly Item[];
  readonly given: readonly Readonly<Record<string, GivenFromSeat>>[];
}

function ResultGrid({ seats, items, given }: GridProps) {
  const { t } = useSpeech();
  return (
    <section className="no-print" aria-labelledby="class-grid">
      <h3 id="class-grid">{t('class.grid')}</h3>
      <p className="small">{t('class.grid-about')}</p>
      <div className="class-grid">
        <table>
          <thead>
            <tr>
              <th scope="col">{t('class.grid-number')}</th>
              {items.map((item, i) => (
                <th key={item.id} scope="col" className="mono">
                  {i + 1}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: seats }, (_, i) => i + 1).map((seat) => (
              <tr key={seat}>
                <th scope="row" className="mono">
                  {seat}
                </th>
                {items.map((item, question) => (
                  <td key={item.id}>
                    <Cell seat={seat} question={question} item={item} given={given[question]?.[seat]} />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

interface CellProps {
  readonly seat: number;
  readonly question: number;
  readonly item: Item;
  readonly given: GivenFromSeat | undefined;
}

function Cell({ seat, question, item, given }: CellProps) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  if (given !== undefined && given.certainty !== null)
    return (
      <span className="small">{t(given.right ? 'class.grid-phone-right' : 'class.grid-phone-wrong')}</span>
    );
  const lettered = LETTERED_KINDS.includes(item.kind);
  const value =
    given === undefined
      ? ''
      : given.answer?.type === 'choice' && lettered
        ? given.answer.ids[0]!
        : given.right
          ? 'right'
          : 'wrong';
  const enter = (chosen: string): void => {
    const entry =
      chosen === ''
        ? null
        : lettered
          ? { answer: { type: 'choice' as const, ids: [chosen] }, right: false }
          : { answer: null, right: chosen === 'right' };
    room.order({ type: 'paper', question, seat, entry });
    room.order({ type: 'report', session: null });
  };
  return (
    <select
      value={value}
      aria-label={t('class.grid-cell', { number: seat, question: question + 1 })}
      onChange={(event) => enter(event.currentTarget.value)}
    >
      <option value="">–</option>
      {lettered ? (
        handIds(item).map((id, i) => (
          <option key={id} value={id}>
            {letter(i)}
          </option>
        ))
      ) : (
        <>
          <option value="right">✓</option>
          <option value="wrong">✗</option>
        </>
      )}
    </select>
  );
}
