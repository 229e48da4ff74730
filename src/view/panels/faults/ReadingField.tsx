/** One measurement to enter: a number with its error in the person's units, or what was seen. */
import { useId, useState } from 'react';
import type { Measurement, NumericMeasurement } from '../../../core/faults';
import { fromShown, toShown } from '../../../core/kernel';
import type { EnteredReading } from '../../../store';
import { useSpeech } from '../../bind';
import { measureName, quantityOf } from './fault-words';

interface Props {
  readonly measurement: Measurement;
  readonly reading: EnteredReading | undefined;
  readonly onChange: (reading: EnteredReading | null) => void;
}

export function ReadingField(props: Props) {
  const { measurement: m } = props;
  const speech = useSpeech();
  const { t } = speech;
  const id = useId();
  const name = measureName(speech, m.id);
  return (
    <div className="reading" data-measurement={m.id}>
      <div className="fault-line">
        <label htmlFor={id}>
          <b>{name}</b>
        </label>
        <span className="small faint">{t('fault-bench.minutes', { minutes: m.minutes })}</span>
      </div>
      <p className="small faint">{t(`fault-bench.measure.${m.id}.how`)}</p>
      {m.kind === 'look' ? <Seen {...props} id={id} /> : <Read {...props} id={id} m={m} />}
    </div>
  );
}

function Seen({ measurement: m, reading, onChange, id }: Props & { readonly id: string }) {
  const { t } = useSpeech();
  if (m.kind !== 'look') return null;
  return (
    <select
      id={id}
      value={typeof reading?.value === 'string' ? reading.value : ''}
      onChange={(event) => {
        const value = event.currentTarget.value;
        onChange(value === '' ? null : { value, sd: null, method: 0 });
      }}
    >
      <option value="">{t('fault-bench.not-looked')}</option>
      {m.outcomes.map((outcome) => (
        <option key={outcome} value={outcome}>
          {t(`fault-bench.outcome.${m.id}.${outcome}`)}
        </option>
      ))}
    </select>
  );
}

const round = (value: number): number => Number(value.toPrecision(4));

function Read({ m, reading, onChange, id }: Props & { readonly id: string; readonly m: NumericMeasurement }) {
  const speech = useSpeech();
  const { t, symbol, units } = speech;
  /** What is being typed and is no number yet. */
  const [draft, setDraft] = useState<{ value?: string; sd?: string }>({});
  const [method, setMethod] = useState(reading?.method ?? 0);
  const quantity = quantityOf(m.id);
  const name = measureName(speech, m.id);
  const unit = symbol(quantity);
  const way = m.methods[method] ?? m.methods[0]!;
  const value = typeof reading?.value === 'number' ? reading.value : null;
  // An error has no zero point of its own: only the unit's size counts.
  const scale = toShown(1, quantity, units) - toShown(0, quantity, units);
  const own_sd = way.sd + way.share * Math.abs(value ?? 0);
  const shownSd = round((reading?.sd ?? own_sd) * scale);
  const type = (text: string): void => {
    if (text.trim() === '') {
      setDraft((d) => ({ ...d, value: '' }));
      onChange(null);
      return;
    }
    const typed = Number(text.replace(',', '.'));
    if (!Number.isFinite(typed)) return setDraft((d) => ({ ...d, value: text }));
    setDraft((d) => ({ ...d, value: text }));
    onChange({ value: fromShown(typed, quantity, units), sd: reading?.sd ?? null, method });
  };
  const typeError = (text: string): void => {
    const typed = Number(text.replace(',', '.'));
    setDraft((d) => ({ ...d, sd: text }));
    if (value === null || !(typed > 0)) return;
    onChange({ value, sd: typed / scale, method });
  };
  const bad = draft.value !== undefined && draft.value.trim() !== '' && !Number.isFinite(Number(draft.value.replace(',', '.'))); // prettier-ignore
  const badError = draft.sd !== undefined && !(Number(draft.sd.replace(',', '.')) > 0);
  return (
    <>
      <div className="reading-row">
        <input
          id={id}
          className="mono"
          inputMode="text"
          autoComplete="off"
          aria-label={t('fault-bench.value', { name, unit })}
          aria-invalid={bad}
          value={draft.value ?? (value === null ? '' : String(round(toShown(value, quantity, units))))}
          onChange={(event) => type(event.currentTarget.value)}
          onBlur={() => !bad && setDraft((d) => ({ ...(d.sd === undefined ? {} : { sd: d.sd }) }))}
        />
        <span className="unit">{unit}</span>
        <span aria-hidden="true">{t('fault-bench.error-short')}</span>
        <input
          className="mono error"
          inputMode="decimal"
          autoComplete="off"
          aria-label={t('fault-bench.error', { name, unit })}
          aria-invalid={badError}
          value={draft.sd ?? String(shownSd)}
          disabled={value === null}
          onChange={(event) => typeError(event.currentTarget.value)}
          onBlur={() => setDraft((d) => ({ ...(d.value === undefined ? {} : { value: d.value }) }))}
        />
        {m.methods.length > 1 ? (
          <select
            aria-label={t('fault-bench.way')}
            value={method}
            onChange={(event) => {
              const next = Number(event.currentTarget.value);
              setMethod(next);
              setDraft({});
              if (value !== null) onChange({ value, sd: null, method: next });
            }}
          >
            {m.methods.map((each, i) => (
              <option key={each.id} value={i}>
                {t(`fault-bench.method.${each.id}`)}
              </option>
            ))}
          </select>
        ) : (
          <span className="small faint">{t(`fault-bench.method.${way.id}`)}</span>
        )}
      </div>
      {bad && <p className="small bad">{t('fault-bench.bad-number')}</p>}
      {badError && <p className="small bad">{t('fault-bench.bad-error')}</p>}
    </>
  );
}
