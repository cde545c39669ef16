import { basename } from 'node:path';

/** What an edition is called that exists as tables only. */
export const nameOfTables = (files: readonly string[]): string =>
  files.map(f => basename(f).replace(/\.[^.]+$/, '')).join('+');
