import { defineConfig } from 'vitest/config';
import { LongestFirst } from './tests/longest-first.ts';

/** What starts processes, mounts disks or kills something: nothing of that stays behind in the process of another file. */
const ALONE = ['tests/store/**/*.test.ts', 'tests/databases/**/*.test.ts', 'tests/readme.test.ts'];

const ALL = {
  // Real repositories, browsers and native git are slow to start on a busy machine; no test asserts a time.
  testTimeout: 120_000,
  hookTimeout: 180_000,
};

export default defineConfig({
  test: {
    maxWorkers: 2,
    // What the tests print is read where one fails.
    silent: 'passed-only',
    sequence: { sequencer: LongestFirst },
    projects: [
      { test: { name: 'alone', include: ALONE, ...ALL } },
      // All others share one load of the modules, which takes longer than most of their tests: 2.5 s of a processor a file.
      { test: { name: 'sharing', include: ['tests/**/*.test.ts'], exclude: ALONE, isolate: false, ...ALL } },
    ],
  },
});
