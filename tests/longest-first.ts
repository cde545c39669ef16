import { BaseSequencer, type TestSpecification } from 'vitest/node';

/**
 * Files that take long and do not look it. A new clone knows no durations, and by size these would begin last, when the
 * other worker has nothing left to do.
 */
const LONG = [
  'tests/store/killed-processes.test.ts',
  'tests/store/killed-anywhere.test.ts',
  'tests/browser/carry-page.test.ts',
  'tests/browser/carry-engine.test.ts',
  'tests/bundle/pieces.test.ts',
  'tests/bundle/bundle.test.ts',
  'tests/web/stories.test.ts',
  'tests/documents/libreoffice.test.ts',
  'tests/audit/cli.test.ts',
  'tests/audit/audit.test.ts',
];

/** The order in which vitest runs the files, with the long ones of each project before all others of it. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const project = (file: TestSpecification) => sorted.findIndex(other => other.project === file.project);
    const short = (file: TestSpecification) => (LONG.some(name => file.moduleId.endsWith(name)) ? 0 : 1);
    return sorted.toSorted((a, b) => project(a) - project(b) || short(a) - short(b));
  }
}
