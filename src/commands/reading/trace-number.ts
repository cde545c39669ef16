import { type Step, type Trace, traceItem } from '../../content/links/trace.ts';
import type { EditionHeader } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { TypeId } from '../../model/item.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { nearestNames } from '../../text/nearest.ts';
import { remember } from '../remember.ts';
import { allHeaders, readCrosswalk } from './read-crosswalk.ts';

export interface TraceRequest {
  /** A printed number, or an id. */
  readonly number: string;
  /** The edition whose number it is; absent: every edition that prints it is shown, and none is chosen. */
  readonly edition?: string;
  readonly type?: TypeId;
}

/**
 * What became of a number, in every edition that prints it (or the one asked for), up to the newest edition. Throws
 * UnknownNumber, with the nearest ones, where none does.
 */
export async function traceNumber(catalog: Catalog, request: TraceRequest): Promise<Trace[]> {
  const at = request.edition === undefined ? undefined : await locate(catalog, request.edition);
  // A branch has the name of its draft, and an erratum that of its edition: by that name alone another one is read.
  const held = at ? holding(catalog, at) : catalog;
  const headers = (await allHeaders(held)).filter(h => h.state === 'published' || h.name === at?.name);
  const asked = at ? [at.name] : headers.map(h => h.name);
  // Every edition's trace runs through the same later steps; each is read once.
  const readStep = remember(headers.length, async to =>
    readCrosswalk(held, headers.find(h => h.name === to)!.replaces!, to),
  );
  const traces: Trace[] = [];
  const numbers = new Set<string>();
  for (const name of asked) {
    const index = await readIndex(held, name);
    const found = index.entries.filter(e => e.number === request.number || e.id === request.number);
    for (const entry of index.entries) numbers.add(entry.number);
    if (found.length === 0) continue;
    const line = lineFrom(headers, name);
    const steps: Step[] = [];
    for (let at = 1; at < line.length; at++) steps.push(await readStep(line[at]!));
    const replaces = headers.find(h => h.name === name)?.replaces;
    const before = replaces ? await readStep(name) : undefined;
    const draft = index.header.state === 'draft' ? { draft: true as const } : {};
    for (const entry of found) traces.push({ ...traceItem(name, entry, steps, before, request.type), ...draft });
  }
  if (traces.length > 0) return traces;
  const nearest = nearestNames(request.number, numbers);
  const where = request.edition === undefined ? 'No edition has' : `Edition ${request.edition} has no`;
  throw new CatalogError(
    'UnknownNumber',
    `${where} ${request.edition === undefined ? 'a ' : ''}number ${request.number}${
      nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}.` : '; look for words with: fishplate search'
    }`,
    { number: request.number, nearest },
  );
}

/** The editions from one on to the newest of its line; where two replace the same one, the later named. */
export function lineFrom(headers: readonly EditionHeader[], start: string): string[] {
  const line = [start];
  for (;;) {
    const next = headers.findLast(h => h.replaces === line.at(-1) && !line.includes(h.name));
    if (!next) return line;
    line.push(next.name);
  }
}
