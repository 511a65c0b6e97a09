// Who may import whom, as data: one row a folder. Whatever a row does not name is refused.

/**
 * @typedef {object} Row
 * @property {string} from regular expression of the importing files
 * @property {string[]} [folders] other folders (or files) of the project it may import
 * @property {string[]} [packages] npm packages it may import; `@scope/*` stands for a whole scope
 * @property {boolean} [node] whether it may import Node's own modules
 */

const CONTRACT = 'daemon/contract';
const SCIENCE = 'daemon/science';
const WORDING = 'daemon/wording';
const RULES = 'daemon/rules';
const PAYLOAD = 'sensors/payload';
const CORRECT = 'sensors/correct';
const PUBLISH = 'sensors/publish';

/** @type {Record<string, Row>} */
const TABLE = {
  contract: { from: 'daemon/contract/', packages: ['zod'] },
  science: { from: 'daemon/science/' },
  wording: { from: 'daemon/wording/', folders: [CONTRACT] },
  rules: { from: 'daemon/rules/', folders: [SCIENCE, CONTRACT, WORDING] },
  payload: {
    from: 'sensors/payload/',
    folders: [SCIENCE, CONTRACT, WORDING],
    packages: ['cborg', 'zod'],
  },
  correct: { from: 'sensors/correct/', folders: [SCIENCE, CONTRACT, WORDING] },
  monitor: { from: 'daemon/monitor/', folders: [CONTRACT, SCIENCE, RULES, WORDING] },

  settings: {
    from: 'daemon/settings/',
    folders: [CONTRACT, RULES, SCIENCE, WORDING],
    packages: ['zod', 'smol-toml', 'toml-eslint-parser'],
    node: true,
  },
  access: {
    from: 'daemon/access/',
    folders: [CONTRACT, RULES, WORDING],
    packages: ['zod'],
    node: true,
  },
  store: {
    from: 'daemon/store/',
    folders: [CONTRACT, RULES, SCIENCE, WORDING],
    packages: ['better-sqlite3', 'uuid'],
    node: true,
  },
  ingest: {
    from: 'daemon/ingest/',
    folders: [CONTRACT, RULES, SCIENCE, WORDING, PAYLOAD, CORRECT],
    packages: ['aedes', 'mqtt', 'mqtt-packet'],
    node: true,
  },
  http: {
    from: 'daemon/http/',
    folders: [CONTRACT, RULES, SCIENCE, WORDING],
    packages: [
      'fastify',
      '@fastify/*',
      'fastify-type-provider-zod',
      'ical-generator',
      'uuid',
      'zod',
    ],
    node: true,
  },
  notify: {
    from: 'daemon/notify/',
    folders: [CONTRACT, RULES, SCIENCE, WORDING],
    packages: ['nodemailer'],
    node: true,
  },
  'schedule-cron': {
    from: 'daemon/schedule/cron\\.ts$',
    folders: [CONTRACT, RULES, SCIENCE, 'daemon/schedule'],
    packages: ['node-cron'],
    node: true,
  },
  schedule: {
    from: 'daemon/schedule/(?!cron\\.ts$)',
    folders: [CONTRACT, RULES, SCIENCE, 'daemon/schedule'],
    node: true,
  },

  // Composition: the files beside main.ts are parts of it.
  main: {
    from: 'daemon/(?!clock\\.ts$)[^/]+\\.ts$',
    folders: ['daemon', CORRECT],
    packages: ['pino', 'prom-client', 'uuid'],
    node: true,
  },
  'command-demo': {
    from: 'daemon/command/demo[^/]*\\.ts$',
    folders: ['daemon', 'sensors/shed', PUBLISH],
    packages: ['pino', 'uuid'],
    node: true,
  },
  command: {
    from: 'daemon/command/(?!demo[^/]*\\.ts$)',
    folders: ['daemon', PUBLISH],
    packages: ['csv-parse', 'cli-progress', 'pino', 'uuid'],
    node: true,
  },
  clock: { from: 'daemon/clock\\.ts$', folders: [CONTRACT], node: true },

  publish: {
    from: 'sensors/publish/',
    folders: [PAYLOAD, CONTRACT],
    packages: ['mqtt'],
    node: true,
  },
  shed: {
    from: 'sensors/shed/',
    folders: [PAYLOAD, SCIENCE, CONTRACT, PUBLISH],
    packages: ['mqtt', 'uuid'],
    node: true,
  },
  attached: {
    from: 'sensors/attached/',
    folders: [PAYLOAD, SCIENCE, CONTRACT],
    packages: ['mqtt', 'smol-toml', 'zod'],
    node: true,
  },

  'dashboard-chart': {
    from: 'dashboard/chart/',
    folders: ['dashboard', CONTRACT, WORDING],
    packages: ['preact', '@preact/*', 'uplot'],
  },
  'dashboard-build': { from: 'dashboard/vite\\.config\\.ts$', packages: ['vite'], node: true },
  'dashboard-code': {
    from: 'dashboard/print/qr-code',
    folders: ['dashboard', CONTRACT, WORDING],
    packages: ['preact', '@preact/*', 'uqr'],
  },
  'dashboard-kept': {
    from: 'dashboard/offline/kept-store',
    folders: ['dashboard', CONTRACT, WORDING],
    packages: ['preact', '@preact/*', 'idb-keyval'],
  },
  'dashboard-id': { from: 'dashboard/new-id', packages: ['uuid'] },
  dashboard: {
    from: 'dashboard/(?!chart/|new-id|offline/kept-store|print/qr-code|vite\\.config\\.ts$)',
    folders: ['dashboard', CONTRACT, WORDING],
    packages: ['preact', '@preact/*'],
  },

  // The start script runs before anything is installed.
  deploy: { from: 'deploy/(?!lint/read-tsx|setup/daemon-bundle)', folders: ['deploy'], node: true },
  'daemon-bundle': { from: 'deploy/setup/daemon-bundle', packages: ['vite'] },
  'read-tsx': { from: 'deploy/lint/read-tsx', packages: ['@swc/core'] },
};

