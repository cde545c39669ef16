import type { Command } from 'commander';
import type { ToldColumns } from '../carryover/jobs/columns.ts';
import type { JobsCiting } from '../commands/finding/held-jobs.ts';
import type { Ports } from '../commands/ports/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { listEditions } from '../store/names.ts';
import type { Catalog } from '../store/open.ts';
import { toldColumn } from './told-column.ts';

export interface JobsOptions {
  readonly jobs?: readonly string[];
  readonly jobsEdition?: string;
  readonly jobsColumn?: ToldColumns;
}

export function jobsOptions(command: Command): void {
  command
    .option(
      '--jobs <file...>',
      'tables of jobs (csv, xlsx, JSON Lines): the page of an item counts the lines that cite it',
    )
    .option('--jobs-edition <edition>', 'what a job line means that does not say its edition')
    .option('--jobs-column <role=header>', 'tell a column outright, as for carry jobs', toldColumn, {});
}

/** Begins to read the tables that were named, if any were. What can be seen at once is refused at once. */
export async function heldJobs(
  ports: Ports,
  catalog: Catalog,
  { jobs: inputs, jobsEdition, jobsColumn = {} }: JobsOptions,
  report: (line: string) => void,
): Promise<JobsCiting | undefined> {
  if (inputs === undefined) return undefined;
  const known = (await listEditions(catalog)).map(h => h.name);
  const edition = jobsEdition ?? (known.length === 1 ? known[0] : undefined);
  if (edition === undefined || !known.includes(edition)) {
    // A guess would show jobs on items that have their numbers by chance.
    throw new CatalogError(
      'BadArgument',
      `Say which edition job lines mean that do not say it: --jobs-edition with one of ${known.join(', ')}.`,
    );
  }
  for (const input of inputs) {
    if (await ports.files.exists(input)) continue;
    throw new CatalogError('NoSuchFile', `There is no file ${input}; check the name.`);
  }
  const { holdJobs } = await import('../commands/finding/held-jobs.ts');
  return holdJobs(ports, catalog, { inputs, edition, columns: jobsColumn }, report);
}
