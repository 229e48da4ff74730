/** What a step holds: why, what is held up and lifted, tools, bolts, numbers with their sources, fields to fill. */
import type { SheetBolts, SheetLift, SheetNumber, SheetStep } from '../../../core/jobs';
import { useCommands, useSpeech } from '../../bind';
import { ItemBalloon } from '../common/ItemBalloon';
import { inSentence, sayAbout, unitName } from '../common/names';
import { toolText, workTime } from '../teardown/step-words';
import { FieldInput } from './FieldInput';
import { itemName, liftName, numberText, ownText } from './job-words';
import type { JobView } from './use-job';

export function StepBody({ view, step }: { readonly view: JobView; readonly step: SheetStep }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { machine } = view;
  const commands = useCommands();
  return (
    <>
      {(step.whyText !== null || step.why.length > 0) && (
        <section>
          <h3 className="label">{t('jobs.why')}</h3>
          {step.whyText !== null && <p>{ownText(speech, step.whyText)}</p>}
          {step.why.length > 0 && (
            <ul className="plain-list">
              {step.why.map((why, i) => (
                <li key={i}>{sayAbout(speech, machine, why)}</li>
              ))}
            </ul>
          )}
        </section>
      )}
      {step.supports.length > 0 && (
        <section>
          <h3 className="label">{t(step.action === 'unsupport' ? 'jobs.take-away' : 'jobs.supports')}</h3>
          <ul className="plain-list">
            {step.supports.map((support, i) => (
              <li key={i}>
                {t(`support.${support.kind}`, { what: inSentence(unitName(speech, machine, support.what)) })}
                {support.force_N > 0 && (
                  <b className="mono"> {quantity(support.force_N, 'force-large')}</b>
                )}{' '}
                <span className="small faint">{sayAbout(speech, machine, support.why)}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {step.lift !== null && <Lift view={view} lift={step.lift} />}
      {(step.tools.length > 0 || step.people > 1) && (
        <section>
          <h3 className="label">{t('jobs.tools')}</h3>
          <ul className="plain-list">
            {step.tools.map((tool, i) => (
              <li key={i}>{toolText(speech, tool)}</li>
            ))}
            {step.people > 1 && <li>{t('jobs.people', { count: step.people })}</li>}
          </ul>
        </section>
      )}
      {step.bolts.map((bolts) => (
        <Bolts key={bolts.groupId} view={view} bolts={bolts} />
      ))}
      {step.numbers.length > 0 && <Numbers view={view} numbers={step.numbers} />}
      {step.fields.length > 0 && (
        <section>
          <h3 className="label">{t('jobs.fields')}</h3>
          <div className="job-fields">
            {step.fields.map((field) => (
              <FieldInput key={field.id} view={view} field={field} hold={step.hold} />
            ))}
          </div>
        </section>
      )}
      {step.balloons.length > 0 && (
        <section>
          <h3 className="label">{t('jobs.parts')}</h3>
          <ul className="job-balloons">
            {step.balloons.map((balloon) => (
              <li key={balloon.kindId}>
                <button
                  type="button"
                  className="button plain"
                  onClick={() => {
                    commands.lookAt('fit', balloon.partIds[0] ?? null);
                  }}
                >
                  <ItemBalloon item={balloon.item} />
                  <span>
                    {itemName(speech, machine, balloon.kindId)}
                    {balloon.partIds.length > 1 && <span className="faint"> × {balloon.partIds.length}</span>}
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <p className="small faint">{t('jobs.step-time', { time: workTime(speech, step.time_s) })}</p>
    </>
  );
}

function Lift({ view, lift }: { readonly view: JobView; readonly lift: SheetLift }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  return (
    <section>
      <h3 className="label">{t('jobs.lift')}</h3>
      <p>
        {liftName(speech, view, lift)}: <b className="mono">{quantity(lift.mass_kg, 'mass')}</b>{' '}
        {t(lift.byHand ? 'jobs.by-hand' : 'jobs.by-hoist')}
      </p>
      <p className="small">
        {t('jobs.centre', {
          places: (['x', 'y', 'z'] as const).map((axis, k) => {
            const at = lift.centre_m[k]!;
            const where = t(`jobs.centre.${axis}.${at < 0 ? 'less' : 'more'}`);
            return `${quantity(Math.abs(at), 'length-small', 3)} ${where}`;
          }),
        })}
      </p>
      {lift.legs.length > 0 && (
        <table className="job-table">
          <caption className="small">{t('jobs.legs')}</caption>
          <thead>
            <tr>
              <th scope="col">{t('jobs.leg-angle')}</th>
              <th scope="col">{t('jobs.leg-pull')}</th>
            </tr>
          </thead>
          <tbody>
            {lift.legs.map((leg) => (
              <tr key={leg.angle_deg}>
                <td className="mono">{leg.angle_deg}°</td>
                <td className="mono">{quantity(leg.tension_N, 'force-large')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {lift.notes.map((note, i) => (
        <p key={i} className="small">
          {speech.say(note)}
        </p>
      ))}
    </section>
  );
}

export function boltsLine(speech: ReturnType<typeof useSpeech>, bolts: SheetBolts): string {
  const { t } = speech;
  return t('jobs.bolts-line', {
    count: bolts.count,
    designation: bolts.designation,
    class: bolts.propertyClass ?? t('jobs.class-unknown'),
  });
}

function Bolts({ view, bolts }: { readonly view: JobView; readonly bolts: SheetBolts }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  return (
    <section>
      <h3 className="label">{unitName(speech, view.machine, bolts.groupId)}</h3>
      <p className="mono">{boltsLine(speech, bolts)}</p>
      {bolts.order.length > 0 && (
        <p>
          {t(bolts.perPart === null ? 'jobs.bolt-order' : 'jobs.bolt-order-each')}{' '}
          <span className="mono">{bolts.order.join(' – ')}</span>
        </p>
      )}
      <p>
        {t('jobs.bolt-passes', {
          shares: bolts.stages.map((s) => quantity(s, 'share')).join(', '),
        })}
      </p>
      {bolts.ownTorque_Nm !== null && (
        <p>
          {t('jobs.bolt-own')}{' '}
          <span className="mono">
            {bolts.stages.map((s) => quantity(s * bolts.ownTorque_Nm!, 'torque')).join(' – ')}
          </span>
        </p>
      )}
    </section>
  );
}

function Numbers({ view, numbers }: { readonly view: JobView; readonly numbers: readonly SheetNumber[] }) {
  const speech = useSpeech();
  const { t } = speech;
  return (
    <section>
      <h3 className="label">{t('jobs.numbers')}</h3>
      <dl className="job-numbers">
        {numbers.map((n) => (
          <div key={n.id} data-number={n.id} data-verdict={n.verdict}>
            <dt>{sayAbout(speech, view.machine, n.label)}</dt>
            <dd>
              <b className="mono">{numberText(speech, n)}</b>
              {n.verdict !== undefined && (
                <span className={`verdict ${n.verdict}`}> {t(`jobs.verdict.${n.verdict}`)}</span>
              )}
              {n.notes.map((note, i) => (
                <p key={i} className="small">
                  {sayAbout(speech, view.machine, note)}
                </p>
              ))}
              <p className="small faint">
                {speech.say(n.source)}
                {n.training && n.source.key !== 'job.source.training-value' && `. ${t('jobs.training')}`}
              </p>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
