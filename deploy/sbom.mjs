import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { billOfMaterials } from './release/bill-of-materials.mjs';
import { importedPackages, runtimePackages } from './release/runtime-packages.mjs';
import { timeOfSources } from './release/time-of-sources.mjs';
import { ensureBuilt } from './setup/build.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { readJson } from './setup/read-json.mjs';
import { say } from './setup/say.mjs';

/** Packages that the bundler puts into the dashboard’s file: they run too, in the browser. */
const BUNDLED = ['preact', '@preact/signals', 'uplot'];

try {
  await ensureInstalled(PROJECT_ROOT);
  await ensureBuilt(PROJECT_ROOT);
  const lock = readJson(join(PROJECT_ROOT, 'package-lock.json'));
  const build = join(PROJECT_ROOT, '.build');
  const imported = importedPackages([join(build, 'daemon'), join(build, 'sensors')]);
  const runs = new Set(
    runtimePackages(lock, [...imported, ...BUNDLED]).map((path) => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return `${name}@${lock.packages[path].version}`;
    }),
  );
  const args = ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only'];
  const said = execFileSync('npm', args, { cwd: PROJECT_ROOT, maxBuffer: 64 << 20 });
  const { name, version } = readJson(join(PROJECT_ROOT, 'package.json'));
  const bill = billOfMaterials(JSON.parse(said.toString()), {
    ...{ name, version, runs },
    seconds: timeOfSources(PROJECT_ROOT),
  });
  const file = join(PROJECT_ROOT, '.release', `boardcure-${version}.cdx.json`);
  mkdirSync(join(PROJECT_ROOT, '.release'), { recursive: true });
  writeFileSync(file, `${JSON.stringify(bill, null, 2)}\n`);
  say(`${file}: ${bill.components.length} components`);
} catch (error) {
  endWithFault(error);
}
