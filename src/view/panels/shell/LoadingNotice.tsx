/** Over the empty sheet: how far the machine has come, or what to do when it did not. */
import { useApp, useCommands, useSpeech } from '../../bind';

export function LoadingNotice() {
  const { t, quantity } = useSpeech();
  const commands = useCommands();
  const loading = useApp((s) => s.loading);
  const empty = useApp((s) => s.document === null);
  if (!empty) return null;
  if (loading.phase === 'failed')
    return (
      <div className="notice-card" role="alert">
        <h2>{t('loading.failed')}</h2>
        <p>{t('loading.failed-do')}</p>
        <button type="button" className="button act" onClick={() => void commands.start()}>
          {t('loading.again')}
        </button>
      </div>
    );
  const share = loading.phase === 'fetch' ? loading.share : 0;
  return (
    <div className="notice-card" role="status">
      <h2>{t('loading.title')}</h2>
      <p>{t('loading.intro')}</p>
      <progress value={share} max={1} aria-label={t('loading.fetch')} />
      <p className="small mono">
        {t('loading.fetch')} {quantity(share, 'share', 3)}
      </p>
    </div>
  );
}
