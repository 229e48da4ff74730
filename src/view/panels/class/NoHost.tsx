/** Said where the page comes from a plain server: what a class needs. */
import { useSpeech } from '../../bind';

export function NoHost() {
  const { t } = useSpeech();
  return (
    <div className="panel-body">
      <h2>{t('class.title')}</h2>
      <p>{t('class.no-host')}</p>
      <p className="mono class-command">
        <code>npm run classroom</code>
      </p>
      <p>{t('class.no-host-then')}</p>
      <p className="small faint">{t('class.no-host-private')}</p>
    </div>
  );
}
