/** The ways to the places: links in a row where there is room, else in a menu that names where one is. */
import { addressOf } from '../../../store';
import { useApp, useSpeech } from '../../bind';
import { Menu } from '../common/Menu';
import { OPEN_PLACES } from './registry';

function Links() {
  const { t } = useSpeech();
  const here = useApp((s) => s.route.place);
  return (
    <ul className="place-links">
      {OPEN_PLACES.map((place) => (
        <li key={place}>
          <a href={addressOf({ place, path: [] })} aria-current={place === here ? 'page' : undefined}>
            {t(`places.${place}`)}
          </a>
        </li>
      ))}
    </ul>
  );
}

export function PlaceNav({ folded }: { readonly folded: boolean }) {
  const { t } = useSpeech();
  const here = useApp((s) => s.route.place);
  return (
    <nav className="place-nav" aria-label={t('places.title')}>
      {folded ? (
        <Menu name={t(`places.${here}`)} side="right" look="button" chosen={here}>
          <Links />
        </Menu>
      ) : (
        <Links />
      )}
    </nav>
  );
}
