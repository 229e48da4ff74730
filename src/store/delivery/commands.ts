/**
 * Delivers what happened to a learning record store, each statement exactly once. Statements are queued as records
 * before anything is sent, under their own ids; one leaves the queue only when the store has it. A reply that was lost
 * is no harm: the same id is sent again, and the store keeps one.
 */
import { type Delivery, deliveryOf, eventStatements, statementsOf, waitBefore_ms } from '../../core/records';
import { JOB_HISTORY } from '../jobs/kept';
import { ensureCourse, LESSON_RECORDS } from '../lessons/commands';
import type { Ports } from '../ports';
import { PRACTICE_RECORDS } from '../practice/kept';
import { ANSWER_RECORDS, TEST_RECORDS } from '../quiz/commands';
import type { AppStore } from '../store';
import { type DeliverySettings, type DeliveryState, INITIAL_DELIVERY } from './state';

/** Statements that wait, by id; ids of those that the store has; those that it will never take. */
export const QUEUE_RECORDS = 'xapi-queue';
export const SENT_RECORDS = 'xapi-sent';
export const REFUSED_RECORDS = 'xapi-refused';
/** Note of the settings; the secret is in it only where the person asked. */
export const DELIVERY_NOTE = 'drumbench.record-store.1';
const BATCH = 50;

const running = new WeakMap<AppStore, Promise<void>>();
const timers = new WeakMap<AppStore, ReturnType<typeof setTimeout>>();
const failures = new WeakMap<AppStore, number>();

type DeliveryPorts = Pick<Ports, 'records' | 'keep' | 'recordStore' | 'course'>;

