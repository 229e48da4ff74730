/**
 * The import rules of the house, one table. `npm run check` enforces them (tests/architecture). Change the table here
 * and in DEVELOPERS.md together, and say why.
 */
const core = (...names) => names.map((name) => `core/${name}`);
const allCore = core(
  'kernel',
  'mechanics',
  'shot',
  'machine',
  'geometry',
  'assembly',
  'studies',
  'document',
  'exports',
  'faults',
  'quiz',
  'lessons',
  'jobs',
  'records',
  'classroom',
);
const view = ['store', 'view/bind', 'view/theme'];

/** Folder -> the folders it may import besides itself. */
export const ARROWS = {
  'core/kernel': [],
  'core/mechanics': core('kernel'),
  'core/shot': core('kernel'),
  'core/machine': core('kernel'),
  'core/geometry': core('kernel', 'machine'),
  'core/assembly': core('kernel', 'machine', 'geometry', 'mechanics'),
  'core/studies': core('kernel', 'machine', 'geometry', 'mechanics', 'shot'),
  'core/document': core('kernel', 'machine', 'geometry', 'assembly', 'studies'),
  'core/exports': core('kernel', 'machine', 'geometry', 'document'),
  'core/faults': core('kernel', 'machine', 'mechanics', 'studies'),
  'core/quiz': core('kernel', 'machine', 'mechanics', 'assembly', 'studies', 'faults'),
  'core/lessons': core('kernel', 'machine', 'assembly', 'studies', 'faults', 'jobs', 'quiz'),
  'core/jobs': core('kernel', 'machine', 'assembly', 'mechanics', 'studies', 'faults'),
  'core/records': core('kernel', 'quiz', 'lessons', 'jobs'),
  'core/classroom': core('kernel', 'quiz', 'records'),
  store: allCore,
  'edge/content': core(
    'kernel',
    'machine',
    'document',
    'shot',
    'lessons',
    'quiz',
    'jobs',
    'faults',
    'studies',
  ),
  'edge/worker': core(
    'kernel',
    'machine',
    'geometry',
    'assembly',
    'document',
    'shot',
    'mechanics',
    'studies',
    'faults',
    'quiz',
  ),
  'edge/storage': core('kernel', 'records'),
  'edge/offline': [],
  'edge/link': core('kernel', 'classroom', 'records', 'quiz'),
  'edge/school': core('kernel', 'quiz', 'records'),
  'edge/host': [...core('kernel', 'classroom', 'quiz', 'lessons', 'records'), 'edge/content', 'edge/cli'],
  'edge/cli': [...allCore, 'edge/content', 'words'],
  words: [],
  'view/theme': [],
  'view/bind': ['core/kernel', 'store', 'words'],
  'view/scene': [...allCore, ...view],
  'view/panels': [...allCore, ...view],
  'view/print': [...allCore, ...view],
  app: [
    ...allCore,
    ...view,
    'words',
    'view/scene',
    'view/panels',
    'view/print',
    'edge/content',
    'edge/worker',
    'edge/storage',
    'edge/offline',
    'edge/link',
    'edge/school',
  ],
};

const escape = (text) => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const folderPath = (folder) => `^src/${escape(folder).replaceAll('\\/', '/')}/`;

const arrowRules = Object.entries(ARROWS).map(([folder, allowed]) => ({
  name: `arrow-${folder.replace('/', '-')}`,
  severity: 'error',
  comment: `${folder} may import only: ${allowed.join(', ') || 'nothing'}`,
  from: { path: folderPath(folder) },
  to: { path: '^src/', pathNot: [folderPath(folder), ...allowed.map(folderPath)] },
}));

const indexRules = Object.keys(ARROWS)
  .filter((folder) => folder.startsWith('core/'))
  .flatMap((folder) => [
    {
      name: `index-only-${folder.replace('/', '-')}`,
      severity: 'error',
      comment: `from outside, import ${folder}/index.ts only`,
      from: { path: '^src/', pathNot: [folderPath(folder)] },
      to: { path: folderPath(folder), pathNot: [`${folderPath(folder)}index\\.ts$`] },
    },
    {
      name: `own-index-${folder.replace('/', '-')}`,
      severity: 'error',
      comment: `${folder} never imports its own index`,
      from: { path: folderPath(folder) },
      to: { path: `${folderPath(folder)}index\\.ts$` },
    },
  ]);

const RENDERERS = '(^|/)node_modules/(three|@react-three)(/|$)';

export default {
  forbidden: [
    ...arrowRules,
    ...indexRules,
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-orphans',
      severity: 'error',
      comment: 'every module is reached from an entry',
      from: {
        orphan: true,
        path: '^src/',
        pathNot: [
          '^src/app/main\\.tsx$',
          '\\.worker\\.ts$',
          '^src/edge/(cli|host)/',
          '^src/edge/offline/service-worker\\.ts$',
          '\\.d\\.ts$',
        ],
      },
      to: {},
    },
    {
      name: 'no-react-in-core',
      severity: 'error',
      from: { path: '^src/(core|store)/' },
      to: { path: '(^|/)node_modules/(react|react-dom|three|@react-three|@types/react|@types/three)(/|$)' },
    },
    {
      name: 'panels-never-reach-three',
      severity: 'error',
      comment: 'the first paint must not wait for three',
      from: { path: '^src/view/(panels|print|bind|theme)/' },
      to: { path: RENDERERS, reachable: true },
    },
    {
      name: 'store-and-words-never-reach-three',
      severity: 'error',
      from: { path: '^src/(store|words)/' },
      to: { path: RENDERERS, reachable: true },
    },
    {
      name: 'no-unresolved',
      severity: 'error',
      from: { path: '^src/' },
      to: { couldNotResolve: true, pathNot: '[?]url$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.css'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'default'],
    },
  },
};
