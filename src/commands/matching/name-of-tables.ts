import { basename } from 'node:path';

/** What an edition is called that exists as tables only. */
export const nameOfTables = (files: readonly string[]): string => files.map(nameOf).join('+');

/** What each of several tables is called: by its file's name, where no other has the same. */
export function namesOfTables(files: readonly string[]): readonly string[] {
  const names = files.map(nameOf);
  return names.map((name, at) => (names.indexOf(name) === names.lastIndexOf(name) ? name : files[at]!));
}

const nameOf = (file: string) => basename(file).replace(/\.[^.]+$/, '');
