/** A job before it starts: what it takes, what to have ready, what can hurt, and how sure its order is. */
import { progressShare } from '../../../core/jobs';
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { ItemBalloon } from '../common/ItemBalloon';
import { inSentence } from '../common/names';
import { Signal } from '../common/Signal';
import { toolText, workTime } from '../teardown/step-words';
import { cautionText, comesOff, dateText, itemName, liftName, ownText } from './job-words';
import { orderKey } from './order-of-work';
import type { JobView } from './use-job';

export function JobOverview({
  view,
  onStep,
}: {
  readonly view: JobView;
  readonly onStep: (n: number) => void;
}) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const { sheet, progress, machine, job } = view;
  const next =
    progress === null
      ? undefined
      : (sheet.steps.find((s) => !progress.done.includes(s.id)) ?? sheet.steps.at(-1));
  const heaviest = [...sheet.lifts].sort((a, b) => b.mass_kg - a.mass_kg)[0];
  const off = comesOff(speech, view);
  return (
    <>
      <h2>{ownText(speech, sheet.title)}</h2>
      <p>{ownText(speech, sheet.summary)}</p>
      <dl className="facts">
        <dt>{t('jobs.time')}</dt>
        <dd>
          <span className="mono">{workTime(speech, sheet.time_s)}</span>{' '}
          <span className="small faint">{t('jobs.time-note')}</span>
        </dd>
        <dt>{t('jobs.who')}</dt>
        <dd className="mono">{t('jobs.people', { count: sheet.people })}</dd>
        <dt>{t('jobs.heaviest')}</dt>
        <dd>
          {heaviest === undefined ? (
            t('jobs.no-lift')
          ) : (
            <>
              <span className="mono">{quantity(heaviest.mass_kg, 'mass')}</span>{' '}
              <span className="small">{liftName(speech, view, heaviest)}</span>
            </>
          )}
        </dd>
        <dt>{t('jobs.steps')}</dt>
        <dd className="mono">
          {t('jobs.steps-count', {
            count: sheet.steps.length,
            holds: sheet.steps.filter((s) => s.hold).length,
          })}
        </dd>
        <dt>{t('jobs.off')}</dt>
        <dd>
          {off.length === 0
            ? t('jobs.nothing-off')
            : off.map((name, i) => (i === 0 ? name : inSentence(name))).join(', ')}
        </dd>
        <dt>{t('jobs.order-sure')}</dt>
        <dd className="small">{t(orderKey(sheet))}</dd>
      </dl>
      <div className="buttons">
        <button type="button" className="button act" onClick={() => onStep(next?.number ?? 1)}>
          {next === undefined ? t('jobs.begin') : t('jobs.go-on', { step: next.number })}
        </button>
        <button type="button" className="button" onClick={() => commands.go('jobs', job.id, 'sheet')}>
          {t('jobs.to-sheet')}
        </button>
        <button type="button" className="button" onClick={() => commands.go('jobs', job.id, 'after')}>
          {t('jobs.to-after')}
        </button>
      </div>
      {progress !== null && <ThisSheet view={view} />}
      <section aria-labelledby="job-cautions">
        <h3 id="job-cautions">{t('jobs.cautions')}</h3>
        {sheet.cautions.map((caution, i) => (
          <Signal key={i} word={caution.signal}>
            <p>{cautionText(speech, caution)}</p>
          </Signal>
        ))}
      </section>
      <section aria-labelledby="job-before">
        <h3 id="job-before">{t('jobs.before')}</h3>
        <ul className="plain-list">
          {sheet.prerequisites.map((text, i) => (
            <li key={i}>{ownText(speech, text)}</li>
          ))}
        </ul>
      </section>
      {sheet.order.length > 0 && (
        <section aria-labelledby="job-order">
          <h3 id="job-order">{t('jobs.ready')}</h3>
          <ul className="plain-list">
            {sheet.order.map((line, i) => (
              <li key={i}>
                {line.item !== null && <ItemBalloon item={line.item} />}{' '}
                {line.count !== null && <span className="mono">{line.count} × </span>}
                {line.kindId !== null && <b>{itemName(speech, machine, line.kindId)}. </b>}
                {ownText(speech, line.text)}
                {line.volume_m3 !== null && (
                  <span className="mono">, {quantity(line.volume_m3, 'volume')}</span>
                )}
                {line.mass_kg !== null && <span className="mono">, {quantity(line.mass_kg, 'mass')}</span>}
                {line.dimensions.length > 0 && (
                  <span className="small faint">
                    {' '}
                    {line.dimensions
                      .map((d) => `${speech.say(d.label)} ${quantity(d.value_m, 'length-small')}`)
                      .join(', ')}
                  </span>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section aria-labelledby="job-tools">
        <h3 id="job-tools">{t('jobs.tools')}</h3>
        <ul className="plain-list">
          {sheet.tools.map((tool, i) => (
            <li key={i}>{toolText(speech, tool)}</li>
          ))}
          {sheet.ownTools.map((text, i) => (
            <li key={`own ${i}`}>{ownText(speech, text)}</li>
          ))}
        </ul>
      </section>
      {sheet.lifts.length > 0 && (
        <section aria-labelledby="job-lifts">
          <h3 id="job-lifts">{t('jobs.lifts')}</h3>
          <table className="job-table">
            <thead>
              <tr>
                <th scope="col">{t('jobs.lift')}</th>
                <th scope="col">{t('jobs.mass')}</th>
                <th scope="col">{t('jobs.step-short')}</th>
              </tr>
            </thead>
            <tbody>
              {[...sheet.lifts]
                .sort((a, b) => b.mass_kg - a.mass_kg)
                .map((lift) => (
                  <tr key={`${lift.stepNumber} ${lift.unitIds[0]}`}>
                    <td>{liftName(speech, view, lift)}</td>
                    <td className="mono">
                      {quantity(lift.mass_kg, 'mass')}
                      {!lift.byHand && <span className="small"> {t('jobs.hoist')}</span>}
                    </td>
                    <td className="mono">{lift.stepNumber}</td>
                  </tr>
                ))}
            </tbody>
          </table>
        </section>
      )}
      {sheet.notes.length > 0 && (
        <section aria-labelledby="job-notes">
          <h3 id="job-notes">{t('jobs.notes')}</h3>
          {sheet.notes.map((text, i) => (
            <p key={i}>{ownText(speech, text)}</p>
          ))}
        </section>
      )}
    </>
  );
}

function ThisSheet({ view }: { readonly view: JobView }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const jobs = usePlaceCommands(createJobCommands);
  const kept = useApp((s) => s.jobs.kept);
  const { sheet, progress } = view;
  if (progress === null) return null;
  const { share } = progressShare(sheet, progress);
  const others = kept.filter((p) => p.jobId === sheet.jobId && p.id !== progress.id);
  return (
    <section aria-labelledby="job-this-sheet">
      <h3 id="job-this-sheet">{t('jobs.this-sheet')}</h3>
      <p className="small">
        {t('jobs.begun-at', { date: dateText(speech, progress.started_ms) })}{' '}
        {t('jobs.share-done', { share: quantity(share, 'share') })}
      </p>
      <progress value={share} max={1} aria-label={t('jobs.progress')} />
      {others.length > 0 && (
        <ul className="plain-list">
          {others.map((p) => (
            <li key={p.id}>
              {t('jobs.other-sheet', { date: dateText(speech, p.started_ms) })}{' '}
              <button type="button" className="link" onClick={() => void jobs.takeUp(p.id)}>
                {t('jobs.take-up')}
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className="buttons">
        <button type="button" className="button" onClick={jobs.startAnew}>
          {t('jobs.start-anew')}
        </button>
      </div>
    </section>
  );
}
