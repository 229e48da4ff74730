/** A number with its unit, typed in the person's own units. */
import { useId, useState } from 'react';
import { fromShown, type Quantity } from '../../../core/kernel';
import { useSpeech } from '../../bind';
import type { FieldProps } from './ChoiceFields';

/** A typed number: point or comma for decimals, blanks and thousands marks left out. Null when it is none. */
export function readNumber(typed: string): number | null {
  const text = typed.trim().replace(/[\s\u202f\u00a0']/g, '');
  // A lone comma is a decimal mark unless three digits follow it and a point stands further on.
  const plain = text.includes('.') ? text.replaceAll(',', '') : text.replace(',', '.');
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  return Number(plain);
}

interface TypedProps {
  readonly label: string;
  readonly quantity: Quantity;
  readonly disabled?: boolean;
  /** SI; null while nothing readable is typed. */
  readonly onValue: (si: number | null) => void;
}

export function TypedNumber({ label, quantity, disabled, onValue }: TypedProps) {
  const { t, symbol, units } = useSpeech();
  const id = useId();
  const [typed, setTyped] = useState('');
  const unreadable = typed.trim() !== '' && readNumber(typed) === null;
  return (
    <div className="typed-number">
      <label htmlFor={id} className="field-name">
        {label}
      </label>
      <span className="typed-row">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed}
          disabled={disabled}
          aria-invalid={unreadable}
          aria-describedby={`${id}-unit`}
          onChange={(event) => {
            const text = event.currentTarget.value;
            setTyped(text);
            const shown = readNumber(text);
            onValue(shown === null ? null : fromShown(shown, quantity, units));
          }}
        />
        <span className="mono" id={`${id}-unit`}>
          {symbol(quantity)}
        </span>
      </span>
      {unreadable && <p className="answer-why">{t('ask.no-number')}</p>}
    </div>
  );
}

export function NumberAnswer({ item, onAnswer, marked }: FieldProps<'number'>) {
  const { t, quantity } = useSpeech();
  return (
    <>
      <TypedNumber
        label={t('ask.number')}
        quantity={item.quantity}
        disabled={marked !== null}
        onValue={(si) => onAnswer({ type: 'number', si: si ?? NaN })}
      />
      {marked !== null && (
        <p className="answer-verdict">
          {t('ask.right-number', {
            value: quantity(item.right_si, item.quantity),
            tolerance: quantity(item.tolerance_si, item.quantity, 2),
          })}
        </p>
      )}
    </>
  );
}