export function createDeliveryCommands(store: AppStore, ports: DeliveryPorts) {
  const get = (): DeliveryState => store.getState().delivery;
  const set = (part: Partial<DeliveryState>): void => store.setState({ delivery: { ...get(), ...part } });

  async function count(): Promise<void> {
    const [queued, sent, refused] = await Promise.all(
      [QUEUE_RECORDS, SENT_RECORDS, REFUSED_RECORDS].map((name) => ports.records.list(name)),
    );
    set({ queued: queued!.length, sent: sent!.length, refused: refused!.length });
  }

  /** Queues what has happened since. A statement that was made once is never made anew. */
  async function collect(settings: DeliverySettings): Promise<void> {
    await ensureCourse(store, ports);
    const { lessons, settings: own } = store.getState();
    const steps = Object.fromEntries(
      (lessons.course?.lessons ?? []).map(({ id, steps }) => [id, steps.map((step) => step.id)]),
    );
    const actor = { homePage: settings.homePage, name: settings.name };
    const { records } = await ports.records.all();
    const known = new Set(
      records.flatMap(({ collection, key }) =>
        [QUEUE_RECORDS, SENT_RECORDS, REFUSED_RECORDS].includes(collection) ? [key] : [],
      ),
    );
    const answers = records.filter(({ collection }) => collection === ANSWER_RECORDS);
    const collections = {
      lessons: LESSON_RECORDS,
      tests: TEST_RECORDS,
      practice: PRACTICE_RECORDS,
      jobs: JOB_HISTORY,
    };
    const facts = { actor, language: own.language, mastery: settings.mastery, steps };
    const all = [
      ...statementsOf(answers, actor, own.language),
      ...eventStatements(records, collections, facts),
    ];
    for (const statement of all)
      if (!known.has(statement.id))
        await ports.records.write(QUEUE_RECORDS, statement.id, JSON.stringify(statement));
  }

  async function done(id: string, collection: string, text: string): Promise<void> {
    // First noted, then taken off the queue: cut off between the two it is sent once more, never lost.
    await ports.records.write(collection, id, text);
    await ports.records.remove(QUEUE_RECORDS, id);
  }

  type Queued = { readonly key: string; readonly text: string };
  /** Sends some; what else than taken comes of it stops the round, but for statements refused one by one. */
  async function send(batch: readonly Queued[], settings: DeliverySettings): Promise<Delivery> {
    const { status, text } = await ports.recordStore.send(
      settings,
      batch.map((each) => JSON.parse(each.text) as object),
    );
    const delivery = deliveryOf(status);
    // One of several that is refused, or there already, says nothing of the others.
    const unclear = delivery === 'refused' || delivery === 'too-large' || status === 409;
    if (unclear && batch.length > 1) {
      for (const each of batch) {
        const one = await send([each], settings);
        if (one !== 'taken' && one !== 'refused' && one !== 'too-large') return one;
      }
      return 'taken';
    }
    if (delivery === 'taken') for (const { key } of batch) await done(key, SENT_RECORDS, '{}');
    else if (delivery === 'refused' || delivery === 'too-large')
      for (const { key, text: kept } of batch)
        await done(key, REFUSED_RECORDS, JSON.stringify({ status, says: text, statement: kept }));
    else
      set({
        trouble: {
          key: `delivery.trouble.${delivery}`,
          says: status === null ? '' : `${status} ${text}`.trim(),
        },
      });
    return delivery;
  }

  async function round(): Promise<void> {
    const { settings } = get();
    if (settings === null) return;
    await collect(settings);
    await count();
    if (settings.secret === '') {
      set({ phase: 'stopped', trouble: { key: 'delivery.trouble.no-secret', says: '' }, next_ms: null });
      return;
    }
    set({ phase: 'sending', next_ms: null });
    for (;;) {
      const batch = (await ports.records.list(QUEUE_RECORDS)).slice(0, BATCH);
      if (batch.length === 0) break;
      const delivery = await send(batch, settings);
      await count();
      if (delivery === 'taken' || delivery === 'refused' || delivery === 'too-large') continue;
      const retries = delivery === 'busy' || delivery === 'unreachable';
      if (retries) plan();
      else set({ phase: 'stopped', next_ms: null });
      return;
    }
    failures.set(store, 0);
    set({ phase: 'idle', trouble: null, next_ms: null });
  }

  /** Tries again later; sooner when the browser finds a network (the app listens for that). */
  function plan(): void {
    const failed = (failures.get(store) ?? 0) + 1;
    failures.set(store, failed);
    const wait_ms = waitBefore_ms(failed);
    clearTimeout(timers.get(store));
    timers.set(
      store,
      setTimeout(() => void deliver(), wait_ms),
    );
    set({ phase: 'waiting', next_ms: Date.now() + wait_ms });
  }

  /** One round at a time: whoever asks meanwhile waits for the one that is on. */
  function deliver(): Promise<void> {
    const on = running.get(store);
    if (on !== undefined) return on;
    clearTimeout(timers.get(store));
    const made = round().finally(() => running.delete(store));
    running.set(store, made);
    return made;
  }

  return {
    deliver,
    /** Reads the note of the settings; nothing is sent yet. */
    async load(): Promise<void> {
      if (get().settings === null) {
        const settings = readNote(ports.keep.read(DELIVERY_NOTE));
        if (settings !== null) set({ settings });
      }
      await count();
    },
    async use(settings: DeliverySettings): Promise<void> {
      const secret = settings.keepSecret ? settings.secret : '';
      ports.keep.write(DELIVERY_NOTE, JSON.stringify({ ...settings, secret }));
      failures.set(store, 0);
      set({ settings, trouble: null, phase: 'idle' });
      await deliver();
    },
    /** Sends nothing any more and forgets the store; what waits stays queued. */
    stop(): void {
      clearTimeout(timers.get(store));
      ports.keep.write(DELIVERY_NOTE, '');
      set({ ...INITIAL_DELIVERY, queued: get().queued, sent: get().sent, refused: get().refused });
    },
  };
}

/** Null where there is no note that can be read. */
export function readNote(text: string | null): DeliverySettings | null {
  if (text === null || text === '') return null;
  try {
    const { endpoint, user, secret, keepSecret, homePage, name, mastery } = JSON.parse(text) as Record<
      string,
      unknown
    >;
    const texts = [endpoint, user, secret, homePage, name];
    if (!texts.every((each) => typeof each === 'string') || typeof mastery !== 'number') return null;
    const [a, b, c, d, e] = texts as [string, string, string, string, string];
    return {
      endpoint: a,
      user: b,
      secret: c,
      homePage: d,
      name: e,
      keepSecret: keepSecret === true,
      mastery,
    };
  } catch {
    return null;
  }
}
