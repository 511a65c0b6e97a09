import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { plantTree, ROOT, runTool } from './planted-tree.ts';

interface Refusal {
  rule: string;
  from: string;
}

const { cruise } = await import(join(ROOT, 'deploy/lint/cruise.mjs'));
const refused = (tree: string): string[] =>
  cruise(tree).violations.map(({ rule, from }: Refusal) => `${rule}: ${from}`);
const compile = (tree: string, project: string) =>
  runTool(tree, 'typescript/bin/tsc', '-b', project);
const lint = (tree: string) =>
  runTool(tree, '@biomejs/biome/bin/biome', 'check', '--reporter=github', '--max-diagnostics=200');

/** A small tree in which every import is allowed; each test plants one fault in it. */
const SOUND = {
  'daemon/contract/place.ts':
    "import { z } from 'zod';\n\nexport const Place = z.strictObject({ name: z.string() });\nexport type Place = z.infer<typeof Place>;\n",
  'daemon/science/air.ts': 'export const doubled = (tempC: number): number => tempC * 2;\n',
  'daemon/wording/cold.ts':
    "import type { Place } from '../contract/place.ts';\n\nexport const cold = (place: Place): string => place.name;\n",
  'daemon/rules/warm.ts':
    "import type { Place } from '../contract/place.ts';\nimport { doubled } from '../science/air.ts';\nimport { cold } from '../wording/cold.ts';\n\nexport const warm = (place: Place, at: number): string =>\n  cold(place) + doubled(new Date(at).getTime());\n",
  'daemon/store/open.ts':
    "import { join } from 'node:path';\nimport Database from 'better-sqlite3';\nimport { warm } from '../rules/warm.ts';\n\nexport const open = (folder: string): Database.Database =>\n  new Database(join(folder, warm({ name: 'a' }, 1)));\n",
  'daemon/command/demo.ts':
    "import { open } from '../store/open.ts';\nimport { shed } from '../../sensors/shed/shed.ts';\n\nexport const demo = (): unknown => open(shed);\n",
  'sensors/shed/shed.ts':
    "import { doubled } from '../../daemon/science/air.ts';\n\nexport const shed = String(doubled(2));\n",
  'sensors/payload/plain.ts':
    "import { doubled } from '../../daemon/science/air.ts';\n\nexport const plain = doubled(1);\n",
  'sensors/correct/clamp.ts':
    "import { doubled } from '../../daemon/science/air.ts';\n\nexport const clamp = doubled(1);\n",
  'dashboard/chart/climate.ts':
    "import uPlot from 'uplot';\n\nexport const chart = (options: uPlot.Options): uPlot => new uPlot(options, [[]]);\n",
  'dashboard/view.tsx':
    'import { page } from \'./page.ts\';\n\nexport const view = <section class="a">{String(page)}</section>;\n',
  'dashboard/page.ts':
    "import { render } from 'preact';\nimport type { Place } from '../daemon/contract/place.ts';\nimport { cold } from '../daemon/wording/cold.ts';\nimport { chart } from './chart/climate.ts';\n\nexport const page = (place: Place): unknown => [render, chart, cold(place)];\n",
};

describe('an import that goes the right way', () => {
  it('passes all three nets', () => {
    const tree = plantTree(SOUND);
    expect(refused(tree)).toEqual([]);
    expect(cruise(tree).files).toEqual(expect.arrayContaining(Object.keys(SOUND)));
    expect(compile(tree, 'daemon')).toMatchObject({ code: 0 });
    expect(lint(tree).output).not.toMatch(/title=plugin|title=lint/);
  });
});

