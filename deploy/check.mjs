import { runChecks } from './lint/run-checks.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';

try {
  await ensureInstalled(PROJECT_ROOT);
  if ((await runChecks(PROJECT_ROOT)).length > 0) process.exitCode = 1;
} catch (error) {
  endWithFault(error);
}
