// The start of the installed reader of wired sensors: it was built elsewhere.
const command = new URL('./bundle/attached.js', import.meta.url);
const { run } = await import(command.href);
await run(process.argv.slice(2));
