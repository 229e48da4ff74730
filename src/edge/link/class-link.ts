/**
 * The way from a page to the class host that served it: one socket that comes back by itself when the network does,
 * when the phone wakes, or when the host was started again.
 */
import {
  type ClassGreeting,
  type ClassLink,
  type HostMessage,
  type LinkListener,
  TALK_VERSION,
} from '../../core/classroom';

const FIRST_WAIT_ms = 400;
const LONGEST_WAIT_ms = 6000;
const PING_EVERY_ms = 8000;
/** Without a word in this time after a ping the connection is taken for dead: sleeping phones are not told. */
const PONG_WITHIN_ms = 5000;

/** What the host of this page says of itself; null when the page comes from somewhere else. */
export async function greetClass(): Promise<ClassGreeting | null> {
  try {
    const response = await fetch('./class/info', { cache: 'no-store' });
    if (!response.ok || !(response.headers.get('content-type') ?? '').includes('json')) return null;
    const greeting = (await response.json()) as ClassGreeting;
    return greeting.class === true && greeting.version === TALK_VERSION ? greeting : null;
  } catch {
    return null;
  }
}

function socketAddress(): string {
  const url = new URL('./class/socket', window.location.href);
  url.protocol = url.protocol === 'https:' ? 'wss:' : 'ws:';
  url.hash = '';
  url.search = '';
  return url.href;
}

export function linkClass(listener: LinkListener): ClassLink {
  let socket: WebSocket | null = null;
  let closed = false;
  let wait_ms = FIRST_WAIT_ms;
  let retry: ReturnType<typeof setTimeout> | undefined;
  let lastHeard_ms = 0;

  const drop = (): void => {
    const old = socket;
    socket = null;
    old?.close();
    if (closed) return;
    listener.onStatus('lost');
    clearTimeout(retry);
    // A class that lost its host must not come back in one instant.
    retry = setTimeout(open, wait_ms * (0.5 + Math.random()));
    wait_ms = Math.min(LONGEST_WAIT_ms, wait_ms * 2);
  };
  const open = (): void => {
    clearTimeout(retry);
    if (closed || socket !== null) return;
    listener.onStatus('connecting');
    const own = new WebSocket(socketAddress());
    socket = own;
    own.onopen = () => {
      if (own !== socket) return;
      wait_ms = FIRST_WAIT_ms;
      lastHeard_ms = Date.now();
      listener.onStatus('open');
      listener.onOpen();
    };
    own.onmessage = ({ data }) => {
      if (own !== socket || typeof data !== 'string') return;
      lastHeard_ms = Date.now();
      const message = JSON.parse(data) as HostMessage;
      if (message.type !== 'pong') listener.onMessage(message);
    };
    own.onclose = () => {
      if (own === socket) drop();
    };
  };
  const send = (message: object): boolean => {
    if (socket?.readyState !== WebSocket.OPEN) return false;
    socket.send(JSON.stringify(message));
    return true;
  };
  const check = (): void => {
    if (socket === null) open();
    else if (send({ type: 'ping' })) {
      const asked_ms = Date.now();
      setTimeout(() => {
        if (!closed && socket !== null && lastHeard_ms < asked_ms) drop();
      }, PONG_WITHIN_ms);
    }
  };
  const awake = (): void => {
    if (document.visibilityState !== 'visible') return;
    wait_ms = FIRST_WAIT_ms;
    check();
  };
  const beat = setInterval(check, PING_EVERY_ms);
  window.addEventListener('online', awake);
  document.addEventListener('visibilitychange', awake);
  open();
  return {
    send,
    close() {
      closed = true;
      clearTimeout(retry);
      clearInterval(beat);
      window.removeEventListener('online', awake);
      document.removeEventListener('visibilitychange', awake);
      socket?.close();
      socket = null;
    },
  };
}
