import type { EditionHeader } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';

/** A way from one edition to another, one step at a time. `backwards`: the way leads to an older edition. */
export interface EditionPath {
  /** Older to newer, each replaced by the next. */
  readonly editions: readonly string[];
  readonly backwards: boolean;
}

/** Finds the steps between two editions along what each one replaces. Throws NoPath where neither leads to the other. */
export function pathBetween(headers: readonly EditionHeader[], from: string, to: string): EditionPath {
  const forwards = climb(headers, to, from);
  if (forwards) return { editions: forwards, backwards: false };
  const back = climb(headers, from, to);
  if (back) return { editions: back, backwards: true };
  throw new CatalogError(
    'NoPath',
    `No line of editions leads from ${from} to ${to}: neither replaces the other, directly or over others between; name two of one line.`,
    { from, to },
  );
}

function climb(headers: readonly EditionHeader[], start: string, goal: string): string[] | undefined {
  const replaces = new Map(headers.map(h => [h.name, h.replaces]));
  const path: string[] = [];
  for (let at: string | null | undefined = start; at != null && !path.includes(at); at = replaces.get(at)) {
    path.unshift(at);
    if (at === goal) return path;
  }
  return undefined;
}
