/** The way back, outwards by one. */
import { useCommands } from '../../bind';
import { Icon } from '../common/icons';

export function BackLink({ to, name }: { readonly to: readonly string[]; readonly name: string }) {
  const commands = useCommands();
  return (
    <button type="button" className="button plain job-back" onClick={() => commands.go('jobs', ...to)}>
      <Icon name="right" />
      <span>{name}</span>
    </button>
  );
}
