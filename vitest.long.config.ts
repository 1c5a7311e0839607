import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/long/**/*.test.ts', 'test/fuzz/**/*.test.ts', 'test/browser/site.test.ts'],
    env: { FUZZ_TURNS: '10', EVERY_WINDOW: '1' },
    pool: 'threads',
    testTimeout: 1_800_000,
    hookTimeout: 600_000,
  },
});
