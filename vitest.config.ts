import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    // Real repositories, browsers and native git are slow to start on a busy machine; no test asserts a time.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
    // What the tests print is read where one fails.
    silent: 'passed-only',
  },
});
