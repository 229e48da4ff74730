/** What a place holds, waited for; begins at its top whenever something else is opened in it. */
import { Suspense, useEffect, useRef } from 'react';
import { useApp, useSpeech } from '../../bind';
import { Boundary } from '../shell/Boundary';
import { PLACE_ENTRIES } from './registry';

export function PlaceContent() {
  const { t } = useSpeech();
  const { place, path } = useApp((s) => s.route);
  const box = useRef<HTMLDivElement>(null);
  const inner = path.join('/');
  useEffect(() => {
    box.current?.scrollTo?.({ top: 0 });
  }, [place, inner]);
  const entry = PLACE_ENTRIES[place];
  if (entry === undefined) return null;
  const Content = entry.content;
  return (
    <div
      className="place-body"
      data-place={place}
      ref={box}
      tabIndex={0}
      role="region"
      aria-label={t(`places.${place}`)}
    >
      <Boundary key={place} words="place-fault">
        <Suspense fallback={<p className="place-wait">{t('places.wait')}</p>}>
          <Content />
        </Suspense>
      </Boundary>
    </div>
  );
}
