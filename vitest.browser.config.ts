import { defineConfig } from 'vitest/config';

/** Browser tests: one file after another, one browser for all of a file, long limits for software rendering. */
export default defineConfig({
  test: {
    include: ['tests/e2e/**/*.e2e.ts'],
    environment: 'node',
    pool: 'forks',
    maxWorkers: 1,
    fileParallelism: false,
    testTimeout: 240000,
    hookTimeout: 120000,
    globalSetup: ['tests/e2e/setup.ts'],
  },
});
