import { dataNames, NO_ADDRESS } from './data-names.ts';
import { DATA_TABLES, type DataTable } from './data-tables.ts';
import type { Publication } from './publication.ts';

/** What a person needs who opens the folder of the data package without knowing the format. */
export function packageReadme(publication: Publication, rowsOf: (table: DataTable['name']) => number): string {
  const { from, to } = publication.joint;
  const base = publication.base ?? NO_ADDRESS;
  const table = ({ name, title, key, whenEmpty }: DataTable) => {
    const rows = rowsOf(name);
    const empty = rows === 0 && whenEmpty !== undefined ? ` (${whenEmpty})` : '';
    return `| ${name}.csv | ${rows}${empty} | ${key.join(', ')} | ${title} |`;
  };
  return `${[
    `# ${oneLine(to.settings.title)}: ${from.header.name} to ${to.header.name}`,
    '',
    'Both editions and what became of each item, as csv tables (UTF-8, commas, a head line). `datapackage.json` describes every column, the keys and where they lead (Frictionless tabular data package).',
    '',
    '| table | rows | key | what a row is |',
    '| --- | --- | --- | --- |',
    ...DATA_TABLES.map(table),
    '',
    'An item is named `edition/id`: an id is stable, its meaning may differ from edition to edition. Begin with `links.csv`: `from` and `to` lead to `items.csv`; without `to` an item was withdrawn (`withdrawn_for`) or nothing is on record (`fate` unaccounted), without `from` it is new. Several links of one `group` belong together, but each item has its own fate.',
    '',
    base === NO_ADDRESS
      ? `No address was given for the catalog, so its names lie below ${NO_ADDRESS}, which leads nowhere. Write the data again with \`fishplate bundle ${from.header.name} ${to.header.name} --out FOLDER --base https://your.address/\` before you pass them on.`
      : `On the web the package goes by ${dataNames(base).crosswalk(from.header.name, to.header.name)}.`,
  ].join('\n')}\n`;
}

const oneLine = (text: string) => text.replace(/\s+/g, ' ').trim();
