import { defineConfig, type Plugin } from 'vite';

/** What is served beside the bundle, from `public`. */
const publicFiles = [
  'mark.svg',
  'app.webmanifest',
  'icon-180.png',
  'icon-192.png',
  'icon-512.png',
] as const;

/**
 * Tells the service worker which files make up this build, and a mark that differs with any of them.
 * A few lines: libraries for this bring their own caching rules and some hundred packages.
 */
function shellOfWorker(): Plugin {
  return {
    name: 'boardcure-shell',
    enforce: 'post',
    async generateBundle(_, bundle) {
      const worker = bundle['sw.js'];
      if (worker?.type !== 'chunk') throw new Error('the service worker was not built');
      const contents = Object.values(bundle)
        .map((file) => `${file.fileName}\n${file.type === 'chunk' ? file.code : file.source}`)
        .sort();
      const digest = await crypto.subtle.digest(
        'SHA-256',
        new TextEncoder().encode(contents.join('\n')),
      );
      const mark = [...new Uint8Array(digest.slice(0, 8))]
        .map((byte) => byte.toString(16).padStart(2, '0'))
        .join('');
      // The page itself is known by the folder that it is in.
      const files = ['', ...Object.keys(bundle), ...publicFiles].filter(
        (file) => file !== 'sw.js' && file !== 'index.html',
      );
      worker.code = `const SHELL_FILES=${JSON.stringify(files)},SHELL_VERSION=${JSON.stringify(mark)};${worker.code}`;
    },
  };
}

/**
 * The script of the pages is fetched beside the entry that asks for it, not after it has run: the
 * bundler names only what an entry imports at once.
 */
function fetchedBesideEntry(): Plugin {
  return {
    name: 'boardcure-beside-entry',
    transformIndexHtml: {
      order: 'post',
      handler(_, { bundle }) {
        const chunks = Object.values(bundle ?? {}).flatMap((file) =>
          file.type === 'chunk' ? [file] : [],
        );
        const entry = chunks.find(({ name }) => name === 'index');
        const pages = chunks.find(({ moduleIds }) =>
          moduleIds.some((id) => id.endsWith('/main.tsx')),
        );
        if (entry === undefined || pages === undefined) throw new Error('main.tsx was not built');
        return [pages.fileName, ...pages.imports]
          .filter((file) => file !== entry.fileName && !entry.imports.includes(file))
          .map((file) => ({
            tag: 'link',
            attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
            injectTo: 'head' as const,
          }));
      },
    },
  };
}

/**
 * What is needed at one moment is one file: the bundler alone cuts by who shares what, and each file more is
 * a request that a slow tablet waits for. A group takes what its modules import along; the first one wins.
 */
const fetchedTogether = [
  // Asks for the words while the pages are on their way, so it must wait for neither.
  { name: 'index', test: /dashboard\/(index\.html|entry\.ts)$/ },
  // The wall with all that it shares with other pages, and what languages share.
  {
    name: 'main',
    test: /dashboard\/main\.tsx$|words\/(plural|times)\.ts$|wording\/fault-phrases\.ts$/,
  },
  // What a wall says in one language.
  {
    debugName: 'wall words',
    name: (id: string) => {
      const language = /\/(\w\w)(?:\/first|-wall)\.ts$/.exec(id)?.[1];
      return language === undefined ? null : `wall-${language}`;
    },
  },
  { name: 'chart', test: /chart\/chart-block\.tsx$/ },
];

export default defineConfig({
  root: new URL('.', import.meta.url).pathname,
  // Relative, so that the pages may be served from any folder.
  base: './',
  publicDir: 'public',
  plugins: [shellOfWorker(), fetchedBesideEntry()],
  // Never the slower development form of JSX, whatever NODE_ENV says.
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact', development: false } },
  build: {
    outDir: '../.build/dashboard',
    emptyOutDir: true,
    target: 'es2018',
    cssTarget: ['chrome90', 'firefox88', 'safari14'],
    modulePreload: { polyfill: false },
    // A data: address would break the Content-Security-Policy `default-src 'self'`.
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: {
        index: new URL('index.html', import.meta.url).pathname,
        sw: new URL('offline/service-worker.ts', import.meta.url).pathname,
      },
      output: {
        codeSplitting: { groups: fetchedTogether },
        // Under a fixed name in the folder of the page, so that its scope is all of it.
        entryFileNames: ({ name }) => (name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js'),
      },
    },
  },
});
