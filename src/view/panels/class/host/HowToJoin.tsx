/** How phones get in: the square code, the address and the class code. */
import type { HostPage } from '../../../../core/classroom';
import { useSpeech } from '../../../bind';
import { QrCode } from './QrCode';

export function HowToJoin({ page }: { readonly page: HostPage }) {
  const { t } = useSpeech();
  const [address = ''] = page.addresses;
  return (
    <section className="class-how" aria-labelledby="class-how">
      <QrCode text={`${address}#/class/${page.code}`} name={t('class.qr', { address })} />
      <div>
        <h3 id="class-how">{t('class.how')}</h3>
        <ol>
          <li>{t('class.how-network')}</li>
          <li>
            {t('class.how-open')} <strong className="mono">{`${address}#/class`}</strong>
          </li>
          <li>
            {t('class.how-code')} <strong className="mono class-code">{page.code}</strong>
          </li>
        </ol>
        {page.addresses.length > 1 && (
          <p className="small faint">{t('class.other-addresses', { list: page.addresses.slice(1) })}</p>
        )}
      </div>
    </section>
  );
}
