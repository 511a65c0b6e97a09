import { run } from './cli.ts';

// The simulated shed as the child of a daemon: it ends with whoever started it, however that ended.
process.once('disconnect', () => process.kill(process.pid, 'SIGTERM'));
await run(['demo', ...process.argv.slice(2)]);
