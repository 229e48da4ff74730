import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import rules, { ARROWS } from '../../.dependency-cruiser.mjs';

const root = resolve(import.meta.dirname, '../..');
const tool = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');

interface Cruise {
  modules: { source: string }[];
  summary: { violations: { rule: { name: string }; from: string; to: string }[]; totalCruised: number };
}

function cruise(cwd: string): Cruise {
  try {
    return JSON.parse(
      execFileSync(
        process.execPath,
        [tool, 'src', '--config', join(root, '.dependency-cruiser.mjs'), '--output-type', 'json'],
        {
          cwd,
          encoding: 'utf8',
          maxBuffer: 256e6,
        },
      ),
    ) as Cruise;
  } catch (error) {
    // The tool leaves with the number of errors; its JSON is still on standard output.
    return JSON.parse((error as { stdout: string }).stdout) as Cruise;
  }
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sourceFiles(path);
    return /\.(ts|tsx)$/.test(entry.name) ? [path] : [];
  });
}

const planted: string[] = [];
afterAll(() => planted.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

/** A little tree with the house's layout, in which the rules are tried. */
function plant(files: Record<string, string>): Cruise['summary']['violations'] {
  const folder = mkdtempSync(join(tmpdir(), 'drumbench-arrows-'));
  planted.push(folder);
  const all: Record<string, string> = {
    'tsconfig.json': JSON.stringify({
      compilerOptions: { module: 'ESNext', moduleResolution: 'Bundler', jsx: 'react-jsx' },
    }),
    'package.json': JSON.stringify({
      name: 'planted',
      type: 'module',
      dependencies: { three: '1.0.0', react: '1.0.0' },
    }),
    'node_modules/three/package.json': JSON.stringify({
      name: 'three',
      version: '1.0.0',
      main: 'index.js',
      type: 'module',
    }),
    'node_modules/three/index.js': 'export const three = 1;',
    'node_modules/react/package.json': JSON.stringify({
      name: 'react',
      version: '1.0.0',
      main: 'index.js',
      type: 'module',
    }),
    'node_modules/react/index.js': 'export const react = 1;',
    ...files,
  };
  for (const [name, text] of Object.entries(all)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return cruise(folder).summary.violations;
}

describe('the arrows of the house', () => {
  it('hold in the whole tree, and the tool saw every module', () => {
    const result = cruise(root);
    const seen = new Set(result.modules.map((m) => m.source));
    const present = sourceFiles(join(root, 'src')).map((path) =>
      path.slice(root.length + 1).replaceAll('\\', '/'),
    );
    expect(present.length).toBeGreaterThan(30);
    expect(present.filter((file) => !seen.has(file))).toEqual([]);
    expect(result.summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`)).toEqual([]);
  }, 60000);

  it('cover every folder that holds code', () => {
    const folders = new Set(
      sourceFiles(join(root, 'src')).map((path) => {
        const [first, second] = path
          .slice(join(root, 'src').length + 1)
          .replaceAll('\\', '/')
          .split('/') as [string, string];
        return ['core', 'edge', 'view'].includes(first) ? `${first}/${second}` : first;
      }),
    );
    expect([...folders].filter((folder) => !(folder in ARROWS))).toEqual([]);
    expect(rules.forbidden.length).toBeGreaterThan(Object.keys(ARROWS).length);
  });

  // All kinds are planted in one tree; each case must be caught at its own file.
  const cases: { what: string; rule: string; from: string; files: Record<string, string> }[] = [
    {
      what: 'a core folder that reads a folder above it',
      rule: 'arrow-core-kernel',
      from: 'src/core/kernel/above.ts',
      files: {
        'src/core/kernel/above.ts': "import { b } from '../machine';\nexport const a = b;",
        'src/core/machine/index.ts': 'export const b = 1;',
      },
    },
    {
      what: 'the store that knows the edge',
      rule: 'arrow-store',
      from: 'src/store/edge.ts',
      files: {
        'src/store/edge.ts': "import { b } from '../edge/worker';\nexport const a = b;",
        'src/edge/worker/index.ts': 'export const b = 1;',
      },
    },
    {
      what: 'panels that know the scene',
      rule: 'arrow-view-panels',
      from: 'src/view/panels/scene.ts',
      files: {
        'src/view/panels/scene.ts': "import { b } from '../scene/b';\nexport const a = b;",
        'src/view/scene/b.ts': 'export const b = 1;',
      },
    },
    {
      what: 'an import past a core index',
      rule: 'index-only-core-quiz',
      from: 'src/store/past.ts',
      files: {
        'src/store/past.ts': "import { b } from '../core/quiz/b';\nexport const a = b;",
        'src/core/quiz/b.ts': 'export const b = 1;',
      },
    },
    {
      what: 'a folder that imports its own index',
      rule: 'own-index-core-jobs',
      from: 'src/core/jobs/a.ts',
      files: {
        'src/core/jobs/a.ts': "import { b } from './index';\nexport const a = b;",
        'src/core/jobs/index.ts': 'export const b = 1;',
      },
    },
    {
      what: 'a circle, by types alone',
      rule: 'no-circular',
      from: 'src/core/shot/a.ts',
      files: {
        'src/core/shot/a.ts': "import type { B } from './b';\nexport type A = B;",
        'src/core/shot/b.ts': "import type { A } from './a';\nexport type B = A | 1;",
      },
    },
    {
      what: 'an orphan',
      rule: 'no-orphans',
      from: 'src/core/records/alone.ts',
      files: { 'src/core/records/alone.ts': 'export const alone = 1;' },
    },
    {
      what: 'React in the core',
      rule: 'no-react-in-core',
      from: 'src/core/faults/react.ts',
      files: { 'src/core/faults/react.ts': "import { react } from 'react';\nexport const a = react;" },
    },
    {
      what: 'panels that reach three by a detour',
      rule: 'panels-never-reach-three',
      from: 'src/view/panels/detour.ts',
      files: {
        'src/view/panels/detour.ts': "import { b } from '../../store/detour';\nexport const a = b;",
        'src/store/detour.ts': "import { three } from 'three';\nexport const b = three;",
      },
    },
    {
      what: 'an import that leads nowhere',
      rule: 'no-unresolved',
      from: 'src/store/nowhere.ts',
      files: { 'src/store/nowhere.ts': "import { b } from './missing';\nexport const a = b;" },
    },
  ];
  const caught = new Set<string>();
  beforeAll(() => {
    const violations = plant(Object.assign({}, ...cases.map((c) => c.files)) as Record<string, string>);
    for (const violation of violations) caught.add(`${violation.rule.name} ${violation.from}`);
  }, 60000);

  it.each(cases)('catch $what', ({ rule, from }) => {
    expect([...caught]).toContain(`${rule} ${from}`);
  });
});
