/** Lists of the printed sheet: what to have ready, tools, lifts, bolts with their blanks, what to measure after, items, sources. */
import { jobVerdict, type SheetBolts } from '../../../../core/jobs';
import { jobBase } from '../../../../store';
import { useApp, useSpeech } from '../../../bind';
import { unitName } from '../../common/names';
import { toolText } from '../../teardown/step-words';
import { itemName, liftName, ownText, rateText } from '../job-words';
import type { JobView } from '../use-job';
import { Blank, Box } from './marks';
import type { SourceNumbers } from './source-numbers';

interface Props {
  readonly view: JobView;
}

export function OrderTable({ view }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { sheet, machine } = view;
  if (sheet.order.length === 0) return null;
  return (
    <section>
      <h2>{t('jobs.ready')}</h2>
      <table className="paper-table">
        <thead>
          <tr>
            <th scope="col" aria-label={t('jobs.done')} />
            <th scope="col">{t('parts.item')}</th>
            <th scope="col">{t('jobs.paper.what')}</th>
            <th scope="col">{t('jobs.paper.amount')}</th>
            <th scope="col">{t('jobs.paper.size-of')}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.order.map((line, i) => (
            <tr key={i}>
              <td>
                <Box />
              </td>
              <td>{line.item ?? ''}</td>
              <td>
                {line.kindId !== null && <b>{itemName(speech, machine, line.kindId)}. </b>}
                {ownText(speech, line.text)}
              </td>
              <td className="tight">
                {line.count ??
                  (line.volume_m3 !== null
                    ? quantity(line.volume_m3, 'volume')
                    : line.mass_kg !== null
                      ? quantity(line.mass_kg, 'mass')
                      : '')}
              </td>
              <td>
                {line.dimensions
                  .map((d) => `${speech.say(d.label)} ${quantity(d.value_m, 'length-small')}`)
                  .join(', ')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

export function ToolList({ view }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const { sheet } = view;
  return (
    <section>
      <h2>{t('jobs.tools')}</h2>
      <ul className="paper-boxes columns">
        {sheet.tools.map((tool, i) => (
          <li key={i}>
            {toolText(speech, tool)}{' '}
            <span className="paper-small">
              ({t('jobs.paper.at-steps', { steps: tool.stepNumbers.join(', ') })})
            </span>
          </li>
        ))}
        {sheet.ownTools.map((text, i) => (
          <li key={`own ${i}`}>{ownText(speech, text)}</li>
        ))}
      </ul>
    </section>
  );
}

export function LiftTable({ view }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { sheet } = view;
  if (sheet.lifts.length === 0) return null;
  const lifts = [...sheet.lifts].sort((a, b) => b.mass_kg - a.mass_kg);
  const angles = lifts.find((l) => l.legs.length > 0)?.legs.map((l) => l.angle_deg) ?? [];
  return (
    <section>
      <h2>{t('jobs.lifts')}</h2>
      <table className="paper-table">
        <thead>
          <tr>
            <th scope="col">{t('jobs.step-short')}</th>
            <th scope="col">{t('jobs.lift')}</th>
            <th scope="col">{t('jobs.mass')}</th>
            <th scope="col">{t('jobs.paper.how')}</th>
            {angles.map((angle) => (
              <th key={angle} scope="col" className="tight">
                {t('jobs.paper.leg-at', { angle })}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lifts.map((lift) => (
            <tr key={`${lift.stepNumber} ${lift.unitIds[0]}`}>
              <td>{lift.stepNumber}</td>
              <td>{liftName(speech, view, lift)}</td>
              <td className="tight">{quantity(lift.mass_kg, 'mass')}</td>
              <td>{t(lift.byHand ? 'jobs.paper.hand' : 'jobs.hoist')}</td>
              {angles.map((angle) => {
                const leg = lift.legs.find((l) => l.angle_deg === angle);
                return (
                  <td key={angle} className="tight">
                    {leg === undefined ? '' : quantity(leg.tension_N, 'force-large')}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="paper-small">{t('jobs.paper.legs-about')}</p>
    </section>
  );
}

/** Every group that is tightened, once, with the blank for the torque of one's own machine. */
export function BoltTable({ view }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { sheet, machine } = view;
  const groups = new Map<string, { bolts: SheetBolts; step: number }>();
  for (const step of sheet.steps)
    for (const bolts of step.bolts)
      if (!groups.has(bolts.groupId)) groups.set(bolts.groupId, { bolts, step: step.number });
  if (groups.size === 0) return null;
  return (
    <section>
      <h2>{t('jobs.paper.bolts')}</h2>
      <table className="paper-table">
        <thead>
          <tr>
            <th scope="col">{t('jobs.step-short')}</th>
            <th scope="col">{t('jobs.paper.group')}</th>
            <th scope="col">{t('jobs.paper.thread')}</th>
            <th scope="col">{t('jobs.paper.wrench')}</th>
            <th scope="col">{t('jobs.paper.torque')}</th>
          </tr>
        </thead>
        <tbody>
          {[...groups.values()].map(({ bolts, step }) => (
            <tr key={bolts.groupId}>
              <td>{step}</td>
              <td>{unitName(speech, machine, bolts.groupId)}</td>
              <td className="tight">
                {bolts.count} × {bolts.designation} {bolts.propertyClass ?? ''}
              </td>
              <td className="tight">
                {toolText(speech, {
                  kind: bolts.drive === 'socket-hex' ? 'hex-key' : 'socket',
                  size_m: bolts.tool_m,
                  drive: '',
                  extension_m: 0,
                })}
              </td>
              <td className="tight">
                {bolts.ownTorque_Nm === null ? (
                  <>
                    <Blank short /> {speech.symbol('torque')}
                  </>
                ) : (
                  <b>{quantity(bolts.ownTorque_Nm, 'torque')}</b>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Expected amplitude and rate in both directions, with lines for what is measured. */
export function AfterTable({ view }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const document = useApp((s) => s.document);
  const measured = useApp((s) => s.jobs.measured);
  if (document === null || !view.sheet.steps.some((s) => s.phase === 'test')) return null;
  const { directions } = jobVerdict(jobBase(document).study, measured);
  return (
    <section>
      <h2>{t('jobs.after.title')}</h2>
      <table className="paper-table">
        <thead>
          <tr>
            <th scope="col">{t('jobs.paper.direction')}</th>
            <th scope="col">{t('jobs.paper.expected')}</th>
            <th scope="col">{t('jobs.after.amplitude')}</th>
            <th scope="col">{t('jobs.after.rate')}</th>
          </tr>
        </thead>
        <tbody>
          {directions.map(({ direction, expected, measured: found }) => (
            <tr key={direction}>
              <td>{t(`jobs.direction.${direction}`)}</td>
              <td>
                {expected === null
                  ? t('job.verdict.not-expected')
                  : `${quantity(expected.amplitude_m, 'length-small', 3)}, ${rateText(speech, expected.vibrations_per_minute)}`}
              </td>
              <td>{found === null ? <Blank short /> : quantity(found.amplitude_m, 'length-small', 3)}</td>
              <td>{found === null ? <Blank short /> : rateText(speech, found.vibrations_per_minute)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="paper-small">{t('jobs.after.about')}</p>
    </section>
  );
}

export function Items({ view }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const { sheet, machine } = view;
  if (sheet.items.length === 0) return null;
  return (
    <section>
      <h2>{t('jobs.paper.items')}</h2>
      <ul className="paper-items-list">
        {sheet.items.map((item) => (
          <li key={item.kindId}>
            <b>{item.item}</b> {itemName(speech, machine, item.kindId)}
            {item.count > 1 && ` × ${item.count}`}
          </li>
        ))}
      </ul>
    </section>
  );
}

export function Sources({ view, sources }: Props & { readonly sources: SourceNumbers }) {
  const speech = useSpeech();
  const { t } = speech;
  return (
    <section>
      <h2>{t('jobs.paper.sources')}</h2>
      <p className="paper-small">{t('jobs.paper.sources-about')}</p>
      <ul className="paper-sources">
        {view.sheet.sources.map(({ source, calculations }) => (
          <li key={source.key}>
            <b>[{sources.get(source.key)}]</b> {speech.say(source)}{' '}
            <span className="paper-calc">({calculations.join(', ')})</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
