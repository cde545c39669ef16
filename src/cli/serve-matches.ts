import type { Command } from 'commander';
import type { MatchDesk } from '../commands/matching/match-desk.ts';
import type { ToldReview } from '../commands/matching/open-told-review.ts';
import type { Ports } from '../commands/ports/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { listEditions } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { toldItemColumns } from './item-columns.ts';

/** Matches as they are told on the command line, before it is known whether tables or editions are meant. */
export interface ToldMatch {
  tables: string[];
  answers: string[];
  columns: ReadonlyMap<string, string> | undefined;
}

/**
 * Adds `--match OLD NEW --answers FILE`, as often as there are reviews: a `--match` behind an `--answers` begins the
 * next one. Gives the list that the options fill as they are read.
 */
export function matchOptions(command: Command): ToldMatch[] {
  const told: ToldMatch[] = [];
  const open = () => {
    const last = told.at(-1);
    if (last && last.answers.length === 0) return last;
    told.push({ tables: [], answers: [], columns: undefined });
    return told.at(-1)!;
  };
  command
    .option(
      '--match <tables...>',
      'hold a review of matched links on the desk: the old table and the new one, or two editions; may be repeated',
      (table: string) => {
        open().tables.push(table);
        return true;
      },
    )
    .option('--answers <file...>', 'the csv that the answers of the --match before it go to', (file: string) => {
      const last = told.at(-1);
      if (!last)
        throw new CatalogError('BadArgument', 'Name the tables first: --match OLD.csv NEW.csv --answers A.csv');
      last.answers.push(file);
      return true;
    })
    .option(
      '--columns <role=header,...>',
      'headers of the next --match that are spelt otherwise, e.g. number=Ref,text=Wording',
      (list: string) => {
        open().columns = toldItemColumns(list);
        return true;
      },
    );
  return told;
}

interface Desk {
  readonly writing: () => Promise<Catalog>;
  /** Where it is told that a review cannot be opened: a server listens by then. */
  readonly report: (line: string) => void;
}

/** Begins to hold every review that was told, if any was. Two words that name editions of the catalog mean these. */
export async function heldMatches(
  ports: Ports,
  catalog: Catalog,
  told: readonly ToldMatch[],
  { writing, report }: Desk,
): Promise<MatchDesk | undefined> {
  if (told.length === 0) return undefined;
  const editions = new Set((await listEditions(catalog)).map(h => h.name));
  const { checkReview, deskReview } = await import('./match-review.ts');
  const { matchDesk } = await import('../commands/matching/match-desk.ts');
  const checked: ToldReview[] = [];
  for (const { tables, answers, columns } of told) {
    if (tables.length < 2 || answers.length === 0) {
      throw new CatalogError(
        'BadArgument',
        'Name the old table, the new one, and where the answers go: --match OLD.csv NEW.csv --answers answers.csv',
      );
    }
    const file = answers.at(-1)!;
    for (const other of checked) {
      if (!(await ports.files.same(other.answers.at(-1)!, file))) continue;
      throw new CatalogError('BadArgument', `${file} is named for two reviews; give each a file of its own.`);
    }
    const inCatalog = tables.length === 2 && !columns && tables.every(name => editions.has(name));
    const review: ToldReview = {
      tables,
      answers,
      ...(inCatalog ? { catalog: catalog.dir } : {}),
      ...(columns ? { columns } : {}),
    };
    await checkReview(ports, review);
    checked.push(review);
  }
  const reviews = checked.map((review, at) => deskReview(ports, String(at + 1), review));
  for (const { opened, review } of reviews) {
    opened.catch((error: Error) => report(`${review.names.from} to ${review.names.to}: ${error.message}`));
  }
  return matchDesk(ports, reviews, writing);
}
