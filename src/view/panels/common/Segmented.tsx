/** One choice of a few, as native radio inputs in a ruled row. */
import { type ReactNode, useId } from 'react';

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: ReactNode;
}

interface Props<T extends string> {
  readonly legend: string;
  readonly choices: readonly Choice<T>[];
  readonly value: T;
  readonly onChange: (value: T) => void;
  /** Spread over the whole width. */
  readonly fill?: boolean;
  readonly legendHidden?: boolean;
  readonly className?: string;
}

export function Segmented<T extends string>(props: Props<T>) {
  const name = useId();
  return (
    <fieldset className={props.className}>
      <legend className={props.legendHidden === true ? 'visually-hidden' : 'field-name'}>
        {props.legend}
      </legend>
      <div className={props.fill === true ? 'segmented fill' : 'segmented'}>
        {props.choices.map((choice) => (
          <label key={choice.value}>
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={choice.value === props.value}
              onChange={() => props.onChange(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
