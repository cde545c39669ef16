import {
  type AddedLine,
  addedHeaders,
  type JobCase,
  POLICY_COLUMNS,
  policyCells,
} from '../../carryover/jobs/job-case.ts';
import type { CarriedLine, JobCarrier } from '../../carryover/jobs/jobs.ts';
import { OUTCOMES } from '../../model/citation.ts';
import type { Finding } from '../../model/finding.ts';
import { columnName } from '../../tables/cell-address.ts';
import { extendSheet, freeColumn } from '../../tables/extend-sheet.ts';
import { extendWorkbook } from '../../tables/extend-workbook.ts';
import { openWorkbook } from '../../tables/open-workbook.ts';
import type { PlainSheet } from '../../tables/plain-sheet.ts';
import type { SheetRow } from '../../tables/read-sheet.ts';
import { chooseSheet, sheetFindings } from '../../tables/read-xlsx.ts';
import { hashOf } from '../carrying/carry-mark.ts';
import type { Files } from '../ports/ports.ts';
import { type JobRun, type JobSource, SAMPLE } from './job-source.ts';

const WIDTHS = [13, 28, 11, 50, 44, 9, 11, 9, 11, 13, 50];

/**
 * The jobs in a workbook. It comes back as it is, with our columns at the right of its table and three sheets more;
 * lines that a job gains stand on a sheet of their own, since a row put into somebody's sheet moves what formulas,
 * filters and pictures point to.
 *
 * @param sheet its name; absent takes the first visible one that is filled
 */
export async function sheetJobs(files: Files, input: string, sheet?: string): Promise<JobSource> {
  const bytes = await files.read(input);
  const workbook = openWorkbook(bytes, input);
  const { chosen, header, findings } = chooseSheet(workbook, sheet);
  const names = header.names;
  const lines = [...chosen.rows.entries()].filter(([at, row]) => at > header.at && row.cells.length > 0);
  const cellsOf = (row: SheetRow) => {
    const cells = new Array<string>(names.length).fill('');
    for (const { column, text } of row.cells) if (column < cells.length) cells[column] = text;
    return cells;
  };
  return {
    header: names,
    sample: lines.slice(0, SAMPLE).map(([, row]) => cellsOf(row)),
    lines: async function* () {
      for (const [, row] of lines) {
        yield { cells: cellsOf(row), line: row.row + 1, numeric: (column: number) => numericIn(row, column) ?? [] };
      }
    },
    carry: async run => {
      const rows = lines.map(([, row]) => row.row + 1);
      const carried = new Map<number, CarriedLine>();
      const gained: { line: AddedLine; after: number }[] = [];
      let last = header.at;
      const gain = (added: readonly AddedLine[]) => {
        for (const line of added) gained.push({ line, after: last });
      };
      for (const [at, row] of lines) {
        const found = run.carrier.line(cellsOf(row), numericIn(row, run.columns.number.at));
        gain(found.added);
        carried.set(at, found);
        last = row.row + 1;
      }
      gain(run.carrier.end());
      run.done(lines.length);
      const free = freeColumn(workbook, chosen);
      const extended = extendSheet(workbook, chosen, header, {
        headers: addedHeaders(names, run.governed),
        widths: WIDTHS.slice(0, addedHeaders(names, run.governed).length),
        cells: at => {
          const found = carried.get(at);
          return found && ourCells(found, rows);
        },
      });
      const style = chosen.rows[header.at]?.cells.at(-1)?.style ?? 0;
      const more = [summarySheet(run.carrier), addedSheet(gained, run), casesSheet(run.carrier)];
      await run.write(extendWorkbook(workbook, new Map([[chosen.part, extended]]), more, style));
      const said = (rule: string, message: string): Finding => ({ rule, severity: 'note', subject: input, message });
      return {
        input: hashOf(bytes),
        findings: [
          ...findings,
          ...sheetFindings(input, chosen, header),
          ...(free.behindDrawing
            ? [
                said(
                  'behind-drawing',
                  `Our columns begin at ${columnName(free.at)}, behind the picture or chart beside the table.`,
                ),
              ]
            : []),
          ...(/<(?:[\w.-]+:)?autoFilter\s/.test(chosen.xml)
            ? [
                said(
                  'filter',
                  'The filter of the sheet stays as it was: sorting by it leaves our columns where they are.',
                ),
              ]
            : []),
        ],
      };
    },
  };
}

