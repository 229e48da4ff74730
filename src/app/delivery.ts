/** Sends what was done to a school's record store where a person has set one: now, when a network comes, now and then. */
import { createDeliveryCommands } from '../store';
import { ports, store } from './wire';

const EVERY_ms = 120_000;

export async function startDelivery(): Promise<void> {
  const delivery = createDeliveryCommands(store, ports);
  await delivery.load();
  const send = (): void => {
    const { settings, phase } = store.getState().delivery;
    if (settings !== null && settings.secret !== '' && phase !== 'waiting') void delivery.deliver();
  };
  window.addEventListener(
    'online',
    () => void (store.getState().delivery.settings !== null && delivery.deliver()),
  );
  setInterval(send, EVERY_ms);
  send();
}
