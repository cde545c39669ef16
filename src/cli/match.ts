import type { Command } from 'commander';
import type { MatchReport } from '../commands/matching/match-tables.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { toldItemColumns } from './item-columns.ts';
import { portNumber } from './port-number.ts';
import { count, printJson, printLines, reportFindings } from './print.ts';

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
      'an earlier output with answers filled in: they stand, and the rest is improved by them',
    )
    .option(
      '--columns <role=header,...>',
      'headers that are spelt otherwise, e.g. number=Ref,text=Wording',
      toldItemColumns,
    )
    .option('--explain <number>', 'show what the links of an old number are made of, and the runners-up')
    .option('--record', 'with --catalog: write what can be accepted as lineage of the newer edition, as an erratum')
    .option('--review', 'show what has to be looked at in a browser, one link after the other; answers go to --answers')
    .option('--port <port>', 'where the review listens, on this machine only; 0 takes any free port', portNumber, 4181)
    .option('--json', 'report as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate match 2018.csv 2024.csv --out crosswalk.csv
  fishplate match houses.csv rows.csv streets.csv 2018.csv --out crosswalk.csv
  fishplate match 2018.csv 2024.csv --explain 4.2.3
  fishplate match 2018 2024 --catalog works.git --record
  fishplate match 2018.csv 2024.csv --answers crosswalk.csv --out crosswalk-2.csv
  fishplate match 2018.csv 2024.csv --review --answers answers.csv --author "A. Reviewer <reviewer@office.example>"
  fishplate match --from 2018 --to 2024 --catalog works.git --review --answers answers.csv
  fishplate match --from 2018 --to 2024 --catalog works.git --answers answers.csv --record

To answer without a browser, fill in the last columns of the crosswalk in a spreadsheet: answer = yes, no, withdrawn or new; or the right
number under instead; and why under because. Lines with the band "look" are the ones to look at.`,
    )
    .action(async (named: string[], options: MatchOptions, command: Command) => {
      const tables = [...named, ...[options.from, options.to].filter(name => name !== undefined)];
      if (tables.length < 2) {
        throw new CatalogError('BadArgument', 'Name the old table and the new one: fishplate match OLD.csv NEW.csv');
      }
      // The matcher and what it has learned are loaded here; no other command waits for them.
      const { matchTables, oldRowsWithNumber } = await import('../commands/matching/match-tables.ts');
      const ports = portsOf(command);
      for (const table of tables) {
        if (options.out !== undefined && (await ports.files.same(table, options.out))) {
          throw new CatalogError('OutputIsInput', `${options.out} is an input; name another file with --out.`);
        }
      }
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
        return;
      }
      if (options.explain !== undefined) {
        const rows = oldRowsWithNumber(report, options.explain);
        if (options.json) printJson(rows.map(i => report.matching.runnersUp(i, RUNNERS_UP)));
        else for (const i of rows) printLines(explained(report, i));
        return;
      }
      const { MATCH_COLUMNS, matchCells, writeMatchCsv } = await import('../exports/match-csv.ts');
      const asJson = options.json || options.out?.endsWith('.json');
      const text = asJson ? `${JSON.stringify(jsonOf(report), null, 2)}\n` : writeMatchCsv(report.lines);
      if (options.out === undefined) process.stdout.write(text);
      else {
        const { tableBytes } = await import('../commands/ports/table-bytes.ts');
        const workbook = /\.xlsx$/i.test(options.out);
        const cells = workbook ? report.lines.map(matchCells) : [];
        await ports.files.write(
          options.out,
          workbook ? tableBytes(options.out, 'Crosswalk', MATCH_COLUMNS, cells) : text,
        );
        printLines(summary(report, options.out));
      }
      reportFindings(report.findings);
    });
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

function summary({ lines, bands, answered, from, to }: MatchReport, out: string): string[] {
  return [
    `${count(from.rows.length, 'old row')}, ${count(to.rows.length, 'new row')}; ${count(lines.length, 'line')} written to ${out}.`,
    `${count(bands.accept, 'line')} can be accepted, ${bands.look} should be looked at${answered > 0 ? `; ${count(answered, 'answer')} used` : ''}.`,
  ];
}

function jsonOf({ lines, bands, answered, findings, from, to }: MatchReport) {
  return {
    from: from.index.header.name,
    to: to.index.header.name,
    bands,
    answered,
    lines: lines.map(({ link: _, dutyByType: __, from: old, to: next, ...line }) => ({
      ...line,
      from: old && { id: old.id, number: old.number, title: old.title },
      to: next && { id: next.id, number: next.number, title: next.title },
    })),
    findings,
  };
}

function explained({ matching, from, to }: MatchReport, i: number): string[] {
  const row = from.rows[i]!;
  const lines = [`${row.number} ${row.title || row.text.slice(0, 70)}`.trim()];
  const candidates = matching.runnersUp(i, RUNNERS_UP);
  if (candidates.length === 0) return [...lines, '  nothing in the new table shares a word or a place with it'];
  for (const c of candidates) {
    const heir = to.rows[c.to]!;
    const linked = matching.links.some(l => l.from === i && l.to === c.to);
    lines.push(
      `  ${linked ? '→' : ' '} ${`${(c.confidence * 100).toFixed(1)} %`.padStart(7)}  ${heir.number} ${heir.title || heir.text.slice(0, 60)}`,
      `      ${[...c.parts.map(p => `${p.reason} ${signed(p.value)}`), `start ${signed(c.base)}`].join(', ')} = ${signed(c.base + c.parts.reduce((sum, p) => sum + p.value, 0))} (log-odds)`,
    );
  }
  return lines;
}

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
