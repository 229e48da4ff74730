/** A quantity as slider and as number in the person's units; the value itself is SI. */
import { type CSSProperties, useId, useState } from 'react';
import { fromShown, type Quantity, toShown } from '../../../core/kernel';
import { useSpeech } from '../../bind';
import { trackShare } from '../common/RangeField';

interface Props {
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** Of the slider, SI. */
  readonly step: number;
  readonly quantity: Quantity;
  readonly figures?: number;
  readonly onChange: (value: number) => void;
}

export function QuantityField({ label, value, min, max, step, quantity, figures, onChange }: Props) {
  const { quantity: speak, symbol, units } = useSpeech();
  const id = useId();
  /** What is being typed, as long as it is not a number within the bounds. */
  const [draft, setDraft] = useState<string | null>(null);
  const shown = Number(toShown(value, quantity, units).toPrecision(figures ?? 4));
  const [low, high] = [toShown(min, quantity, units), toShown(max, quantity, units)];
  const take = (text: string): void => {
    const typed = Number(text);
    const si = fromShown(typed, quantity, units);
    if (text.trim() === '' || !Number.isFinite(typed) || si < min * (1 - 1e-9) || si > max * (1 + 1e-9)) {
      setDraft(text);
      return;
    }
    setDraft(null);
    onChange(Math.min(max, Math.max(min, si)));
  };
  return (
    <div className="quantity-field">
      <label htmlFor={id}>
        {label} {symbol(quantity) !== '' && <span className="unit">{symbol(quantity)}</span>}
      </label>
      <input
        id={id}
        type="number"
        className="mono"
        inputMode="decimal"
        min={Number(low.toPrecision(4))}
        max={Number(high.toPrecision(4))}
        step="any"
        value={draft ?? shown}
        aria-invalid={draft !== null}
        onChange={(event) => take(event.currentTarget.value)}
        onBlur={() => setDraft(null)}
      />
      <input
        type="range"
        aria-label={label}
        min={min}
        max={max}
        step={step}
        value={value}
        aria-valuetext={speak(value, quantity, figures)}
        style={{ '--at': trackShare(value, min, max) } as CSSProperties}
        onChange={(event) => {
          setDraft(null);
          onChange(event.currentTarget.valueAsNumber);
        }}
      />
    </div>
  );
}
