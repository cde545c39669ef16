import { defineConfig } from 'vitest/config';

/** Folders whose tests change nothing that other files of the same process see: they share one load of the modules. */
const SHARING =
  'architecture,audit,carryover,citing,content,crosswalk,documents,drafting,editing,exports,format,governs,matching,model,office,outside,release,search,tables'
    .split(',')
    .map(name => (name === 'architecture' ? 'tests/architecture.test.ts' : `tests/${name}/**/*.test.ts`));

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
    projects: [
      { test: { name: 'sharing', include: SHARING, isolate: false, ...ALL } },
      { test: { name: 'alone', include: ['tests/**/*.test.ts'], exclude: SHARING, ...ALL } },
    ],
  },
});
