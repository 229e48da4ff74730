/** What a panel's name stands for. A chunk of its own: the first paint needs none of it. */
import type { PanelName } from '../../../store';
import { ExciterPanel } from '../exciter/ExciterPanel';
import { MachinePanel } from '../machine/MachinePanel';
import { PartCard } from '../part/PartCard';
import { SettingsPanel } from '../settings/SettingsPanel';

export default function PanelContent({ panel }: { readonly panel: PanelName }) {
  switch (panel) {
    case 'exciter':
      return <ExciterPanel />;
    case 'part':
      return <PartCard />;
    case 'machine':
      return <MachinePanel />;
    case 'settings':
      return <SettingsPanel />;
  }
}
