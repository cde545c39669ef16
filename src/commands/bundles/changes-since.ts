import { type Change, changesOf } from '../../exports/changes.ts';
import type { Publication } from '../../exports/publication.ts';
import { writeChangesCsv, writeChangesFeed, writeChangesPage } from '../../exports/write-changes.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import type { Ports } from '../ports/ports.ts';
import { readPublication } from './bundle-source.ts';
import { readBundleTemplates } from './bundle-templates.ts';
import { addressIn } from './publish-bundle.ts';

export interface ChangesRequest {
  /** An edition, or a day: then the newest edition that was published by that day. */
  readonly since: string;
  /** Absent: the newest published edition. */
  readonly to?: string;
  readonly part?: string;
  /** A file with numbers of the older edition, apart by blanks, commas or line ends. */
  readonly items?: string;
  /** Ends in .html, .xml (an Atom feed) or .csv. */
  readonly out: string;
  readonly base?: string;
}

export interface ChangesReport {
  readonly out: string;
  readonly from: string;
  readonly to: string;
  readonly changes: readonly Change[];
  /** Numbers of the file that the older edition does not print and that are not new in the newer one. */
  readonly unknown: readonly string[];
  readonly findings: readonly Finding[];
}

/** Writes what changed since an edition or a day, for all items or for some. */
export async function changesSince(ports: Ports, catalog: Catalog, request: ChangesRequest): Promise<ChangesReport> {
  const { out, part } = request;
  const write = writerFor(out);
  const base = request.base === undefined ? undefined : addressIn(request.base);
  const numbers = request.items === undefined ? undefined : await numbersIn(ports, request.items);
  if (request.items !== undefined && (await ports.files.same(request.items, out))) {
    throw new CatalogError('OutputIsInput', `${out} is the list of items itself; name another file after --out.`);
  }
  const [from, to] = await editionsOf(catalog, request);
  ports.progress(`Reading ${from} and ${to}`);
  const read = await readPublication(catalog, from, to, false);
  const publication: Publication = base === undefined ? read : { ...read, base };
  const { joint } = publication;
  if (part !== undefined && joint.old.withNumber(part).length + joint.new.withNumber(part).length === 0) {
    throw new CatalogError(
      'UnknownNumber',
      `Neither ${from} nor ${to} prints ${part}; give the number of a part, e.g. 3.`,
    );
  }
  const changes = changesOf(publication, { ...(part === undefined ? {} : { part }), ...(numbers ? { numbers } : {}) });
  await ports.files.write(out, await write(publication, changes));
  const prints = (n: string) => [joint.old, joint.new].some(places => places.withNumber(n).length > 0);
  const unknown = [...(numbers ?? [])].filter(n => !prints(n));
  return { out, from, to, changes, unknown, findings: publication.findings };
}

function writerFor(out: string): (p: Publication, changes: readonly Change[]) => string | Promise<string> {
  if (out.endsWith('.csv')) return writeChangesCsv;
  if (out.endsWith('.xml')) return writeChangesFeed;
  if (out.endsWith('.html')) return async (p, changes) => writeChangesPage(p, changes, await readBundleTemplates());
  throw new CatalogError(
    'BadArgument',
    `${out} is of no kind that is written here; end its name in .html, .xml or .csv.`,
  );
}

async function numbersIn(ports: Ports, path: string): Promise<ReadonlySet<string>> {
  const text = new TextDecoder().decode(await ports.files.read(path));
  const numbers = new Set(text.split(/[\s,;]+/).filter(Boolean));
  if (numbers.size > 0) return numbers;
  throw new CatalogError('BadFile', `${path} holds no number; write the numbers that you follow, one a line.`);
}

async function editionsOf(catalog: Catalog, { since, to }: ChangesRequest): Promise<[from: string, to: string]> {
  const published = await listEditions(catalog);
  const day = (h: (typeof published)[number]) => h.dates.published ?? h.dates.effective ?? '';
  const inOrder = published.filter(h => day(h) !== '').sort((a, b) => (day(a) < day(b) ? -1 : 1));
  const newest = to ?? inOrder.at(-1)?.name ?? published.at(-1)?.name;
  if (newest === undefined)
    throw new CatalogError('UnknownEdition', 'Nothing is published yet; publish an edition first.');
  if (!/^\d{4}-\d{2}-\d{2}$/.test(since)) return [since, newest];
  const before = inOrder.findLast(h => day(h) <= since);
  if (!before) {
    const first = inOrder[0] ? `the first is ${inOrder[0].name} of ${day(inOrder[0])}` : 'none tells its day';
    throw new CatalogError(
      'UnknownEdition',
      `No edition was published by ${since}: ${first}; name an edition or a later day.`,
    );
  }
  if (before.name === newest) {
    throw new CatalogError(
      'NoPath',
      `Nothing was published after ${since}: ${newest} is the newest edition; name an earlier day.`,
    );
  }
  return [before.name, newest];
}
