/** Who sits where, and giving a number free. What anybody answered is not shown here. */
import type { HostPage } from '../../../../core/classroom';
import { useSpeech } from '../../../bind';
import { HowToJoin } from './HowToJoin';
import { SeatList } from './SeatList';

export function HostSeats({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  return (
    <>
      <h2>{t('class.tab.seats')}</h2>
      <SeatList page={page} frees />
      <p className="small faint">{t('class.free-about')}</p>
      <HowToJoin page={page} />
    </>
  );
}