/** Rule that must be named, planted file, its text. */
const WRONG_WAYS: [string, string, string][] = [
  ['only-what-science-may-import', 'daemon/science/b1.ts', "import '../rules/warm.ts';"],
  [
    'only-what-science-may-import',
    'daemon/science/b2.ts',
    "import type { Place } from '../contract/place.ts';",
  ],
  ['only-what-science-may-import', 'daemon/science/b3.ts', "import 'node:fs';"],
  ['only-what-science-may-import', 'daemon/science/cure-b4.ts', "import 'zod';"],
  ['only-what-wording-may-import', 'daemon/wording/b1.ts', "import '../rules/warm.ts';"],
  ['only-what-wording-may-import', 'daemon/wording/b2.ts', "import 'zod';"],
  ['only-what-rules-may-import', 'daemon/rules/b1.ts', "import '../store/open.ts';"],
  [
    'only-what-rules-may-import',
    'daemon/rules/b2.ts',
    "export const later = () => import('../store/open.ts');",
  ],
  [
    'only-what-rules-may-import',
    'daemon/rules/b3.ts',
    "import {\n  open,\n} from '../store/open.ts';\nexport const a = open;",
  ],
  ['only-what-monitor-may-import', 'daemon/monitor/b1.ts', "import '../store/open.ts';"],
  ['only-what-monitor-may-import', 'daemon/monitor/b2.ts', "import 'node:timers';"],
  ['only-what-http-may-import', 'daemon/http/b1.ts', "import '../store/open.ts';"],
  ['only-what-http-may-import', 'daemon/http/routes/b1.ts', "import 'better-sqlite3';"],
  ['only-what-store-may-import', 'daemon/store/b1.ts', "import 'fastify';"],
  [
    'only-what-store-may-import',
    'daemon/store/b2.ts',
    "import '../../daemon/../sensors/payload/plain.ts';",
  ],
  ['only-what-ingest-may-import', 'daemon/ingest/b1.ts', "import '../store/open.ts';"],
  ['only-what-settings-may-import', 'daemon/settings/b1.ts', "import 'pino';"],
  ['only-what-schedule-may-import', 'daemon/schedule/b1.ts', "import 'node-cron';"],
  ['only-what-command-may-import', 'daemon/command/b1.ts', "import '../../sensors/shed/shed.ts';"],
  ['only-what-payload-may-import', 'sensors/payload/b1.ts', "import 'node:buffer';"],
  ['only-what-correct-may-import', 'sensors/correct/b1.ts', "import '../payload/plain.ts';"],
  ['only-what-shed-may-import', 'sensors/shed/b1.ts', "import '../../daemon/store/open.ts';"],
  [
    'the-truth-knows-no-model',
    'sensors/shed/physics/b2.ts',
    "import '../../../daemon/science/cure-b4.ts';",
  ],
  ['shed-physics-is-pure', 'sensors/shed/physics/b3.ts', "import '../shed.ts';"],
  ['only-what-dashboard-may-import', 'dashboard/b1.ts', "import 'uplot';"],
  ['only-what-dashboard-may-import', 'dashboard/b2.ts', "import '../daemon/science/air.ts';"],
  ['only-what-dashboard-may-import', 'dashboard/b3.ts', "import 'zod';"],
  [
    'only-what-dashboard-may-import',
    'dashboard/b4.tsx',
    'import \'uplot\';\nexport const a = <p class="a">b</p>;',
  ],
  ['only-what-main-may-import', 'daemon/b1.ts', "import 'fastify';"],
  ['only-what-clock-may-import', 'daemon/clock.ts', "import './store/open.ts';"],
  ['every-file-has-a-row', 'daemon/elsewhere/b1.ts', "import '../science/air.ts';"],
  ['must-resolve', 'daemon/store/b3.ts', "import './missing.ts';"],
  ['no-orphan', 'daemon/rules/b4.ts', 'export const alone = 1;'],
];

describe('dependency-cruiser', () => {
  let found: string[] = [];
  beforeAll(() => {
    const planted = WRONG_WAYS.map(([, file, text]) => [file, `${text}\n`]);
    found = refused(plantTree({ ...SOUND, ...Object.fromEntries(planted) }));
  });

  it.each(WRONG_WAYS)('refuses, as %s, in %s: %s', (rule, file) => {
    expect(found).toContain(`${rule}: ${file}`);
  });

  it('refuses two files that need each other', () => {
    const there = { 'daemon/rules/egg.ts': "import './hen.ts';\n" };
    const back = { 'daemon/rules/hen.ts': "import './egg.ts';\n" };
    const found = refused(plantTree({ ...SOUND, ...there, ...back }));
    expect(found).toEqual([expect.stringMatching('no-cycle: daemon/rules/(egg|hen).ts')]);
  });
});

describe('the compiler', () => {
  it.each([
    ['Node’s modules', "import { readFileSync } from 'node:fs';\nexport const a = readFileSync;\n"],
    ['the process', 'export const a = process.argv;\n'],
    ['timers', 'export const a = setTimeout;\n'],
    [
      'the layer above it, even for a type',
      "import type { warm } from '../rules/warm.ts';\nexport type A = typeof warm;\n",
    ],
  ])('refuses science %s', (_what, text) => {
    const tree = plantTree({ ...SOUND, 'daemon/science/bad.ts': text });
    const { code, output } = compile(tree, 'daemon/science');
    expect(code).not.toBe(0);
    expect(output).toMatch(/science\/bad\.ts.*error TS/);
  });
});

/** Planted file, its text; each is refused by one of our own lint rules. */
const UNCLEAN: [string, string][] = [
  ['daemon/rules/b1.ts', 'export const bad = Date.now();'],
  ['daemon/monitor/b1.ts', 'export const bad = Date.now();'],
  ['daemon/contract/b1.ts', 'export const bad = new Date();'],
  ['daemon/science/b1.ts', 'export const bad = [new Date()];'],
  ['daemon/wording/b1.ts', 'export const bad = Date.now();'],
  ['sensors/correct/b1.ts', 'export const bad = Math.random();'],
  ['sensors/payload/b1.ts', 'export const bad = [1].map(Math.random);'],
  ['dashboard/b1.ts', "import { Place } from '../daemon/contract/place.ts';"],
  ['dashboard/b2.ts', "import { type Place, Place as a } from '../daemon/contract/place.ts';"],
  ['dashboard/b3.ts', "export { Place } from '../daemon/contract/place.ts';"],
  ['dashboard/b4.ts', "export const lazy = () => import('../daemon/contract/place.ts');"],
  ['dashboard/b5.tsx', "import '../daemon/contract/place.ts';"],
];

describe('Biome', () => {
  let output = '';
  beforeAll(() => {
    const planted = UNCLEAN.map(([file, text]) => [file, `${text}\n`]);
    const found = lint(plantTree({ ...SOUND, ...Object.fromEntries(planted) }));
    expect(found.code).not.toBe(0);
    output = found.output;
  });

  it.each(UNCLEAN)('refuses in %s: %s', (file) => {
    expect(output).toMatch(new RegExp(`::error title=plugin,file=[^,]*${file},line=1,`));
  });
});
