import { ensureBuilt } from './setup/build.mjs';
import { checkTypes } from './setup/compile.mjs';
import { endWithFault } from './setup/fault.mjs';
import { ensureInstalled } from './setup/install.mjs';
import { PROJECT_ROOT } from './setup/project-root.mjs';

try {
  await ensureInstalled(PROJECT_ROOT);
  await ensureBuilt(PROJECT_ROOT);
  await checkTypes(PROJECT_ROOT);
} catch (error) {
  endWithFault(error);
}
