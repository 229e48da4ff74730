/** The first things to do, one after another; each is done when the state shows it, whichever way a person got there. */
import { findUnit } from '../../../core/machine';
import type { AppState, Commands } from '../../../store';

export interface TourStep {
  /** Words `tour.<name>` say what to do, `tour.<name>.act` name the button that does it. */
  readonly name: string;
  done(state: AppState): boolean;
  act(commands: Commands, state: AppState): void;
}

/** A part of the exciter: the housing where the machine has one, else the first of its unit. */
export function exciterPart(state: AppState): string | null {
  const machine = state.document?.machine;
  if (machine === undefined) return null;
  const unit = findUnit(machine, machine.operation.exciter_part)?.id;
  const parts = machine.parts.filter((part) => part.unit === unit);
  const housing = parts.find((part) => machine.kinds[part.kind]?.params.builder === 'exciter-housing');
  return (housing ?? parts[0])?.id ?? null;
}

const isOfExciter = (state: AppState, partId: string | null): boolean => {
  const machine = state.document?.machine;
  const part = machine?.parts.find(({ id }) => id === partId);
  return (
    part !== undefined &&
    machine !== undefined &&
    part.unit === findUnit(machine, machine.operation.exciter_part)?.id
  );
};

export const TOUR: readonly TourStep[] = [
  {
    name: 'apart',
    done: (s) => s.explode > 0.3,
    act: (commands) => commands.setExplode(1),
  },
  {
    name: 'exciter',
    done: (s) => isOfExciter(s, s.selectedPart),
    act(commands, state) {
      const part = exciterPart(state);
      if (part === null) return;
      commands.select(part);
      commands.lookAt('fit', part);
    },
  },
  {
    name: 'flip',
    done: (s) => s.exciter.direction === 'low',
    act(commands) {
      commands.openPanel('exciter');
      commands.setExciter({ direction: 'low' });
    },
  },
  {
    name: 'shot',
    done: (s) => s.shot.open,
    act(commands) {
      commands.openPanel('exciter');
      commands.watchShot(true);
    },
  },
  {
    name: 'order',
    done: (s) => s.teardown.step >= 0,
    act(commands) {
      commands.watchShot(false);
      commands.setPlaying(true);
    },
  },
];
