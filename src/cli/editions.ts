import type { Command } from 'commander';
import { listDrafts, listEditions } from '../store/names.ts';
import { readIndex } from '../store/read.ts';
import { readingCatalog } from './context.ts';
import { count, printJson, printLines } from './print.ts';

export function addEditions(program: Command): void {
  program
    .command('editions')
    .description('List the editions and drafts of the catalog, oldest first')
    .option('--json', 'as JSON')
    .action(async (options: { json?: boolean }, command: Command) => {
      const catalog = await readingCatalog(command);
      const names = [...(await listEditions(catalog)).map(h => h.name), ...(await listDrafts(catalog))];
      const indexes = await Promise.all(names.map(name => readIndex(catalog, name)));
      if (options.json) {
        return printJson(indexes.map(i => ({ ...i.header, items: i.entries.length })));
      }
      if (indexes.length === 0)
        printLines(['The catalog is empty; import an edition with: fishplate import TABLE --edition NAME']);
      else printLines(indexes.map(({ header, entries }) => editionLine(header, entries.length)));
    });
}

function editionLine(header: Awaited<ReturnType<typeof readIndex>>['header'], items: number): string {
  const { dates } = header;
  return [
    header.state === 'draft' ? `${header.name} (draft)` : header.name,
    count(items, 'item'),
    header.replaces && `replaces ${header.replaces}`,
    dates.published && `published ${dates.published}`,
    dates.effective && `effective ${dates.effective}`,
    dates.transitionEnds && `transition ends ${dates.transitionEnds}`,
    header.erratum > 0 && `erratum ${header.erratum}`,
  ]
    .filter(Boolean)
    .join(', ');
}
