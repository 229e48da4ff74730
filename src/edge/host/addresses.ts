/** Addresses of this machine on its networks. */
import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';

export interface OwnAddress {
  readonly interface: string;
  readonly address: string;
  readonly internal: boolean;
}

/** IPv4 first come, first told: that is what a person can type. */
export const ownAddresses = (): readonly OwnAddress[] =>
  Object.entries(networkInterfaces()).flatMap(([name, list]) =>
    (list ?? []).flatMap(({ family, address, internal }) =>
      family === 'IPv4' ? [{ interface: name, address, internal }] : [],
    ),
  );

/**
 * The address to listen on for what a person named: an interface, an address, or `all`.
 * @returns null when this machine has no such interface
 */
export function listenOn(wish: string): string | null {
  if (wish === 'all') return '0.0.0.0';
  if (wish === 'localhost') return '127.0.0.1';
  if (isIP(wish) !== 0) return wish;
  return ownAddresses().find((each) => each.interface === wish)?.address ?? null;
}

/** Web addresses for phones: of the networks that this machine is on, else of this machine alone. */
export function webAddresses(listening: string, port: number): readonly string[] {
  const at = (address: string): string =>
    `http://${address.includes(':') ? `[${address}]` : address}:${port}/`;
  if (listening !== '0.0.0.0' && listening !== '::') return [at(listening)];
  const reached = ownAddresses().filter((each) => !each.internal);
  return reached.length === 0 ? [at('127.0.0.1')] : reached.map((each) => at(each.address));
}
