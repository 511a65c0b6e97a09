import { defineConfig } from 'vitest/config';

/** The long run of the generated inputs: `npm run fuzz`. The short run is part of `npm test`. */
export default defineConfig({
  test: {
    include: ['test/fuzz/**/*.fuzz.ts'],
    testTimeout: 600_000,
  },
});
