import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { runChecks } from './lint/run-checks.mjs';
import { ensureBuilt } from './setup/build.mjs';
import { ensureParts } from './setup/debian-packages.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';
import { runVitest } from './setup/vitest-run.mjs';

let count = { passed: 0, failed: 1, skipped: 0 };
try {
  await ensureInstalled(PROJECT_ROOT);
  await ensureParts(JSON.parse(readFileSync(join(PROJECT_ROOT, 'test/house/parts.json'), 'utf8')));
  await ensureBuilt(PROJECT_ROOT);
  const failedChecks = await runChecks(PROJECT_ROOT);
  count = await runVitest(PROJECT_ROOT, process.argv.slice(2));
  count.failed += failedChecks.length;
} catch (error) {
  endWithFault(error);
}
if (count.failed > 0 || count.passed === 0) process.exitCode = 1;
process.stdout.write(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
