/** The legend of the chosen view, over the stage or on a phone's sheet; its code is fetched when a view is chosen first. */
import { lazy, Suspense } from 'react';
import { useApp, useSpeech } from '../../bind';

const ViewLegend = lazy(() => import('./ViewLegend'));

export function StageLegend({ onSheet = false }: { readonly onSheet?: boolean }) {
  const { t } = useSpeech();
  const view = useApp((s) => s.views.show);
  if (view === null) return null;
  return (
    <Suspense fallback={<p className="visually-hidden">{t('views.loading')}</p>}>
      <ViewLegend view={view} onSheet={onSheet} />
    </Suspense>
  );
}
