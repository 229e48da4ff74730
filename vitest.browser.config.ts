import { defineConfig } from 'vitest/config';

/** Browser tests: two files at a time in one browser, since much of each is waiting; long limits for software rendering. */
export default defineConfig({
  test: {
    include: ['tests/e2e/**/*.e2e.ts'],
    environment: 'node',
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 240000,
    hookTimeout: 120000,
    globalSetup: ['tests/e2e/setup.ts'],
  },
});