/** @param {string} name an npm package, or a scope as `@scope/*` */
const packagePath = (name) => `node_modules/${name.replace('.', '\\.').replace('*', '[^/]+')}/`;

/**
 * @param {string} name
 * @param {Row} row
 */
function ruleOf(name, { from, folders = [], packages = [], node = false }) {
  // A folder's own files are always allowed; a single file is a folder of its own.
  const own = from.endsWith('/') ? [`^${from}`] : [];
  const allowed = [...own, ...folders.map((folder) => `^${folder}/`), ...packages.map(packagePath)];
  return {
    name: `only-what-${name}-may-import`,
    comment: `Imports of ^${from}: ${[...folders, ...packages].join(', ') || 'its own folder alone'}.`,
    severity: 'error',
    from: { path: `^${from}` },
    to: {
      ...(allowed.length > 0 ? { pathNot: allowed } : {}),
      ...(node ? { dependencyTypesNot: ['core'] } : {}),
    },
  };
}

module.exports = {
  forbidden: [
    ...Object.entries(TABLE).map(([name, row]) => ruleOf(name, row)),
    {
      name: 'every-file-has-a-row',
      comment: 'A folder that the table does not know may import nothing.',
      severity: 'error',
      from: {
        path: '^(daemon|sensors|dashboard|deploy)/',
        pathNot: Object.values(TABLE).map((row) => `^${row.from}`),
      },
      to: {},
    },
    {
      name: 'the-truth-knows-no-model',
      comment:
        'The simulated paint cures by its own law: what judges the model must not borrow it.',
      severity: 'error',
      from: { path: '^sensors/shed/' },
      to: { path: '^daemon/science/(cure|touch|need-curve|mean-rate|uncertain-rate|oxidation)' },
    },
    {
      name: 'shed-physics-is-pure',
      comment: 'Physics of the shed: no clock, no socket, nothing of the scenario.',
      severity: 'error',
      from: { path: '^sensors/shed/physics/' },
      to: { pathNot: [`^${SCIENCE}/`, `^${CONTRACT}/`, '^sensors/shed/physics/'] },
    },
    {
      name: 'nothing-imports-a-test',
      comment: 'Tests import the source, never the other way round.',
      severity: 'error',
      from: { pathNot: '^test/' },
      to: { path: '^test/' },
    },
    {
      name: 'no-cycle',
      comment: 'Two files that need each other are one file, or lack a third below them.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-orphan',
      comment: 'A file that imports nothing and that nobody imports is forgotten.',
      severity: 'error',
      from: {
        orphan: true,
        // The bundler takes the service worker by itself.
        pathNot: [
          '^deploy/bin/',
          '^dashboard/offline/service-worker',
          '\\.d\\.ts$',
          '\\.config\\.ts$',
          '\\.test\\.ts$',
        ],
      },
      to: {},
    },
    {
      name: 'must-resolve',
      comment: 'The imported file or package does not exist.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    // Without this parser no .ts file is read under TypeScript 7, and nothing is ever found.
    parser: 'swc',
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.cjs', '.json', '.d.ts'],
    },
  },
};
