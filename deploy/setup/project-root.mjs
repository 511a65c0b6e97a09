import { fileURLToPath } from 'node:url';

/** The project's top folder, wherever the command was called from. */
export const PROJECT_ROOT = fileURLToPath(new URL('../../', import.meta.url));
