/** What a step shows of a study beside its text: the joint's sliders, or the slope with its four ways and circuit. */
import type { LessonStep } from '../../../core/lessons';
import { createStudyCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { Circuit } from '../studies/Circuit';
import { QuantityField } from '../studies/QuantityField';
import '../studies/studies.css';
import { selectSlope } from './slope';

const DEGREE = Math.PI / 180;

export default function StudyHere({ step }: { readonly step: LessonStep }) {
  const { joint, slope } = step.stage;
  if (slope !== undefined) return <SlopeHere />;
  return joint === undefined ? null : <JointHere />;
}

function JointHere() {
  const { t } = useSpeech();
  const { change, show } = usePlaceCommands(createStudyCommands);
  const articulation = useApp((s) => s.document?.machine.articulation);
  const set = useApp((s) => s.studies.identify);
  if (articulation === undefined) return null;
  const { steering_limit_deg, oscillation_limit_deg } = articulation;
  const field = (key: 'steering_deg' | 'oscillation_deg', label: string, limit_deg: number) => (
    <QuantityField
      label={label}
      value={set[key] * DEGREE}
      min={-limit_deg * DEGREE}
      max={limit_deg * DEGREE}
      step={DEGREE}
      quantity="angle"
      onChange={(next) => {
        const bent = { ...set, [key]: next / DEGREE };
        change('identify', bent);
        show({ kind: 'joint', ...bent });
      }}
    />
  );
  return (
    <section className="lesson-study" aria-label={t('studies.joint')}>
      {field('steering_deg', t('studies.steering'), steering_limit_deg)}
      {field('oscillation_deg', t('studies.oscillation'), oscillation_limit_deg)}
    </section>
  );
}

function SlopeHere() {
  const { t, quantity } = useSpeech();
  const { change } = usePlaceCommands(createStudyCommands);
  const slope = useApp(selectSlope);
  const set = useApp((s) => s.studies['two-speed']);
  if (slope === null) return <p className="limit">{t('studies.no-drive')}</p>;
  const { study, now, relief_Pa } = slope;
  return (
    <section className="lesson-study" aria-label={t('studies.name.two-speed')}>
      <p className="small">
        {t('lessons.slope-given', {
          ground: t(`studies.ground.${set.ground}`),
          grade: quantity(set.grade_percent, 'percent'),
          pull: quantity(now.traction.pull_needed_N, 'force-large', 3),
          relief: quantity(relief_Pa, 'pressure'),
        })}
      </p>
      <fieldset className="four-ways">
        <legend className="visually-hidden">{t('studies.four-ways')}</legend>
        {study.combinations.map((each) => (
          <label
            key={`${each.drum_range}-${each.axle_range}`}
            className={each === now ? 'now' : ''}
            data-way={`${each.drum_range}-${each.axle_range}`}
          >
            <input
              type="radio"
              name="lesson-way"
              checked={each === now}
              onChange={() =>
                change('two-speed', { drum_range: each.drum_range, axle_range: each.axle_range })
              }
            />
            <span>
              {t('lessons.slope-way', {
                drum: t(`studies.range-${each.drum_range}`),
                axle: t(`studies.range-${each.axle_range}`),
              })}
            </span>
          </label>
        ))}
      </fieldset>
      <Circuit study={study} now={now} relief_Pa={relief_Pa} />
      <table className="lesson-numbers">
        <caption className="visually-hidden">{t('studies.result')}</caption>
        <tbody>
          {(
            [
              ['lessons.slope-needs', now.traction.pressure_needed_Pa],
              ['lessons.slope-drum', now.drum_slip_Pa],
              ['lessons.slope-axle', now.axle_slip_Pa],
            ] as const
          ).map(([key, Pa]) => (
            <tr key={key}>
              <th scope="row">{t(key)}</th>
              <td className="mono">{quantity(Pa, 'pressure')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
