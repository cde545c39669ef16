import type { MatchReport } from '../commands/matching/match-tables.ts';
import type { Ports } from '../commands/ports/ports.ts';
import { type AnswerCells, matchCells, matchColumns, withOwn, writeMatchCsv } from '../exports/match-csv.ts';
import { count, printJson, printLines, reportFindings, thousands } from './print.ts';

interface OutputOptions {
  readonly out?: string;
  readonly json?: boolean;
  /** Only the file is written; the standard output is for something else. */
  readonly quiet?: boolean;
}

/** Writes a matching to a file in the format of its ending and tells of it, or all of it to the standard output. */
export async function writeMatching(
  { files }: Ports,
  report: MatchReport,
  { out, json, quiet }: OutputOptions,
): Promise<void> {
  if (out === undefined) process.stdout.write(json ? jsonText(report) : writeMatchCsv(report));
  else {
    await files.write(out, await bytesFor(out, report));
    if (!quiet && json) {
      const { bands, answered, unused, findings } = report;
      printJson({ out, lines: report.lines.length, bands, answered, unused, findings });
    } else if (!quiet) printLines(summary(report, out));
  }
  reportFindings(report.findings);
}

async function bytesFor(out: string, report: MatchReport): Promise<Uint8Array | string> {
  if (/\.json$/i.test(out)) return jsonText(report);
  if (!/\.xlsx$/i.test(out)) return writeMatchCsv(report);
  const { tableBytes } = await import('../commands/ports/table-bytes.ts');
  return tableBytes(out, 'Crosswalk', matchColumns(report), matchCells(report));
}

function summary({ lines, bands, answered, unused, from, to }: MatchReport, out: string): string[] {
  const used = answered > 0 ? `; ${count(answered, 'answer')} used` : '';
  const not = unused > 0 ? `; ${count(unused, 'answer')} not used, but kept in ${out}` : '';
  return [
    `${count(from.rows.length, 'old row')}, ${count(to.rows.length, 'new row')}; ${count(lines.length, 'line')} written to ${out}.`,
    `${count(bands.accept, 'line')} can be accepted, ${thousands(bands.look)} should be looked at${used}${not}.`,
  ];
}

const plain = <G extends AnswerCells>({ own, ...given }: G) =>
  own.size === 0 ? given : { ...given, own: Object.fromEntries(own) };

function jsonText(report: MatchReport): string {
  const { lines, kept, bands, answered, findings, from, to } = report;
  const value = {
    from: from.index.header.name,
    to: to.index.header.name,
    bands,
    answered,
    lines: lines.map(withOwn).map(({ link: _, dutyByType: __, given, from: old, to: next, fromTable, ...line }) => ({
      ...line,
      from: old && {
        id: old.id,
        number: old.number,
        title: old.title,
        ...(fromTable === undefined ? {} : { table: fromTable }),
      },
      to: next && { id: next.id, number: next.number, title: next.title },
      ...plain(given),
    })),
    kept: kept.map(plain),
    findings,
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}
