import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

// Suites that start processes, brokers and browsers: one file after the other, with time to spare.
const WHOLE_WAY = [
  'test/browser/**/*.test.ts',
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
          exclude: [...WHOLE_WAY, 'test/bench/**', 'test/fuzz/**', 'test/soak/**'],
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
    ],
  },
});
