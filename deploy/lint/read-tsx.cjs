// dependency-cruiser 17 asks swc for TypeScript without JSX and stops at the first tag of a .tsx
// file. Loaded before it, this asks for JSX where the file's name says so.
const swc = require('@swc/core');

const { parseFileSync } = swc;
swc.parseFileSync = (file, options) =>
  parseFileSync.call(swc, file, { ...options, tsx: file.endsWith('.tsx') });
