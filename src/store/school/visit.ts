/** Records and notes of a packaged lesson: they live for this visit, since others use the same address after it. */
import type { Ports, RecordPort } from '../ports';

/** @param onWrite hears each record as it is written */
export function visitRecords(onWrite: (collection: string, key: string, text: string) => void): RecordPort {
  const kept = new Map<string, { collection: string; key: string; text: string }>();
  const at = (collection: string, key: string): string => JSON.stringify([collection, key]);
  return {
    lasting: () => Promise.resolve(false),
    read: (collection, key) => Promise.resolve(kept.get(at(collection, key))?.text ?? null),
    write(collection, key, text) {
      kept.set(at(collection, key), { collection, key, text });
      onWrite(collection, key, text);
      return Promise.resolve(true);
    },
    remove(collection, key) {
      kept.delete(at(collection, key));
      return Promise.resolve();
    },
    list: (collection) =>
      Promise.resolve([...kept.values()].filter((each) => each.collection === collection)),
    all: () => Promise.resolve({ records: [...kept.values()], unreadable: 0 }),
    clear() {
      kept.clear();
      return Promise.resolve();
    },
    space: () => Promise.resolve(null),
    hold: () => Promise.resolve(false),
  };
}

export function visitKeep(): Ports['keep'] {
  const kept = new Map<string, string>();
  return {
    read: (key) => kept.get(key) ?? null,
    write(key, value) {
      kept.set(key, value);
      return true;
    },
  };
}
