/** Opens what can be saved of the stage; its code is fetched when it is opened first. */
import { lazy, Suspense, useState } from 'react';
import { useSpeech } from '../../bind';
import { Menu } from '../common/Menu';

const ShareMenu = lazy(() => import('../exports/ShareMenu'));

export function ShareTool() {
  const { t } = useSpeech();
  const [opened, setOpened] = useState(false);
  return (
    <Menu name={t('export.open')} icon="save" side="right" onOpen={() => setOpened(true)}>
      {opened && (
        <Suspense fallback={<p className="small">{t('export.loading')}</p>}>
          <ShareMenu />
        </Suspense>
      )}
    </Menu>
  );
}
