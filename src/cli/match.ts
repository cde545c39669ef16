import type { Command } from 'commander';
import type { Ports } from '../commands/ports/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { toldItemColumns } from './item-columns.ts';
import { portNumber } from './port-number.ts';
import { count, printFindings, printJson, printLines, reportFindings } from './print.ts';

interface MatchOptions {
  readonly out?: string;
  readonly answers?: string[];
  readonly columns?: ReadonlyMap<string, string>;
  readonly explain?: string;
  readonly record?: boolean;
  readonly review?: boolean;
  readonly port: number;
  readonly from?: string;
  readonly to?: string;
  readonly json?: boolean;
}

const RUNNERS_UP = 4;

export function addMatch(program: Command): void {
  program
    .command('match')
    .description('The crosswalk of two editions that are tables without ids: which row became which, how sure, and why')
    .argument(
      '[tables...]',
      'the old table and the new one (of several, the new one comes last); with --catalog two editions',
    )
    .option('--from <edition>', 'with --catalog: the older edition')
    .option('--to <edition>', 'with --catalog: the newer edition')
    .option('--out <file>', 'write the crosswalk here: csv, or xlsx or json by its ending')
    .option(
      '--answers <file...>',
      'an earlier output (csv, xlsx, json) with answers filled in: they stand, the rest is improved by them, and --out has them again',
    )
    .option(
      '--columns <role=header,...>',
      'headers that are spelt otherwise, e.g. number=Ref,text=Wording',
      toldItemColumns,
    )
    .option(
      '--explain <number>',
      'show what the links of an old number are made of, and the runners-up; TABLE:NUMBER where several old tables print it',
    )
    .option('--record', 'with --catalog: write what can be accepted as lineage of the newer edition, as an erratum')
    .option('--review', 'show what has to be looked at in a browser, one link after the other; answers go to --answers')
    .option('--port <port>', 'where the review listens, on this machine only; 0 takes any free port', portNumber, 4181)
    .option('--json', 'report as JSON on the standard output; --out is written by its own ending')
    .addHelpText(
      'after',
      `
Examples:
  fishplate match 2018.csv 2024.csv --out crosswalk.csv
  fishplate match houses.csv rows.csv streets.csv 2018.csv --out crosswalk.csv
  fishplate match 2018.csv 2024.csv --explain 4.2.3
  fishplate match houses.csv rows.csv 2018.csv --explain rows:4.2.3
  fishplate match 2018 2024 --catalog works.git --record
  fishplate match 2018.csv 2024.csv --answers crosswalk.csv --out crosswalk-2.csv
  fishplate match 2018.csv 2024.csv --review --answers answers.csv --author "A. Reviewer <reviewer@office.example>"
  fishplate match --from 2018 --to 2024 --catalog works.git --review --answers answers.csv
  fishplate match --from 2018 --to 2024 --catalog works.git --answers answers.csv --record

To answer without a browser, fill in the last columns of the crosswalk in a spreadsheet: answer = yes, no, withdrawn or new; or the right
number under instead (of an old row, where the line is a new one); and why under because. Lines with the band "look" are the ones to look
at. The code under pair finds the rows, whatever a spreadsheet makes of the numbers. The next output has all answers again, those that no
line shows at its end, and what else you wrote: note, reason, columns of your own. Go on in that one. With several
old tables the column from_table says which one a line comes from.`,
    )
    .action(async (named: string[], options: MatchOptions, command: Command) => {
      const tables = [...named, ...[options.from, options.to].filter(name => name !== undefined)];
      if (tables.length < 2) {
        throw new CatalogError('BadArgument', 'Name the old table and the new one: fishplate match OLD.csv NEW.csv');
      }
      // The matcher and what it has learned are loaded here; no other command waits for them.
      const { matchTables, oldRowsWithNumber } = await import('../commands/matching/match-tables.ts');
      const ports = portsOf(command);
      if (options.out !== undefined) await checkOutput(ports, options.out, tables, options.answers ?? []);
      const inCatalog = command.optsWithGlobals<{ catalog?: string }>().catalog !== undefined;
      if (inCatalog) checkEditions(tables, options);
      else if (options.from !== undefined || options.to !== undefined) {
        throw new CatalogError(
          'BadArgument',
          'Editions are of a catalog; name it: fishplate match --from 2018 --to 2024 --catalog DIR',
        );
      }
      if (options.review) {
        const { serveReview } = await import('./match-review.ts');
        return serveReview(command, tables, inCatalog, options);
      }
      const report = inCatalog
        ? await editionsOfCatalog(command, tables, options)
        : await matchTables(ports, {
            from: tables.slice(0, -1),
            to: tables.slice(-1),
            ...(options.columns ? { columns: options.columns } : {}),
            ...(options.answers ? { answers: options.answers } : {}),
          });
      if (options.record) {
        if (!inCatalog) {
          throw new CatalogError(
            'BadArgument',
            'Lineage is recorded in a catalog; name it: fishplate match 2018 2024 --record --catalog DIR',
          );
        }
        const { recordMatches } = await import('../commands/matching/match-editions.ts');
        const erratum = await recordMatches(ports, await writingCatalog(command), report, tables[1]!);
        printLines([`Erratum ${erratum.name}: ${count(erratum.added, 'record')} added.`]);
        // An answer that found no rows is in no record.
        reportFindings(report.findings);
        return;
      }
      // A number that is not there is told before anything is written.
      const explained = options.explain === undefined ? undefined : oldRowsWithNumber(report, options.explain);
      if (explained === undefined || options.out !== undefined) {
        const { writeMatching } = await import('./match-output.ts');
        await writeMatching(ports, report, { ...options, quiet: explained !== undefined });
      }
      if (explained === undefined) return;
      if (options.out === undefined) printFindings(report.findings.filter(f => f.rule.startsWith('answer')));
      const { explainedLines } = await import('./match-explained.ts');
      if (options.json) printJson(explained.map(i => report.matching.runnersUp(i, RUNNERS_UP)));
      else printLines(explainedLines(report, explained, RUNNERS_UP));
    });
}

/** Refuses a name before minutes of matching, not after. */
async function checkOutput(
  { files }: Ports,
  out: string,
  tables: readonly string[],
  answers: readonly string[],
): Promise<void> {
  const ending = /[^/\\]\.([^./\\]*)$/.exec(out)?.[1];
  if (ending !== undefined && !/^(?:csv|xlsx|json)$/i.test(ending)) {
    throw new CatalogError(
      'BadArgument',
      `A crosswalk is written as csv, xlsx or json; name a file that ends in one of them instead of ${out}.`,
    );
  }
  for (const table of tables) {
    if (await files.same(table, out)) {
      throw new CatalogError('OutputIsInput', `${out} is an input; name another file with --out.`);
    }
  }
  for (const file of answers) {
    if (await files.same(file, out)) {
      throw new CatalogError(
        'OutputIsInput',
        `${out} holds the answers, and they are to stay as they were given; name another file with --out - it will have all of them too.`,
      );
    }
  }
}

function checkEditions(names: readonly string[], { columns }: MatchOptions): void {
  if (names.length === 2 && !columns) return;
  throw new CatalogError(
    'BadArgument',
    'With --catalog, name two editions of it: fishplate match --from 2018 --to 2024 --catalog DIR',
  );
}

async function editionsOfCatalog(command: Command, names: readonly string[], options: MatchOptions) {
  const [from, to] = names;
  const { matchEditions } = await import('../commands/matching/match-editions.ts');
  return matchEditions(portsOf(command), await readingCatalog(command), from!, to!, options.answers ?? []);
}
