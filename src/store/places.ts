/** Places: what a person has come to do. Each has an address (`#/jobs/right-exciter-bearing`) that can be linked. */

export const PLACES = [
  'bench',
  'practice',
  'jobs',
  'studies',
  'faults',
  'lessons',
  'quiz',
  'class',
  'records',
] as const;
export type Place = (typeof PLACES)[number];

/** A place and what is open within it, outermost first: `{ place: 'lessons', path: ['exciter', '3'] }`. */
export interface Route {
  readonly place: Place;
  readonly path: readonly string[];
}

export const BENCH: Route = { place: 'bench', path: [] };

const isPlace = (name: string | undefined): name is Place => PLACES.some((place) => place === name);

/** The route of an address's hash; null when it names no place (another anchor of the page). */
export function parseAddress(hash: string): Route | null {
  if (!hash.startsWith('#/')) return null;
  const [place, ...path] = hash
    .slice(2)
    .split('/')
    .filter((piece) => piece !== '')
    .map((piece) => {
      try {
        return decodeURIComponent(piece);
      } catch {
        return piece;
      }
    });
  return isPlace(place) ? { place, path } : null;
}

/** The hash of a route. */
export const addressOf = ({ place, path }: Route): string =>
  `#/${[place, ...path].map(encodeURIComponent).join('/')}`;

export const sameRoute = (a: Route, b: Route): boolean => addressOf(a) === addressOf(b);
