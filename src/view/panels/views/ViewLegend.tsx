/** Legend of a view of the stage: what its marks, lines and numbers mean, and the same in words for those who do not see it. */
import { useEffect, useState } from 'react';
import { createViewCommands, selectStageView, selectViewPicture, type StageView } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { GroupsLegend, ShakeLegend, WettedLegend } from './MarkLegends';
import { PathLegend } from './PathLegend';
import './views.css';

interface Props {
  readonly view: StageView;
  readonly onSheet: boolean;
}

export default function ViewLegend({ view, onSheet }: Props) {
  const { t } = useSpeech();
  const commands = useCommands();
  const { findWetted } = usePlaceCommands(createViewCommands);
  const machine = useApp((s) => s.document?.machine);
  const shown = useApp(selectStageView);
  const picture = useApp(selectViewPicture);
  const [folded, setFolded] = useState(false);
  useEffect(() => {
    if (view === 'wetted') findWetted();
  }, [view, findWetted, machine]);
  const name = t(`views.${view}`);
  return (
    <section
      className={`view-legend ${onSheet ? 'on-sheet' : 'over-stage'}`}
      aria-label={t('views.legend', { name })}
      data-testid="view-legend"
    >
      <header>
        <h2>{name}</h2>
        {!onSheet && (
          <button
            type="button"
            className="button plain icon"
            aria-label={t(folded ? 'views.unfold' : 'views.fold')}
            aria-expanded={!folded}
            onClick={() => setFolded(!folded)}
          >
            <Icon name={folded ? 'down' : 'up'} />
          </button>
        )}
        <button
          type="button"
          className="button plain icon"
          aria-label={t('views.close')}
          onClick={() => commands.showView(null)}
        >
          <Icon name="close" />
        </button>
      </header>
      {!folded && (
        <div className="view-legend-body" tabIndex={0} role="group" aria-label={name}>
          {shown === null && <p className="small">{t('views.busy')}</p>}
          {machine !== undefined && picture !== null && (
            <>
              {picture.view === 'moves' && <GroupsLegend machine={machine} picture={picture} />}
              {picture.view === 'shakes' && <ShakeLegend picture={picture} />}
              {picture.view === 'wetted' && <WettedLegend machine={machine} picture={picture} />}
              {(picture.view === 'load' || picture.view === 'torque') && (
                <PathLegend machine={machine} picture={picture} />
              )}
            </>
          )}
        </div>
      )}
    </section>
  );
}
