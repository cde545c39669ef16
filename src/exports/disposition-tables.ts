import { writeCsv } from '../tables/write-csv.ts';
import type { PlainSheet } from '../tables/write-xlsx.ts';
import { writeXlsx } from '../tables/write-xlsx.ts';
import { type DispositionLine, derivationLines, dispositionLines } from './disposition.ts';
import type { Publication } from './publication.ts';

/** A disposition or derivation table under its head, for csv, a sheet, a page. */
export interface DispositionTable {
  readonly kind: 'disposition' | 'derivation';
  readonly from: string;
  readonly to: string;
  readonly lines: readonly DispositionLine[];
}

export function dispositionTable(publication: Publication): DispositionTable {
  const { from, to } = namesOf(publication);
  return { kind: 'disposition', from, to, lines: dispositionLines(publication) };
}

export function derivationTable(publication: Publication): DispositionTable {
  const { from, to } = namesOf(publication);
  return { kind: 'derivation', from, to, lines: derivationLines(publication) };
}

export function namesOf({ joint }: Publication): { readonly from: string; readonly to: string } {
  return { from: joint.from.header.name, to: joint.to.header.name };
}

/** `disposition-2018-2024`; from the newer to the older edition for a derivation table. */
export function tableName({ kind, from, to }: DispositionTable): string {
  return kind === 'disposition' ? `disposition-${from}-${to}` : `derivation-${to}-${from}`;
}

/** The columns, with the editions that the table joins in their names. */
export function dispositionHeader({ kind, from, to }: DispositionTable): string[] {
  const [here, there] = kind === 'disposition' ? [from, to] : [to, from];
  return [
    'level',
    `number_${here}`,
    `title_${here}`,
    'fate',
    `number_${there}`,
    `title_${there}`,
    'marks',
    'duty',
    'reason',
    'governs_now',
    'note',
    `id_${here}`,
    `id_${there}`,
  ];
}

export function dispositionCells(l: DispositionLine): string[] {
  return [
    l.level,
    l.here.number,
    l.here.title,
    l.fate,
    l.there?.number ?? '',
    l.there?.title ?? '',
    l.marks.join(', '),
    l.duty,
    l.reason,
    l.governs,
    l.note,
    l.here.id,
    l.there?.id ?? '',
  ];
}

export function dispositionCsv(table: DispositionTable): string {
  return writeCsv([dispositionHeader(table), ...table.lines.map(dispositionCells)]);
}

/** The table as a workbook, with a sheet of counts and a chart of them. */
export function dispositionXlsx(publication: Publication, table: DispositionTable): Uint8Array {
  const sheet: PlainSheet = {
    name: table.kind === 'disposition' ? `${table.from} to ${table.to}` : `${table.to} from ${table.from}`,
    header: dispositionHeader(table),
    rows: table.lines.map(dispositionCells),
    widths: [13, 11, 34, 12, 11, 34, 24, 30, 34, 34, 40, 12, 12],
  };
  return writeXlsx([sheet, table.kind === 'disposition' ? fateSheet(publication) : originSheet(publication, table)]);
}

function fateSheet({ statistics }: Publication): PlainSheet {
  const { fates, new: arrived } = statistics.whole;
  return {
    name: 'Counts',
    header: ['fate', statistics.counted],
    rows: [...Object.entries(fates), ['new', arrived]],
    bars: {
      title: `${statistics.counted} of ${statistics.from} by fate, and new in ${statistics.to}`,
      labels: 0,
      values: 1,
    },
  };
}

function originSheet({ statistics }: Publication, table: DispositionTable): PlainSheet {
  const counts = new Map<string, Set<string>>();
  for (const { fate, here } of table.lines) {
    if (statistics.counted === 'requirements' && !here.obliges) continue;
    counts.set(fate, (counts.get(fate) ?? new Set()).add(here.id));
  }
  return {
    name: 'Counts',
    header: ['origin', statistics.counted],
    rows: [...counts].map(([fate, ids]) => [fate, ids.size]),
    bars: { title: `${statistics.counted} of ${table.to} by where they come from`, labels: 0, values: 1 },
  };
}

export function dispositionJson(publication: Publication, table: DispositionTable): string {
  const end = (entry: DispositionLine['here'] | undefined) =>
    entry ? { id: entry.id, number: entry.number, title: entry.title, level: entry.level } : null;
  return `${JSON.stringify(
    {
      table: table.kind,
      from: table.from,
      to: table.to,
      dates: publication.joint.to.header.dates,
      lines: table.lines.map(({ here, there, ...said }) => ({ here: end(here), there: end(there), ...said })),
      findings: publication.findings,
    },
    null,
    2,
  )}\n`;
}
