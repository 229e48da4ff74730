/** The printed sheet: head, cautions, lists, bolts, steps with their pictures, items, signatures, sources. */
import type { Ref } from 'react';
import { type SheetStep, pictureOf, type SheetPicture } from '../../../../core/jobs';
import { useSpeech } from '../../../bind';
import { workTime } from '../../teardown/step-words';
import type { DrawnPicture } from '../draw-picture';
import { dateText, ownText } from '../job-words';
import { orderKey, phasesOf } from '../order-of-work';
import { PictureSvg } from '../PictureSvg';
import type { JobView } from '../use-job';
import { Blank, Caution } from './marks';
import { AfterTable, BoltTable, Items, LiftTable, OrderTable, Sources, ToolList } from './PaperLists';
import { PaperStep } from './PaperStep';
import { type SourceNumbers, sourceNumbers } from './source-numbers';

interface Props {
  readonly view: JobView;
  readonly pictures: readonly DrawnPicture[];
  readonly box: Ref<HTMLElement>;
}

export function PaperSheet({ view, pictures, box }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const { sheet, machine, progress } = view;
  const sources = sourceNumbers(sheet);
  return (
    <article className="job-paper" ref={box} lang={speech.language}>
      <header className="paper-head">
        <div>
          <p className="paper-kind">{t('jobs.paper.kind')}</p>
          <h1>{ownText(speech, sheet.title)}</h1>
          <p>{ownText(speech, sheet.summary)}</p>
        </div>
        <table className="paper-block">
          <tbody>
            <tr>
              <th scope="row">{t('jobs.paper.model')}</th>
              <td>{machine.name}</td>
              <th scope="row">{t('jobs.paper.serial')}</th>
              <td>
                <Blank />
              </td>
            </tr>
            <tr>
              <th scope="row">{t('jobs.time')}</th>
              <td>{workTime(speech, sheet.time_s)}</td>
              <th scope="row">{t('jobs.paper.hours')}</th>
              <td>
                <Blank />
              </td>
            </tr>
            <tr>
              <th scope="row">{t('jobs.who')}</th>
              <td>{t('jobs.people', { count: sheet.people })}</td>
              <th scope="row">{t('jobs.paper.date')}</th>
              <td>{progress === null ? <Blank /> : dateText(speech, progress.started_ms)}</td>
            </tr>
            <tr>
              <th scope="row">{t('jobs.paper.sheet')}</th>
              <td>{progress?.id ?? t('jobs.paper.fresh')}</td>
              <th scope="row">{t('jobs.paper.name')}</th>
              <td>
                <Blank />
              </td>
            </tr>
          </tbody>
        </table>
      </header>
      <p className="paper-note">{t('jobs.paper.about')}</p>
      <p className="paper-note">
        <b>{t('jobs.order-sure')}.</b> {t(orderKey(sheet))}
      </p>
      <section>
        <h2>{t('jobs.cautions')}</h2>
        {sheet.cautions.map((caution, i) => (
          <Caution key={i} caution={caution} />
        ))}
      </section>
      <section>
        <h2>{t('jobs.before')}</h2>
        <ul className="paper-boxes">
          {sheet.prerequisites.map((text, i) => (
            <li key={i}>{ownText(speech, text)}</li>
          ))}
        </ul>
      </section>
      <OrderTable view={view} />
      <ToolList view={view} />
      <LiftTable view={view} />
      <BoltTable view={view} />
      {phasesOf(sheet.steps).map(({ phase, steps }, i) => (
        <section key={i}>
          <h2>{t(`job.phase.${phase}`)}</h2>
          <Steps view={view} steps={steps} pictures={pictures} sources={sources} />
        </section>
      ))}
      <AfterTable view={view} />
      <section className="paper-signatures">
        <h2>{t('jobs.paper.signatures')}</h2>
        <table>
          <tbody>
            {(['done-by', 'checked-by'] as const).map((who) => (
              <tr key={who}>
                <th scope="row">{t(`jobs.paper.${who}`)}</th>
                <td>
                  <Blank />
                </td>
                <th scope="row">{t('jobs.paper.date')}</th>
                <td>
                  <Blank />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <Items view={view} />
      <Sources view={view} sources={sources} />
      {sheet.notes.length > 0 && (
        <section>
          <h2>{t('jobs.notes')}</h2>
          {sheet.notes.map((text, i) => (
            <p key={i}>{ownText(speech, text)}</p>
          ))}
        </section>
      )}
    </article>
  );
}

/** A picture stands before the first of its steps and stays with it. */
function Steps(props: {
  readonly view: JobView;
  readonly steps: readonly SheetStep[];
  readonly pictures: readonly DrawnPicture[];
  readonly sources: SourceNumbers;
}) {
  const { view, steps, pictures, sources } = props;
  const { t } = useSpeech();
  const plain: readonly SheetPicture[] = pictures.map((p) => p.picture);
  return steps.map((step) => {
    const drawn = pictures.find((p) => p.picture.stepNumbers[0] === step.number);
    const row = (
      <PaperStep
        key={step.id}
        view={view}
        step={step}
        picture={pictureOf(plain, view.sheet, step)?.number ?? null}
        sources={sources}
      />
    );
    if (drawn === undefined) return row;
    const numbers = drawn.picture.stepNumbers;
    const title = t(numbers.length === 1 ? 'jobs.paper.picture-one' : 'jobs.paper.picture', {
      picture: drawn.picture.number,
      from: numbers[0] ?? 0,
      to: numbers.at(-1) ?? 0,
    });
    return (
      <div key={step.id} className="paper-pictured">
        <figure>
          <PictureSvg picture={drawn} label={title} />
          <figcaption>
            {title}
            {drawn.alone && ` ${t('jobs.paper.alone')}`}
          </figcaption>
        </figure>
        {row}
      </div>
    );
  });
}
