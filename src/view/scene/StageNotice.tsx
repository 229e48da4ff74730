/** Said in place of the stage where there is no WebGL: everything else of the app works without it. */
import { useSpeech } from '../bind';

export function StageNotice() {
  const { t } = useSpeech();
  return (
    <div role="status" data-testid="stage-notice" className="stage-notice">
      <p
        style={{
          maxWidth: '34rem',
          margin: '20vh auto 0',
          padding: '0 2rem',
          font: '1rem/1.5 var(--font, sans-serif)',
        }}
      >
        {t('stage.no-webgl')}
      </p>
    </div>
  );
}
