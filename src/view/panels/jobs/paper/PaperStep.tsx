/** A step on paper: box, number, cautions before the words, lift, tools, numbers with their source, blanks, signature. */
import { judgeField, type SheetCaution, type SheetField, type SheetStep } from '../../../../core/jobs';
import { useSpeech } from '../../../bind';
import { inSentence, sayAbout, unitName } from '../../common/names';
import { toolText } from '../../teardown/step-words';
import {
  asksManual,
  fieldLabel,
  fieldSymbol,
  itemName,
  liftName,
  limitText,
  numberText,
  ownText,
  stepText,
  valueText,
} from '../job-words';
import type { JobView } from '../use-job';
import { Blank, Box, Caution, CautionsAgain } from './marks';
import type { SourceNumbers } from './source-numbers';

interface Props {
  readonly view: JobView;
  readonly step: SheetStep;
  readonly picture: number | null;
  readonly sources: SourceNumbers;
}

/** Angle whose pull stands at the step; the list of lifts has the others. */
const ANGLE_SHOWN_DEG = 60;

export function PaperStep({ view, step, picture, sources }: Props) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const { machine, progress } = view;
  const tools = step.tools.filter((tool) => tool.kind !== 'hand');
  const leg = step.lift?.legs.find((l) => l.angle_deg === ANGLE_SHOWN_DEG);
  const signed = progress?.signed[step.id];
  const note = progress?.notes[step.id];
  const { fresh, again } = saidBefore(view.sheet.steps, step);
  return (
    <div className={step.hold ? 'paper-step hold' : 'paper-step'}>
      <div className="paper-tick">
        <Box ticked={progress?.done.includes(step.id) === true} />
        <b>{step.number}</b>
      </div>
      <div className="paper-body">
        {step.hold && <p className="paper-hold">{t('jobs.hold')}</p>}
        {[...again].map(([number, cautions]) => (
          <CautionsAgain key={number} step={number} cautions={cautions} />
        ))}
        {fresh.map((caution, i) => (
          <Caution key={i} caution={caution} />
        ))}
        <p className="paper-do">{stepText(speech, view, step)}</p>
        {step.whyText !== null && <p className="paper-why">{ownText(speech, step.whyText)}</p>}
        {step.supports.map((support, i) => (
          <p key={i}>
            <b>{t(step.action === 'unsupport' ? 'jobs.take-away' : 'jobs.supports')}:</b>{' '}
            {t(`support.${support.kind}`, { what: inSentence(unitName(speech, machine, support.what)) })}
            {support.force_N > 0 && `, ${quantity(support.force_N, 'force-large')}`}
          </p>
        ))}
        {step.lift !== null && (
          <p>
            <b>{t('jobs.lift')}:</b> {liftName(speech, view, step.lift)},{' '}
            {quantity(step.lift.mass_kg, 'mass')} {t(step.lift.byHand ? 'jobs.by-hand' : 'jobs.by-hoist')}
            {leg !== undefined &&
              ` ${t('jobs.paper.leg', { angle: leg.angle_deg, pull: quantity(leg.tension_N, 'force-large') })}`}
          </p>
        )}
        <p className="paper-small">
          {picture !== null &&
            `${t(step.phase === 'together' ? 'jobs.paper.see-back' : 'jobs.paper.see', { picture })} `}
          {step.balloons.length > 0 && (
            <>
              <b>{t('jobs.paper.parts')}:</b>{' '}
              {step.balloons
                .map(
                  (b) =>
                    `${b.item} ${inSentence(itemName(speech, machine, b.kindId))}${b.partIds.length > 1 ? ` × ${b.partIds.length}` : ''}`,
                )
                .join(', ')}
              .{' '}
            </>
          )}
          {tools.length > 0 && (
            <>
              <b>{t('jobs.tools')}:</b> {tools.map((tool) => toolText(speech, tool)).join(', ')}.{' '}
            </>
          )}
          {step.people > 1 && t('jobs.people', { count: step.people })}
        </p>
        {step.bolts.map((bolts) => (
          <p key={bolts.groupId} className="paper-small">
            <b>{unitName(speech, machine, bolts.groupId)}:</b>{' '}
            {bolts.order.length > 0 &&
              `${t(bolts.perPart === null ? 'jobs.bolt-order' : 'jobs.bolt-order-each')} ${bolts.order.join(' – ')}. `}
            {t('jobs.bolt-passes', { shares: bolts.stages.map((s) => quantity(s, 'share')).join(', ') })}
          </p>
        ))}
        {step.numbers.length > 0 && (
          <table className="paper-numbers">
            <tbody>
              {step.numbers.map((n) => (
                <tr key={n.id}>
                  <th scope="row">{sayAbout(speech, machine, n.label)}</th>
                  <td>
                    {n.value === null && n.verdict !== undefined ? <Blank short /> : numberText(speech, n)}
                    {n.verdict !== undefined &&
                      n.verdict !== 'unknown' &&
                      ` ${t(`jobs.verdict.${n.verdict}`)}`}
                  </td>
                  <td className="ref">[{sources.get(n.source.key) ?? '–'}]</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        {step.fields.map((field) => (
          <PaperField key={field.id} view={view} field={field} />
        ))}
        {note !== undefined && (
          <p>
            <b>{t('jobs.note')}:</b> {note}
          </p>
        )}
        {signed !== undefined && (
          <p>
            <b>{t('jobs.sign')}:</b> {signed}
          </p>
        )}
        {step.hold && (
          <p className="paper-sign">
            {t('jobs.paper.sign')} <Blank /> {t('jobs.paper.date')} <Blank short />
          </p>
        )}
      </div>
    </div>
  );
}

/** Steps back within which a caution's words need not be printed again. */
const NEAR = 4;

/** Cautions to print in full, and those whose words stand in full at one of the few steps before, by that step. */
function saidBefore(
  steps: readonly SheetStep[],
  step: SheetStep,
): { readonly fresh: readonly SheetCaution[]; readonly again: ReadonlyMap<number, readonly SheetCaution[]> } {
  const fresh: SheetCaution[] = [];
  const again = new Map<number, SheetCaution[]>();
  for (const caution of step.cautions) {
    const at = step.hold ? undefined : fullAt(steps, step, caution);
    if (at === undefined) fresh.push(caution);
    else again.set(at, [...(again.get(at) ?? []), caution]);
  }
  return { fresh, again };
}

/** The near step that prints a caution in full: hold points always do, others where none near before them does. */
function fullAt(steps: readonly SheetStep[], step: SheetStep, caution: SheetCaution): number | undefined {
  if (caution.id === null) return undefined;
  const near = steps.slice(Math.max(0, step.number - 1 - NEAR), step.number - 1);
  return near.findLast(
    (s) =>
      s.phase === step.phase &&
      s.cautions.some((c) => c.id === caution.id) &&
      (s.hold || fullAt(steps, s, caution) === undefined),
  )?.number;
}

/** What was entered, else a line to write on; beside it the limits, and a line for the manual's where they are asked for. */
function PaperField({ view, field }: { readonly view: JobView; readonly field: SheetField }) {
  const speech = useSpeech();
  const { t } = speech;
  const value = view.progress?.values[field.id];
  const label = fieldLabel(speech, view.machine, field);
  const limits = limitText(speech, field);
  if (field.type === 'check')
    return (
      <p className="paper-field">
        <Box ticked={value === true} /> {label}
      </p>
    );
  if (field.type === 'choice')
    return (
      <p className="paper-field">
        {label}:{' '}
        {field.choices.map((choice) => (
          <span key={choice.id} className="paper-choice">
            <Box ticked={value === choice.id} /> {ownText(speech, choice.label)}{' '}
          </span>
        ))}
      </p>
    );
  const bad = judgeField(field, value) === 'bad';
  return (
    <p className="paper-field">
      {label}:{' '}
      {value === undefined ? (
        <>
          <Blank short={field.type === 'number'} /> {fieldSymbol(speech, field)}
        </>
      ) : (
        <b>{valueText(speech, field, value)}</b>
      )}
      {bad && <b> {t('jobs.verdict.bad')}</b>}
      {limits !== null && <span className="paper-limits"> ({limits})</span>}
      {field.fromManual && limits !== null && (
        <span className="paper-limits">
          {' '}
          {t('jobs.paper.manual-limits')} <Blank short />
        </span>
      )}
      {asksManual(field) && limits === null && value === undefined && (
        <span className="paper-limits"> {t('jobs.paper.manual')}</span>
      )}
    </p>
  );
}
