/** The way between a page and its class host, as whoever uses it sees it. */
import type { HostMessage } from './messages';

export type LinkStatus = 'connecting' | 'open' | 'lost';

export interface ClassLink {
  /** False while there is no connection: whatever must not be lost is sent again by whoever called. */
  send(message: object): boolean;
  close(): void;
}

export interface LinkListener {
  /** Each time a connection stands; the first words belong here. */
  onOpen(): void;
  onMessage(message: HostMessage): void;
  onStatus(status: LinkStatus): void;
}
