/** Said in place of the stage where there is no WebGL, over what is shown instead: everything else works without it. */
import type { ReactNode } from 'react';
import { useSpeech } from '../bind';

export function StageNotice({ children }: { readonly children?: ReactNode }) {
  const { t } = useSpeech();
  return (
    <div style={{ position: 'absolute', inset: 0, display: 'flex', flexDirection: 'column' }}>
      <p
        role="status"
        data-testid="stage-notice"
        style={{ margin: 0, padding: '0.5rem 1rem', font: '0.875rem/1.4 var(--font, sans-serif)' }}
      >
        {t('stage.no-webgl')}
      </p>
      <div style={{ position: 'relative', flex: '1 1 0', minHeight: 0 }}>{children}</div>
    </div>
  );
}
