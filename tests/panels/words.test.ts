/** Every key that the interface speaks, and every id of every model that needs words, is in the English catalogue. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';
import { describe, expect, it } from 'vitest';
import { assemblyMessageKeys } from '../../src/core/assembly';
import { KNOWN_CAUTIONS } from '../../src/view/panels/teardown/cautions';
import english from '../../src/words/en';

const root = resolve(import.meta.dirname, '../..');

interface Entry {
  readonly cautions?: readonly string[];
}
interface ModelFile {
  readonly kinds?: Readonly<Record<string, { word?: string; material: string; family: string }>>;
  readonly parts?: readonly Entry[];
  readonly groups?: readonly Entry[];
  readonly relations?: readonly { type: string; fluid?: string }[];
}

const models = readdirSync(join(root, 'models'), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => ({
    name: entry.name,
    files: readdirSync(join(root, 'models', entry.name))
      .filter((name) => name.endsWith('.yaml'))
      .map(
        (name) => (parse(readFileSync(join(root, 'models', entry.name, name), 'utf8')) ?? {}) as ModelFile,
      ),
  }));

const missing = (keys: readonly string[]): readonly string[] => keys.filter((key) => !(key in english));

describe.each(models)('words of $name', ({ files }) => {
  const kinds = files.flatMap((file) => Object.entries(file.kinds ?? {}));
  it('has kinds', () => expect(kinds.length).toBeGreaterThan(10));
  it('names every kind, says what it does and how it fails', () => {
    const keys = kinds.flatMap(([id, kind]) =>
      ['name', 'does', 'fails'].map((word) => `part.${kind.word ?? id}.${word}`),
    );
    expect(missing(keys)).toEqual([]);
  });
  it('names materials, families and fluids', () => {
    const keys = [
      ...kinds.map(([, kind]) => `material.${kind.material}`),
      ...kinds.map(([, kind]) => `family.${kind.family}`),
      ...files.flatMap((f) =>
        (f.relations ?? []).flatMap((r) => (r.type === 'fluid' ? [`fluid.${r.fluid}`] : [])),
      ),
    ];
    expect(missing(keys)).toEqual([]);
  });
  it('has text and a signal word for every caution', () => {
    const cautions = files
      .flatMap((f) => [...(f.parts ?? []), ...(f.groups ?? [])])
      .flatMap((e) => e.cautions ?? []);
    expect(missing(cautions.map((id) => `caution.${id}`))).toEqual([]);
    expect(cautions.filter((id) => !KNOWN_CAUTIONS.includes(id))).toEqual([]);
  });
});

describe('words of the interface', () => {
  const sources = ['src/view/panels', 'src/app'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => readFileSync(join(root, folder, name), 'utf8')),
  );
  // 'a.b' in single quotes after t( or in a conditional inside it, or given as a word to a helper.
  const stems = new Set(Object.keys(english).map((key) => key.split('.')[0]!));
  const used = sources
    .flatMap((text) => [...text.matchAll(/'([a-z][a-z-]*(?:\.[a-zA-Z0-9-]+)+)'/g)].map((match) => match[1]!))
    .filter((key) => stems.has(key.split('.')[0]!));
  it('finds the keys in the sources', () => expect(new Set(used).size).toBeGreaterThan(100));
  it('has every key that a component names', () => expect(missing([...new Set(used)])).toEqual([]));
  it('has every reason that the planner gives', () =>
    expect(missing(assemblyMessageKeys.map(({ key }) => key))).toEqual([]));
  it('has a text for every caution with a signal word', () =>
    expect(missing(KNOWN_CAUTIONS.map((id) => `caution.${id}`))).toEqual([]));
  it('puts in no parameter that the planner does not hand over', () => {
    const unknown = assemblyMessageKeys.flatMap(({ key, params }) => {
      const text = (english as Readonly<Record<string, string>>)[key] ?? '';
      return [...text.matchAll(/\{\{([^}]+)\}\}/g)]
        .map((match) => match[1]!)
        .filter((name) => !(params as readonly string[]).includes(name))
        .map((name) => `${key}: ${name}`);
    });
    expect(unknown).toEqual([]);
  });
});
