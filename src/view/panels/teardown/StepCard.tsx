/** The current step in full: what comes off, why it can and must now, its mass, tools, supports and cautions. */
import type { Step } from '../../../core/assembly';
import { useApp, useCommands, useSpeech } from '../../bind';
import { ItemBalloon } from '../common/ItemBalloon';
import { inSentence, sayAbout, unitName } from '../common/names';
import { Signal } from '../common/Signal';
import { bySeverity, signalOf } from './cautions';
import { alikeCount, stepItem, stepParts, stepTitle, toolText, workTime } from './step-words';

export function StepCard({ step }: { readonly step: Step | null }) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const reverse = useApp((s) => s.teardown.reverse);
  if (document === null) return null;
  const { machine, teardown } = document;
  if (step === null) {
    const total_s = teardown.steps.reduce((sum, each) => sum + each.time_s, 0);
    return (
      <div className="step-card idle">
        <div>
          <h3>{t('teardown.assembled')}</h3>
          <p>{t('teardown.begin', { steps: teardown.steps.length })}</p>
        </div>
        <p className="faint small">{t('teardown.time', { time: workTime(speech, total_s) })}</p>
        {!teardown.orderExists && <p className="limit small">{t('teardown.stuck')}</p>}
      </div>
    );
  }
  const parts = stepParts(machine, step);
  const alike = alikeCount(machine, step);
  const item = stepItem(machine, step);
  const cautions = bySeverity(step.cautions);
  return (
    <div className="step-card">
      <div className="step-what">
        <p className="label">
          {t(reverse ? 'teardown.step-back-of' : 'teardown.step-of', {
            step: step.index + 1,
            steps: teardown.steps.length,
          })}
        </p>
        <h3 className="step-title">
          {item !== null && <ItemBalloon item={item} strong />}
          <span>
            {stepTitle(speech, machine, step)}
            {alike > 1 && <span className="faint"> × {alike}</span>}
          </span>
        </h3>
        <dl className="step-facts">
          {step.mass_kg > 0 && (
            <div>
              <dt>{t('teardown.mass')}</dt>
              <dd className="mono">{quantity(step.mass_kg, 'mass')}</dd>
            </div>
          )}
          <div>
            <dt>{t('teardown.work-time')}</dt>
            <dd className="mono">{workTime(speech, step.time_s)}</dd>
          </div>
          {step.fromIds.length > 0 && (
            <div>
              <dt>{t('teardown.on-bench')}</dt>
              <dd>{unitName(speech, machine, step.fromIds[0]!)}</dd>
            </div>
          )}
        </dl>
        {parts[0] !== undefined && (
          <button type="button" className="link" onClick={() => commands.select(parts[0]!)}>
            {t('teardown.open-card')}
          </button>
        )}
      </div>
      <div className="step-why">
        <h4 className="label">{t('teardown.why')}</h4>
        <ul>
          {step.why.map((why, i) => (
            <li key={i}>{sayAbout(speech, machine, why)}</li>
          ))}
        </ul>
      </div>
      <div className="step-tools">
        <h4 className="label">{t('teardown.tools')}</h4>
        <ul>
          {step.tools.length === 0 && <li>{t('tool.hand')}</li>}
          {step.tools.map((tool, i) => (
            <li key={i}>{toolText(speech, tool)}</li>
          ))}
        </ul>
        {step.supports.length > 0 && (
          <>
            <h4 className="label">{t('teardown.supports')}</h4>
            <ul>
              {step.supports.map((support, i) => (
                <li key={i}>
                  {t(`support.${support.kind}`, {
                    what: inSentence(unitName(speech, machine, support.what)),
                  })}
                  {support.force_N > 0 && (
                    <>
                      {' '}
                      <span className="mono">{quantity(support.force_N, 'force-large')}</span>
                    </>
                  )}
                  <span className="row-note">{sayAbout(speech, machine, support.why)}</span>
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
      {cautions.length > 0 && (
        <div className="step-cautions">
          {cautions.map((caution) => (
            <Signal key={caution} word={signalOf(caution)}>
              <p>{t(`caution.${caution}`)}</p>
            </Signal>
          ))}
        </div>
      )}
    </div>
  );
}
