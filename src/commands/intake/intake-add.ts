import { nameColumns } from '../../editing/columns.ts';
import { INTAKE_FOLDER, intakePath, intakeRecord, parseIntake, writeIntake } from '../../format/intake-files.ts';
import { dayOf, isDay } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { INTAKE_KINDS, type IntakeKind, type IntakeRecord } from '../../model/intake.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { changeBeside } from '../../store/write-beside.ts';
import { readTable } from '../../tables/read-table.ts';
import { nearestNames } from '../../text/nearest.ts';
import { type Ports, person } from '../ports/ports.ts';

/** A report as somebody tells it. */
export interface ToldReport {
  readonly number: string;
  readonly cause: string;
  readonly from: string;
  readonly text: string;
  /** Absent: today. */
  readonly date?: string;
  /** Absent: feedback. */
  readonly kind?: string;
  /** Where it stands in a table. */
  readonly place?: Finding['place'];
}

export interface IntakeReport {
  readonly added: readonly IntakeRecord[];
  /** On record before. */
  readonly known: number;
  readonly findings: readonly Finding[];
}

/**
 * Keeps reports about items of an edition on `main`. A report whose number the edition does not print once is not kept,
 * and told; one that was told before is kept once.
 */
export async function addIntake(
  ports: Ports,
  catalog: Catalog,
  edition: string,
  told: readonly ToldReport[],
): Promise<IntakeReport> {
  const { name } = await locate(catalog, edition);
  const { entries } = await readIndex(catalog, name);
  const stored = parseIntake(await readBeside(catalog, INTAKE_FOLDER));
  const [known, causes] = [new Set(stored.records.map(r => r.id)), new Set(stored.records.map(r => r.cause))];
  const findings: Finding[] = [...stored.findings];
  const added = new Map<string, IntakeRecord>();
  let before = 0;
  for (const report of told) {
    const say = (rule: string, severity: Finding['severity'], message: string) =>
      findings.push({
        rule,
        severity,
        subject: report.number,
        message,
        ...(report.place ? { place: report.place } : {}),
      });
    const found = entries.filter(e => e.number === report.number || e.id === report.number);
    if (found.length !== 1) {
      const near = nearestNames(
        report.number,
        entries.map(e => e.number).filter(n => n !== ''),
      );
      const what =
        found.length > 1
          ? `prints ${report.number} for ${found.length} items; name one by its id`
          : `has no number ${report.number}${near.length > 0 ? `; the nearest are ${near.join(', ')}` : ''}`;
      say('intake-number', 'error', `${name} ${what}. The report was not kept.`);
      continue;
    }
    const said = { ...report, cause: report.cause.trim().toLowerCase(), date: report.date ?? dayOf(ports.now()) };
    const wrong = wrongIn(said);
    if (wrong) {
      say('intake-incomplete', 'error', `${report.number}: ${wrong} The report was not kept.`);
      continue;
    }
    if (causes.size > 0 && !causes.has(said.cause)) {
      say(
        'intake-new-cause',
        'note',
        `The cause "${said.cause}" is new; known ones are ${[...causes].sort().join(', ')}.`,
      );
    }
    causes.add(said.cause);
    const { id: item, number } = found[0]!;
    const kind = (said.kind?.trim().toLowerCase() || 'feedback') as IntakeKind;
    const { cause, date, from, text } = said;
    const record = intakeRecord({ kind, edition: name, item, number, cause, date, from, text });
    if (known.has(record.id) || added.has(record.id)) before++;
    else added.set(record.id, record);
  }
  if (added.size > 0) {
    const changes = [...added.values()].map(r => ({ path: intakePath(r), before: null, after: writeIntake(r) }));
    await changeBeside(catalog, changes, person(ports), `Intake on ${name}: ${added.size} kept`);
  }
  return { added: [...added.values()], known: before, findings };
}

/** The reports of a table: number, cause, from, text, and date or kind where they are known. */
export async function toldInTable(
  ports: Ports,
  file: string,
): Promise<{ told: ToldReport[]; findings: readonly Finding[] }> {
  const table = readTable(file, await ports.files.read(file));
  const columns = nameColumns(table, ['number', 'cause', 'from', 'text', 'date', 'kind']);
  const lacking = (['number', 'cause', 'from', 'text'] as const).filter(c => !columns.has(c));
  if (lacking.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${file} has no column ${lacking.join(', ')}; it needs number, cause, from and text, and may have date and kind.`,
      { file, lacking },
    );
  }
  const told = table.rows.map((row): ToldReport => {
    const of = (column: Parameters<typeof columns.cell>[1]) => columns.cell(row, column) ?? '';
    return {
      number: of('number'),
      cause: of('cause'),
      from: of('from'),
      text: of('text'),
      ...(of('date') ? { date: of('date') } : {}),
      ...(of('kind') ? { kind: of('kind') } : {}),
      place: { file: row.file, line: row.line },
    };
  });
  return { told, findings: [...table.findings, ...columns.findings] };
}

function wrongIn({ cause, from, text, date, kind }: ToldReport & { readonly date: string }): string | undefined {
  const lacking = [
    cause === '' ? 'a cause' : '',
    from.trim() === '' ? 'who told it' : '',
    text.trim() === '' ? 'a text' : '',
  ];
  if (lacking.some(Boolean)) return `It lacks ${lacking.filter(Boolean).join(' and ')}.`;
  if (!isDay(date)) {
    return `${date} is not a date; write it as year-month-day, for example 2024-07-01.`;
  }
  const word = kind?.trim().toLowerCase();
  if (word && !(INTAKE_KINDS as readonly string[]).includes(word)) {
    return `${kind} is no kind of report; use ${INTAKE_KINDS.join(', ')}.`;
  }
  return undefined;
}
