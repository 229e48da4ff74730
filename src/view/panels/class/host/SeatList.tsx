/** Numbers that have joined, and whether their phone is connected. */
import type { HostPage } from '../../../../core/classroom';
import { createClassCommands } from '../../../../store';
import { usePlaceCommands, useSpeech } from '../../../bind';

export function SeatList({ page, frees }: { readonly page: HostPage; readonly frees: boolean }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const { seats } = page.view;
  if (seats.length === 0) return <p className="faint">{t('class.nobody')}</p>;
  return (
    <ul className={frees ? 'class-seats wide' : 'class-seats'}>
      {seats.map(({ seat, name, here }) => (
        <li key={seat} data-here={here}>
          <span className="mono">{seat}</span>
          {name !== null && <span> {name}</span>}
          {!here && <span className="small"> {t('class.away')}</span>}
          {frees && (
            <button
              type="button"
              className="button narrow"
              aria-label={t('class.free-number', { number: seat })}
              onClick={() => room.order({ type: 'free', seat })}
            >
              {t('class.free')}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}
