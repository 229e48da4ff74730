/** Legends of the views that mark surfaces: who moves with whom, what shakes, oil and grease. */
import { type Machine, partOf } from '../../../core/machine';
import type { ViewPicture } from '../../../store';
import { useReducedMotion, useSpeech } from '../../bind';
import { FLUID_MARKS, MARKS, type MarkName } from '../../theme/marks';
import { inSentence, kindName } from '../common/names';
import { Facts } from './Facts';
import { Swatch } from './Swatch';

type PictureOf<V extends ViewPicture['view']> = Extract<ViewPicture, { view: V }>;

/** Names of kinds, once each, with how many of each there are. */
function useKindNames(machine: Machine): (partIds: readonly string[]) => string {
  const speech = useSpeech();
  return (partIds) => {
    const counts = new Map<string, number>();
    for (const id of partIds) {
      const { kind } = partOf(machine, id);
      counts.set(kind, (counts.get(kind) ?? 0) + 1);
    }
    const names = [...counts].map(([kind, count]) => {
      const name = inSentence(kindName(speech, machine, kind));
      return count === 1 ? name : speech.t('views.path.several', { name, count });
    });
    return new Intl.ListFormat(speech.language, { type: 'conjunction' }).format(names);
  };
}

interface RowProps {
  readonly mark: MarkName;
  readonly name: string;
  readonly count: number;
  readonly how: string;
}

function MarkRow({ mark, name, count, how }: RowProps) {
  const { t } = useSpeech();
  return (
    <li className="view-row">
      <Swatch mark={mark} />
      <div>
        <p>
          <strong>{name}</strong> <span className="mono small">{t('views.parts', { count })}</span>
          <span className="visually-hidden"> {t(`views.pattern.${MARKS[mark].pattern}`)}</span>
        </p>
        <p className="small">{how}</p>
      </div>
    </li>
  );
}

export function GroupsLegend({
  machine,
  picture,
}: {
  readonly machine: Machine;
  readonly picture: PictureOf<'moves'>;
}) {
  const { t } = useSpeech();
  const names = useKindNames(machine);
  return (
    <>
      <ul>
        {picture.groups.map(({ moves, partIds, shaking }) => (
          <MarkRow
            key={moves}
            mark={moves === 'rear-frame' ? 'frame' : moves}
            name={t(`views.moves.${moves}`)}
            count={partIds.length}
            how={t(`views.moves.${moves}.how`, { shaking })}
          />
        ))}
      </ul>
      <h3>{t('views.moves.meet')}</h3>
      <ul>
        {picture.meetings.map(({ between: [first, second], partIds }) => (
          <li key={`${first} ${second}`} className="small">
            <strong>
              {t('views.moves.pair', {
                first: t(`views.moves.${first}`),
                second: inSentence(t(`views.moves.${second}`)),
              })}
            </strong>
            {': '}
            {names(partIds)}
          </li>
        ))}
      </ul>
      <p className="small faint">{t('views.moves.note')}</p>
    </>
  );
}

export function ShakeLegend({ picture }: { readonly picture: PictureOf<'shakes'> }) {
  const { t, quantity, number } = useSpeech();
  const still = useReducedMotion();
  const { facts } = picture;
  return (
    <>
      {facts === null ? (
        <p className="small">{t('views.shakes.unknown')}</p>
      ) : (
        <>
          <p className="view-scale">{t('views.shakes.scale', { times: number(facts.times, 'plain') })}</p>
          <Facts
            rows={[
              [
                t('views.shakes.speed', { direction: t(`exciter.${facts.direction}`) }),
                quantity(facts.frequency_Hz, 'frequency'),
              ],
              [t('views.shakes.drum'), quantity(facts.drum_m, 'length-small', 3)],
              [t('views.shakes.frame'), quantity(facts.frame_m, 'length-small', 3)],
              [t('views.shakes.ground'), quantity(facts.soil_stiffness_N_m, 'stiffness')],
            ]}
          />
        </>
      )}
      <ul>
        <MarkRow
          mark="drum"
          name={t('views.shakes.inside')}
          count={picture.inside.length}
          how={t('views.shakes.inside.how')}
        />
        <MarkRow
          mark="isolator"
          name={t('views.shakes.isolators')}
          count={picture.isolators.length}
          how={t('views.shakes.isolators.how')}
        />
        <MarkRow
          mark="frame"
          name={t('views.shakes.outside')}
          count={picture.outside.length}
          how={t('views.shakes.outside.how')}
        />
      </ul>
      {facts !== null && still && <p className="small">{t('views.shakes.ends')}</p>}
      {facts !== null && <p className="small faint">{t('views.shakes.ground-note')}</p>}
    </>
  );
}

export function WettedLegend({
  machine,
  picture,
}: {
  readonly machine: Machine;
  readonly picture: PictureOf<'wetted'>;
}) {
  const { t, has, quantity } = useSpeech();
  const names = useKindNames(machine);
  const { fluids } = picture;
  if (fluids === null) return <p className="small">{t('views.wetted.searching')}</p>;
  if (fluids.length === 0) return <p className="small">{t('views.wetted.none')}</p>;
  return (
    <>
      <ul>
        {fluids.map(({ fluid, partIds, volume_m3 }, i) => {
          const word = has(`fluid.${fluid}`) ? t(`fluid.${fluid}`) : fluid;
          const name = word.charAt(0).toLocaleUpperCase() + word.slice(1);
          const fill =
            volume_m3 === null ? '' : `${t('views.wetted.volume')}: ${quantity(volume_m3, 'volume')}. `;
          return (
            <MarkRow
              key={fluid}
              mark={FLUID_MARKS[i % FLUID_MARKS.length]!}
              name={name}
              count={partIds.length}
              how={`${fill}${t('views.wetted.what')}: ${names(partIds)}.`}
            />
          );
        })}
      </ul>
      <p className="small faint">{t('views.wetted.note')}</p>
    </>
  );
}
