/** Legend of load path and torque path: the parts in order, and the numbers that are known. */
import { type Machine, partOf } from '../../../core/machine';
import type { ViewPicture, Way } from '../../../store';
import { useCommands, useSpeech } from '../../bind';
import { kindName, partName } from '../common/names';
import { Facts } from './Facts';

type PathPicture = Extract<ViewPicture, { view: 'load' | 'torque' }>;

function useStageName(machine: Machine): (partIds: readonly string[]) => string {
  const speech = useSpeech();
  return (partIds) => {
    if (partIds.length === 1) return partName(speech, machine, partIds[0]!);
    const kinds = [...new Set(partIds.map((id) => partOf(machine, id).kind))];
    const names = kinds.map((kind) => {
      const count = partIds.filter((id) => partOf(machine, id).kind === kind).length;
      const name = kindName(speech, machine, kind);
      return count === 1 ? name : speech.t('views.path.several', { name, count });
    });
    return new Intl.ListFormat(speech.language, { type: 'conjunction' }).format(names);
  };
}

export function PathLegend({
  machine,
  picture,
}: {
  readonly machine: Machine;
  readonly picture: PathPicture;
}) {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const stageName = useStageName(machine);

  const numbers = (way: Way): readonly (readonly [string, string])[] => {
    if (picture.view === 'torque') {
      if (picture.drive === null) return [];
      return [
        [t('views.torque.most'), quantity(picture.drive.torque_Nm, 'torque')],
        [t('views.torque.relief'), quantity(picture.drive.relief_Pa, 'pressure')],
        ...picture.shared.map(
          ({ partIds, force_N }) =>
            [
              t('views.torque.share', {
                name: kindName(speech, machine, partOf(machine, partIds[0]!).kind),
                count: partIds.length,
              }),
              quantity(force_N, 'force-large'),
            ] as const,
        ),
      ];
    }
    const load = picture.loads?.ends.find(({ end }) => end === way.end);
    if (load === undefined) return [];
    return [
      [t('views.load.frame'), quantity(load.force_N, 'force-large')],
      [t('views.load.each', { count: load.isolators.length }), quantity(load.each_N, 'force-large')],
    ];
  };
  return (
    <>
      {picture.ways.map((way) => (
        <section key={way.end ?? 'only'}>
          <h3>{t(picture.view === 'torque' ? 'views.torque.way' : `views.load.${way.end ?? 'only'}`)}</h3>
          {way.path === null ? (
            <p className="small view-broken">{t('views.path.broken')}</p>
          ) : (
            <>
              <ol className="view-stages">
                {way.path.stages.map((stage) => (
                  <li key={stage[0]}>
                    <button type="button" className="button plain" onClick={() => commands.select(stage[0]!)}>
                      {stageName(stage)}
                    </button>
                  </li>
                ))}
                {picture.view === 'load' && <li className="view-ground">{t('views.load.ground-end')}</li>}
              </ol>
              <Facts rows={numbers(way)} />
            </>
          )}
        </section>
      ))}
      {picture.view === 'load' && picture.loads !== null && (
        <Facts rows={[[t('views.load.ground'), quantity(picture.loads.ground_N, 'force-large')]]} />
      )}
      <p className="small faint">{t('views.path.arrow')}</p>
      <p className="small faint">{t(`views.${picture.view}.note`)}</p>
    </>
  );
}
