/** A slider with its name and its value in words; the value itself is SI. */
import { type CSSProperties, type ReactNode, useId } from 'react';

interface Props {
  readonly label: ReactNode;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  /** The value as a person reads it. */
  readonly text: string;
  readonly onChange: (value: number) => void;
  readonly disabled?: boolean;
  /** Leave the name to the screen reader only. */
  readonly bare?: boolean;
}

/** Share of the track that lies before the mark, for its ink. */
export const trackShare = (value: number, min: number, max: number): string =>
  `${(100 * Math.min(1, Math.max(0, (value - min) / (max - min || 1)))).toFixed(2)}%`;

export function RangeField(props: Props) {
  const id = useId();
  const style = { '--at': trackShare(props.value, props.min, props.max) } as CSSProperties;
  return (
    <div className={props.bare === true ? 'range bare' : 'range'}>
      <label htmlFor={id} className="range-name">
        {props.label}
      </label>
      <output htmlFor={id} className="range-value mono" aria-hidden="true">
        {props.text}
      </output>
      <input
        id={id}
        type="range"
        min={props.min}
        max={props.max}
        step={props.step}
        value={props.value}
        disabled={props.disabled}
        aria-valuetext={props.text}
        style={style}
        onChange={(event) => props.onChange(event.currentTarget.valueAsNumber)}
      />
    </div>
  );
}
