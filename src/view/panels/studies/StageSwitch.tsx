/** Turns a study's picture on the stage on and off. */
import { useId } from 'react';

interface Props {
  readonly on: boolean;
  readonly name: string;
  readonly note: string;
  readonly onChange: (on: boolean) => void;
}

export function StageSwitch({ on, name, note, onChange }: Props) {
  const id = useId();
  return (
    <div className="stage-switch">
      <button
        type="button"
        className="button"
        aria-pressed={on}
        aria-describedby={id}
        onClick={() => onChange(!on)}
      >
        {name}
      </button>
      <p id={id} className="small faint">
        {note}
      </p>
    </div>
  );
}
