import type { Command } from 'commander';
import { importTables } from '../commands/importing/import-tables.ts';
import { CatalogError } from '../model/errors.ts';
import { catalogFolder, portsOf } from './context.ts';
import { isoDate } from './dates.ts';
import { toldItemColumns } from './item-columns.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface ImportOptions {
  readonly edition: string;
  readonly catalog?: string;
  readonly replaces?: string;
  readonly lineage?: string[];
  readonly settings?: string;
  readonly decision?: string[];
  readonly appliesTo?: string[];
  readonly published?: string;
  readonly effective?: string;
  readonly transitionEnds?: string;
  readonly columns?: ReadonlyMap<string, string>;
  readonly skipRows?: boolean;
  readonly draft?: boolean;
  readonly json?: boolean;
}

export function addImport(program: Command): void {
  program
    .command('import')
    .description('Turn tables into an edition of the catalog; a new or empty folder becomes a catalog')
    .argument(
      '<table...>',
      'csv, xlsx or JSON: number, level, parent, title, text; optionally id, was, applies_to, verified …',
    )
    .requiredOption('--edition <name>', 'name of the edition')
    .option('--replaces <edition>', 'the edition that it replaces (default: the newest one)')
    .option('--lineage <table...>', 'what became of the old items: from, to, reason, note …')
    .option('--settings <file>', 'settings (JSON) that win over what the tables show')
    .option('--decision <file...>', 'edition-wide decisions (JSON)')
    .option(
      '--columns <role=header,...>',
      'headers that are spelt otherwise, e.g. number=Klausel,text=Wortlaut (usual words for them are known)',
      toldItemColumns,
    )
    .option('--applies-to <table=types...>', 'installation types that a whole table is about, e.g. houses.csv=house')
    .option('--published <date>', 'date of publication (default: today)')
    .option('--effective <date>', 'date from which the edition holds')
    .option('--transition-ends <date>', 'date until which the edition replaced may be used')
    .option('--skip-rows', 'import what can be placed, and list the rest')
    .option('--draft', 'leave it as a draft instead of publishing it')
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate import 2018.csv --edition 2018 --catalog works.git
  fishplate import houses.csv streets.csv --edition 2014 --applies-to houses.csv=house streets.csv=street
  fishplate import 2024.csv --edition 2024 --lineage became.csv --effective 2024-07-01
  fishplate import alt.xlsx --edition 2016 --catalog works.git --columns "number=Ref,title=Thema,text=Vorgabe"

A row with the column "was" continues the old item with that number and keeps its id.`,
    )
    .action(async (tables: string[], options: ImportOptions, command: Command) => {
      const dates = {
        ...(options.published ? { published: isoDate(options.published) } : {}),
        ...(options.effective ? { effective: isoDate(options.effective) } : {}),
        ...(options.transitionEnds ? { transitionEnds: isoDate(options.transitionEnds) } : {}),
      };
      const catalog = await folderForImport(command);
      const report = await importTables(portsOf(command), {
        tables,
        edition: options.edition,
        catalog,
        ...(options.replaces === undefined ? {} : { replaces: options.replaces }),
        ...(options.lineage ? { lineage: options.lineage } : {}),
        ...(options.settings === undefined ? {} : { settings: options.settings }),
        ...(options.decision ? { decisions: options.decision } : {}),
        ...(options.columns ? { columns: options.columns } : {}),
        ...(options.skipRows ? { skipRows: true } : {}),
        ...(options.draft ? { draft: true } : {}),
        appliesTo: typesOfTables(tables, options.appliesTo ?? []),
        dates,
      });
      if (options.json) printJson(report);
      else {
        printLines([
          `${report.state === 'draft' ? 'Draft' : 'Edition'} ${report.edition}: ${count(report.items, 'item')}, ${count(report.requirements, 'requirement')}; ${count(report.idsKept, 'id')} kept, ${thousands(report.idsMinted)} minted.`,
          ...(report.rowsSkipped > 0 ? [`${count(report.rowsSkipped, 'row')} left out.`] : []),
          ...(report.replaces === null ? [] : [`It replaces ${report.replaces}.`]),
          ...(report.unaccounted > 0
            ? [
                `${count(report.unaccounted, 'item')} of ${report.replaces} ${report.unaccounted === 1 ? 'has' : 'have'} neither an heir nor a withdrawal; list them with: fishplate crosswalk ${report.replaces} ${report.edition}`,
                ...(options.lineage || report.state === 'draft'
                  ? []
                  : [
                      `What became of which can be guessed and answered: fishplate match ${report.replaces} ${report.edition} --catalog ${catalog} --out answers.csv`,
                    ]),
              ]
            : []),
        ]);
      }
      reportFindings(report.findings);
    });
}

/** An import makes the catalog where none is: in the folder named, or in catalog.git here. */
async function folderForImport(command: Command): Promise<string> {
  try {
    return await catalogFolder(command);
  } catch (error) {
    if (error instanceof CatalogError && error.code === 'NotACatalog') return 'catalog.git';
    throw error;
  }
}

function typesOfTables(tables: readonly string[], told: readonly string[]): Map<string, string[]> {
  const types = new Map<string, string[]>();
  for (const pair of told) {
    const [table, list] = pair.split('=');
    const match = tables.find(t => t === table || t.endsWith(`/${table}`) || t.endsWith(`\\${table}`));
    if (!match || !list) {
      throw new CatalogError(
        'BadArgument',
        `--applies-to ${pair} names no table of this import; write TABLE=type,type with one of: ${tables.join(', ')}.`,
      );
    }
    types.set(
      match,
      list.split(',').map(t => t.trim()),
    );
  }
  return types;
}
