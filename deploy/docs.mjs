import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { generatedPages } from './docs/pages.mjs';
import { problemEntries } from './docs/problem-entries.mjs';
import { importedPackages } from './release/runtime-packages.mjs';
import { ensureBuilt } from './setup/build.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { readJson } from './setup/read-json.mjs';
import { say } from './setup/say.mjs';

/** Packages that the bundler puts into the dashboard’s file. */
const BUNDLED = ['preact', '@preact/signals', 'uplot'];

try {
  await ensureInstalled(PROJECT_ROOT);
  await ensureBuilt(PROJECT_ROOT);
  const build = join(PROJECT_ROOT, '.build');
  const built = (/** @type {string} */ path) =>
    import(pathToFileURL(join(build, 'daemon', path)).href);
  const pages = generatedPages({
    settings: (await built('settings/schema.js')).Settings,
    routes: (await built('contract/routes.js')).routes,
    problems: problemEntries(
      (await built('contract/problem.js')).problems,
      (await built('wording/en/problem.js')).problem,
    ),
    channels: (await built('contract/mqtt-channel.js')).mqttChannels,
    quantities: (await built('contract/quantity.js')).quantityFacts,
    metrics: (await built('contract/metric.js')).metrics,
    lock: readJson(join(PROJECT_ROOT, 'package-lock.json')),
    imported: importedPackages([join(build, 'daemon'), join(build, 'sensors')]),
    bundled: BUNDLED,
  });
  for (const [name, text] of Object.entries(pages)) {
    writeFileSync(join(PROJECT_ROOT, 'deploy', name), text);
    say(`deploy/${name}`);
  }
} catch (error) {
  endWithFault(error);
}
