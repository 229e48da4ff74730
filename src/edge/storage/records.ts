/**
 * What a person's work leaves behind (answers, runs, sheets), in the browser's own database. Where that is refused
 * (private mode) it lives for this visit only; `lasting` tells which.
 */
import type { KeptRecord } from '../../core/records';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

interface Schema extends DBSchema {
  records: { key: [string, string]; value: { collection: string; key: string; text: string } };
}

const NAME = 'drumbench';
const VERSION = 1;
/** Sorts after every string that a key may be. */
const LAST = '\uffff';

let opened: Promise<IDBPDatabase<Schema> | null> | undefined;
const visit = new Map<string, Map<string, string>>();

function database(): Promise<IDBPDatabase<Schema> | null> {
  // A browser may refuse by throwing at once: within a promise that is a refusal like any other.
  opened ??= Promise.resolve()
    .then(() =>
      openDB<Schema>(NAME, VERSION, {
        upgrade: (db) => void db.createObjectStore('records', { keyPath: ['collection', 'key'] }),
      }),
    )
    .catch(() => null);
  return opened;
}

const inVisit = (collection: string): Map<string, string> => {
  const found = visit.get(collection) ?? new Map<string, string>();
  visit.set(collection, found);
  return found;
};

export const records = {
  /** True when records outlast this visit. */
  lasting: async (): Promise<boolean> => (await database()) !== null,
  async read(collection: string, key: string): Promise<string | null> {
    const db = await database();
    const text = await db?.get('records', [collection, key]).catch(() => undefined);
    return text?.text ?? visit.get(collection)?.get(key) ?? null;
  },
  /** False when the browser refused (storage full); the text then lives for this visit. */
  async write(collection: string, key: string, text: string): Promise<boolean> {
    const db = await database();
    try {
      if (db === null) throw new Error('no database');
      await db.put('records', { collection, key, text });
      visit.get(collection)?.delete(key);
      return true;
    } catch {
      inVisit(collection).set(key, text);
      return false;
    }
  },
  async remove(collection: string, key: string): Promise<void> {
    visit.get(collection)?.delete(key);
    await (await database())?.delete('records', [collection, key]).catch(() => undefined);
  },
  async list(collection: string): Promise<readonly { readonly key: string; readonly text: string }[]> {
    const db = await database();
    const range = IDBKeyRange.bound([collection, ''], [collection, LAST]);
    const kept = (await db?.getAll('records', range).catch(() => [])) ?? [];
    const all = new Map(kept.map(({ key, text }) => [key, text]));
    for (const [key, text] of visit.get(collection) ?? []) all.set(key, text);
    return [...all].map(([key, text]) => ({ key, text }));
  },
  /** Everything that can be read, one by one, so that a damaged record costs itself alone. */
  async all(): Promise<{ readonly records: readonly KeptRecord[]; readonly unreadable: number }> {
    const db = await database();
    const keys = (await db?.getAllKeys('records').catch(() => [])) ?? [];
    const found = await Promise.all(keys.map((key) => db?.get('records', key).catch(() => undefined)));
    const kept = found.filter((each) => typeof each?.text === 'string') as readonly KeptRecord[];
    const all = new Map(kept.map((each) => [JSON.stringify([each.collection, each.key]), each]));
    for (const [collection, own] of visit)
      for (const [key, text] of own) all.set(JSON.stringify([collection, key]), { collection, key, text });
    return { records: [...all.values()], unreadable: keys.length - kept.length };
  },
  async clear(): Promise<void> {
    visit.clear();
    await (await database())?.clear('records').catch(() => undefined);
  },
  async space(): Promise<{ used_bytes: number; most_bytes: number; persisted: boolean } | null> {
    try {
      const { usage, quota } = await navigator.storage.estimate();
      const persisted = await navigator.storage.persisted();
      return usage === undefined || quota === undefined
        ? null
        : { used_bytes: usage, most_bytes: quota, persisted };
    } catch {
      // Pages without a secure address are not told.
      return null;
    }
  },
  async hold(): Promise<boolean> {
    try {
      return await navigator.storage.persist();
    } catch {
      return false;
    }
  },
};
