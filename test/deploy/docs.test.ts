import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import specs from '@asyncapi/specs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { metrics } from '../../daemon/contract/metric.ts';
import { mqttChannels } from '../../daemon/contract/mqtt-channel.ts';
import { problems } from '../../daemon/contract/problem.ts';
import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { routes } from '../../daemon/contract/routes.ts';
import { loadSettings } from '../../daemon/settings/load.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { problem } from '../../daemon/wording/en/problem.ts';
import { temporaryFolder } from '../store/store-sides.ts';
import { write } from './small-project.ts';

const PROJECT = join(import.meta.dirname, '../..');
const { generatedPages } = await import(join(PROJECT, 'deploy/docs/pages.mjs'));
const { problemEntries } = await import(join(PROJECT, 'deploy/docs/problem-entries.mjs'));
const { importedPackages } = await import(join(PROJECT, 'deploy/release/runtime-packages.mjs'));

const text = (name: string) => readFileSync(join(PROJECT, name), 'utf8');
const pages: Record<string, string> = generatedPages({
  settings: Settings,
  routes,
  problems: problemEntries(problems, problem),
  channels: mqttChannels,
  quantities: quantityFacts,
  metrics,
  lock: JSON.parse(text('package-lock.json')),
  imported: importedPackages([join(PROJECT, '.build/daemon'), join(PROJECT, '.build/sensors')]),
  bundled: ['preact', '@preact/signals', 'uplot'],
});

describe('the generated pages', () => {
  it.each(Object.keys(pages))('deploy/%s fits the sources (else: npm run docs)', (name) => {
    expect(text(join('deploy', name)) === pages[name], 'run: npm run docs').toBe(true);
  });

  it('name every setting, route, error, topic, quantity and figure', () => {
    for (const { method, path } of Object.values(routes)) {
      expect(pages['http.md']).toContain(`\n### ${method} ${path}\n`);
    }
    for (const code of Object.keys(problems)) expect(pages['http.md']).toContain(`| \`${code}\` |`);
    for (const word of Object.keys(quantityFacts))
      expect(pages['mqtt.md']).toContain(`| \`${word}\` |`);
    for (const { name } of Object.values(metrics))
      expect(pages['metrics.md']).toContain(`\`${name}\``);
    expect(pages['settings.md']).not.toContain('| anything |');
  });
});

describe('the example of a settings file', () => {
  const example = pages['boardcure.toml'] ?? '';
  const { folder, remove } = temporaryFolder();
  const load = (toml: string) => {
    write(folder, { 'boardcure.toml': toml });
    return loadSettings({ args: ['--config', 'boardcure.toml'], env: {}, cwd: folder });
  };

  it('is all defaults as it stands, and also with every line of it taken into use', () => {
    const defaults = { ...Settings.parse({}), data: join(folder, 'data') };
    expect(load(example)).toEqual(defaults);
    const used = example.replace(/^# (\w+ = (?!…).*)$/gm, '$1');
    expect(used.split('\n').filter((line) => /^\w+ = /.test(line)).length).toBeGreaterThan(30);
    expect(load(used)).toEqual(defaults);
    remove();
  });
});

// **Source:** the JSON Schema of AsyncAPI 3.0.0 as its makers publish it (package @asyncapi/specs).
describe('the description of the topics', () => {
  const check = new Ajv({ strict: false, allErrors: true, validateFormats: false });
  const isValid = check.compile(specs.schemasWithoutId['3.0.0'] as object);
  const document = () => JSON.parse(pages['asyncapi.json'] ?? '');

  it('is an AsyncAPI 3.0 document', () => {
    expect(isValid(document()), JSON.stringify(isValid.errors?.slice(0, 5), null, 1)).toBe(true);
  });

  it('would be refused with a wrong action, or without its title', () => {
    const wrong = document();
    wrong.operations['take-value'].action = 'listen';
    expect(isValid(wrong)).toBe(false);
    const { title: _, ...rest } = document().info;
    expect(isValid({ ...document(), info: rest })).toBe(false);
  });
});
