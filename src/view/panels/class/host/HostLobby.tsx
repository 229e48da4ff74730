/** Before the first question: how to join, and who is there. */
import type { HostPage } from '../../../../core/classroom';
import { createClassCommands } from '../../../../store';
import { usePlaceCommands, useSpeech } from '../../../bind';
import { HowToJoin } from './HowToJoin';
import { SeatList } from './SeatList';

export function HostLobby({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const { view } = page;
  return (
    <>
      <h2>{view.settings.title === '' ? t('class.lobby-title') : view.settings.title}</h2>
      <HowToJoin page={page} />
      <section aria-labelledby="class-here">
        <h3 id="class-here">
          {t('class.here', {
            count: view.seats.filter((each) => each.here).length,
            seats: view.settings.seats,
          })}
        </h3>
        <SeatList page={page} frees={false} />
      </section>
      <div className="buttons">
        <button
          type="button"
          className="button act"
          onClick={() => room.order({ type: 'move', move: 'next' })}
        >
          {t('class.start', { count: view.list.length })}
        </button>
        <button type="button" className="button" onClick={() => room.order({ type: 'move', move: 'end' })}>
          {t('class.cancel')}
        </button>
      </div>
      <p className="small faint">{t('class.start-about')}</p>
    </>
  );
}
