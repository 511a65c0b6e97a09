// The start of an installed program: it was built elsewhere, and nothing is installed or built here.
const cli = new URL('./bundle/cli.js', import.meta.url);
const { run } = await import(cli.href);
await run(process.argv.slice(2));
