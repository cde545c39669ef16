import { lineFrom } from '../../commands/reading/trace-number.ts';
import type { EditionHeader } from '../../model/edition.ts';

/** The editions that lead to one and on from it, oldest first. */
export function lineThrough(headers: readonly EditionHeader[], edition: string): string[] {
  const before: string[] = [];
  for (let at = edition; ; ) {
    const older = headers.find(h => h.name === at)?.replaces;
    if (!older || older === edition || before.includes(older)) break;
    before.unshift(older);
    at = older;
  }
  return [...before, ...lineFrom(headers, edition)];
}
