/** Says that a newer version waits; nothing loads anew before a person says so. */
import { useState } from 'react';
import { useApp, useSpeech } from '../view/bind';
import { takeUpdate } from './offline';

export function UpdateNotice() {
  const { t } = useSpeech();
  const waits = useApp((s) => s.offline === 'update');
  const [later, setLater] = useState(false);
  if (!waits || later) return null;
  return (
    <div className="update-notice" role="status">
      <p>{t('update.waits')}</p>
      <button type="button" className="button act" onClick={takeUpdate}>
        {t('update.use')}
      </button>
      <button type="button" className="button" onClick={() => setLater(true)}>
        {t('update.later')}
      </button>
    </div>
  );
}
