/** Sending to a school's learning record store: what it needs to know, how far it is, what is wrong. */
import { useEffect, useId, useState } from 'react';
import { DEFAULT_MASTERY } from '../../../core/records';
import { createDeliveryCommands, type DeliverySettings } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';

const EMPTY: DeliverySettings = {
  endpoint: '',
  user: '',
  secret: '',
  keepSecret: false,
  homePage: '',
  name: '',
  mastery: DEFAULT_MASTERY,
};
const FIELDS = ['endpoint', 'user', 'secret', 'homePage', 'name'] as const;
const KEYS = {
  endpoint: 'endpoint',
  user: 'user',
  secret: 'secret',
  homePage: 'home',
  name: 'name',
} as const;
const TYPES = { endpoint: 'url', user: 'text', secret: 'password', homePage: 'url', name: 'text' } as const;

/** Any absolute address; http serves a store on this device or in the school's own network. */
const isAddress = (text: string): boolean => /^https?:\/\/[^\s/]+\S*$/.test(text);

export function RecordStore() {
  const { t } = useSpeech();
  const delivery = usePlaceCommands(createDeliveryCommands);
  const settings = useApp((s) => s.delivery.settings);
  useEffect(() => void delivery.load(), [delivery]);
  return (
    <details className="records-more" open={settings !== null ? true : undefined}>
      <summary>{t('delivery.title')}</summary>
      {settings !== null && <Standing />}
      {/* Begins anew when settings were read or forgotten. */}
      <StoreForm key={settings?.endpoint ?? ''} known={settings} />
    </details>
  );
}

function StoreForm({ known }: { readonly known: DeliverySettings | null }) {
  const { t } = useSpeech();
  const delivery = usePlaceCommands(createDeliveryCommands);
  const id = useId();
  const [typed, setTyped] = useState<DeliverySettings>(known ?? EMPTY);
  const [percent, setPercent] = useState(String(Math.round((known ?? EMPTY).mastery * 100)));
  const change = (part: Partial<DeliverySettings>): void => setTyped({ ...typed, ...part });
  const mastery = Number(percent) / 100;
  const complete =
    FIELDS.every((name) => typed[name].trim() !== '') &&
    isAddress(typed.endpoint.trim()) &&
    isAddress(typed.homePage.trim()) &&
    mastery >= 0 &&
    mastery <= 1;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (!complete) return;
        const [endpoint, homePage] = [typed.endpoint.trim(), typed.homePage.trim()];
        void delivery.use({ ...typed, endpoint, homePage, name: typed.name.trim(), mastery });
      }}
    >
      <p className="small">{t('delivery.about')}</p>
      {FIELDS.map((name) => (
        <div key={name} className="records-field">
          <label htmlFor={`${id}-${name}`} className="field-name">
            {t(`delivery.${KEYS[name]}`)}
          </label>
          <input
            id={`${id}-${name}`}
            type={TYPES[name]}
            className="text-field"
            autoComplete="off"
            placeholder={TYPES[name] === 'url' ? 'https://' : undefined}
            value={typed[name]}
            onChange={(event) => change({ [name]: event.currentTarget.value })}
          />
        </div>
      ))}
      <label className="check">
        <input
          type="checkbox"
          checked={typed.keepSecret}
          onChange={(event) => change({ keepSecret: event.currentTarget.checked })}
        />
        <span>{t('delivery.keep-secret')}</span>
      </label>
      <div className="records-field">
        <label htmlFor={`${id}-mastery`} className="field-name">
          {t('delivery.mastery')}
        </label>
        <input
          id={`${id}-mastery`}
          className="text-field"
          inputMode="numeric"
          value={percent}
          onChange={(event) => setPercent(event.currentTarget.value)}
        />
      </div>
      <button type="submit" className="button" disabled={!complete}>
        {t('delivery.start')}
      </button>
    </form>
  );
}

function Standing() {
  const { t, language } = useSpeech();
  const delivery = usePlaceCommands(createDeliveryCommands);
  const { phase, queued, sent, refused, trouble, next_ms } = useApp((s) => s.delivery);
  const time =
    next_ms === null ? '' : new Intl.DateTimeFormat(language, { timeStyle: 'medium' }).format(next_ms);
  return (
    <div className="records-notice" role="status" data-delivery={phase}>
      {trouble !== null && <p>{t(trouble.key, { origin: window.location.origin })}</p>}
      {trouble !== null && trouble.says !== '' && (
        <p className="small faint">{t('delivery.says', { says: trouble.says })}</p>
      )}
      <p>
        {t(`delivery.phase.${phase}`, { time })} {t('delivery.counts', { sent, queued, refused })}
      </p>
      <div className="buttons">
        <button
          type="button"
          className="button"
          disabled={phase === 'sending'}
          onClick={() => void delivery.deliver()}
        >
          {t('delivery.now')}
        </button>
        <button type="button" className="button plain" onClick={() => delivery.stop()}>
          {t('delivery.stop')}
        </button>
      </div>
    </div>
  );
}
