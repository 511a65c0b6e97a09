import { defineConfig } from 'vite';

export default defineConfig({
  root: new URL('.', import.meta.url).pathname,
  // Relative, so that the pages may be served from any folder.
  base: './',
  publicDir: 'public',
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
  },
});
