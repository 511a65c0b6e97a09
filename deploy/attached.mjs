#!/usr/bin/env node
// Syntax that old versions of Node can read, so that they live to print the message below.
const major = Number(process.versions.node.split('.')[0]);
if (major < 20) {
  process.stderr.write(
    'boardcure-attached: this is Node ' +
      process.versions.node +
      ' (' +
      process.execPath +
      '), and boardcure needs Node 20 or later.\n' +
      '  what to do: install a current Node.js, then run the same command again.\n',
  );
  process.exitCode = 1;
} else {
  void import('./setup/start.mjs').then((setup) =>
    setup.start(process.argv.slice(2), ['bundle', 'attached.js']),
  );
}
