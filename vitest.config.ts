import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    exclude: ['test/long/**', '**/node_modules/**'],
    pool: 'threads',
    isolate: false,
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 300_000,
  },
});
