import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Suites that start processes, brokers and browsers: one file after the other, with time to spare.
const BROWSER = ['test/browser/**/*.test.ts'];
const WHOLE_WAY = [
  'test/command/**/*.test.ts',
  'test/deploy/**/*.test.ts',
  'test/faults/**/*.test.ts',
  'test/journey/**/*.test.ts',
  'test/load/**/*.test.ts',
  'test/house/**/*.test.ts',
];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    setupFiles: ['test/house/steady-chance.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'parts',
          include: ['test/**/*.test.ts'],
          exclude: [...BROWSER, ...WHOLE_WAY, 'test/bench/**', 'test/fuzz/**', 'test/soak/**'],
          testTimeout: 20_000,
          hookTimeout: 20_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          name: 'whole way',
          include: WHOLE_WAY,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          maxWorkers: 1,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: BROWSER,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // What is looked for again and again is waited for as long as what a browser is told to wait for.
          expect: { poll: { timeout: 30_000 } },
          maxWorkers: 1,
          // A browser beside a daemon on a busy machine can be late once. What is wrong is wrong twice; what
          // loses or bends a reading is tested elsewhere and gets no second try.
          retry: process.env.CI === undefined ? 0 : 1,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