/** What a number cell shows and stores; undefined for a cell of another kind. */
function numericIn({ cells }: SheetRow, column: number): readonly string[] | undefined {
  const cell = cells.find(c => c.column === column);
  return cell?.kind === 'number' ? [cell.text, ...(cell.stored ? [cell.stored] : [])] : undefined;
}

function ourCells(found: CarriedLine, rows: readonly number[]): readonly string[] {
  const { before, after }: JobCase = found.case;
  // Rows are called by their number in the sheet, not by their place among the lines.
  const fold = found.foldsInto === undefined ? '' : String(rows[found.foldsInto - 1] ?? '');
  const rule = found.governing ? policyCells(found.governing) : [];
  return [...before, fold, ...after, ...rule];
}

const MEANING: Readonly<Record<string, string>> = {
  kept: 'The number stays and asks the same.',
  carried: 'A new number takes its place.',
  choose: 'A person has to decide; the cases are on their own sheet.',
  withdrawn: 'No requirement takes its place.',
  unknown: 'The number names nothing, or not one thing.',
};

function summarySheet(carrier: JobCarrier): PlainSheet {
  const totals = carrier.totals();
  return {
    name: 'Carried over',
    header: ['what', 'lines', 'meaning'],
    rows: [
      ...OUTCOMES.map(kind => [kind, totals.outcomes[kind], MEANING[kind]!]),
      ['all lines', totals.lines, totals.agree ? 'The sum of the five above.' : 'THE TOTALS DO NOT AGREE'],
      ['closed', totals.closed, 'Among them: inspected, signed, paid or done; they stay as they are.'],
      ...(totals.ungoverned > 0
        ? [
            [
              'to decide',
              totals.ungoverned,
              'Among them: nobody has said which edition governs them; they wait for a person.',
            ],
          ]
        : []),
      ['folded', totals.folded, 'Among them: the same work as an earlier line of the job.'],
      ['added', totals.added, 'Beside them: what the jobs have to meet for the first time, on a sheet of its own.'],
    ],
    bars: { title: 'What became of the lines', labels: 0, values: 1, rows: OUTCOMES.length },
  };
}

function addedSheet(gained: readonly { readonly line: AddedLine; readonly after: number }[], run: JobRun): PlainSheet {
  return {
    name: 'Added lines',
    header: [
      ...['job', 'type', 'last_row_of_job', 'new_number', 'new_title', 'why', 'to_do', 'carried_to'],
      ...(run.governed ? POLICY_COLUMNS : []),
    ],
    rows: gained.map(({ line, after }) => {
      const [number, title, , why, toDo] = line.before;
      return [
        line.job,
        run.columns.type ? line.typeCell : (line.type ?? ''),
        after,
        number,
        title,
        why,
        toDo,
        line.after[1],
        ...(run.governed ? policyCells(line.governing) : []),
      ];
    }),
  };
}

function casesSheet(carrier: JobCarrier): PlainSheet {
  const waiting = carrier.totals().ungoverned > 0;
  return {
    name: 'Cases',
    header: [
      ...['lines', 'closed', ...(waiting ? ['edition_to_decide'] : [])],
      ...['number', 'type', 'outcome', 'new_numbers', 'why'],
    ],
    rows: carrier
      .cases()
      .map(c => [
        ...[c.lines, c.closed, ...(waiting ? [c.ungoverned] : [])],
        ...[c.number, c.type ?? '', c.outcome, c.heirs.map(h => h.number).join(' | '), c.why],
      ]),
  };
}
