// Our embedded broker, in a process of its own, that stores nothing and acknowledges at once.
// Argument: the address of the folder with the built program.
import { setFlagsFromString } from 'node:v8';

// As the daemon does.
setFlagsFromString('--optimize-for-size');
const [build] = process.argv.slice(2);
const { startBroker } = await import(new URL('daemon/ingest/broker.js', build).href);
const { port } = await startBroker({
  host: '127.0.0.1',
  port: 0,
  take: (_message, acknowledge) => acknowledge(null),
  log: { info() {}, warn() {} },
});
process.stdout.write(`${JSON.stringify({ port })}\n`);
