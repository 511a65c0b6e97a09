// The programs in a few files, with what they use of their packages: a thousand small ones take a board's
// card longer to find than the daemon to start. A program of its own, so that the bundler's memory is
// not the daemon's. Each program that the daemon starts itself is an entry, found beside what starts it.
import { build } from 'vite';

/** @param {string} path from the project's folder */
const inProject = (path) => new URL(`../../${path}`, import.meta.url).pathname;

/** @param {string} file below .build, without its ending */
const compiled = (file) => inProject(`.build/${file}.js`);

await build({
  configFile: false,
  root: inProject(''),
  publicDir: false,
  logLevel: 'warn',
  // These look for files of their own beside them.
  ssr: { noExternal: true, external: ['better-sqlite3', 'pino'] },
  build: {
    ssr: true,
    outDir: inProject('.build/bundle'),
    emptyOutDir: true,
    target: 'node20',
    minify: false,
    license: { fileName: 'licences.md' },
    rolldownOptions: {
      input: {
        cli: compiled('daemon/command/cli'),
        worker: compiled('daemon/store/worker'),
        'backup-process': compiled('daemon/store/backup-process'),
        'damage-process': compiled('daemon/store/damage-process'),
        'command/demo-process': compiled('daemon/command/demo-process'),
        attached: compiled('sensors/attached/command'),
      },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});
