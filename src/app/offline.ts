/** Starts keeping the app in the browser, and takes a newer version when a person says so. */
import { keepOffline, type Offline } from '../edge/offline';
import { commands } from './wire';

let offline: Offline | null = null;

export function startOffline(): void {
  offline ??= keepOffline((phase) => commands.setOffline(phase));
}

export const takeUpdate = (): void => offline?.useUpdate();
