import { nameColumns } from '../../editing/columns.ts';
import { lossAnswerPath, writeLossAnswer } from '../../format/loss-answers.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { LOSS_VERDICTS, type LossAnswer, type LossVerdict } from '../../model/loss-answer.ts';
import { nameAndAddress } from '../../model/person.ts';
import type { TableRow } from '../../model/table.ts';
import type { Catalog } from '../../store/open.ts';
import { type BesideChange, changeBeside } from '../../store/write-beside.ts';
import { readTable } from '../../tables/read-table.ts';
import { readPerson } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import type { AuditLine, AuditReport } from './audit-editions.ts';

export interface SettleReport {
  readonly settled: number;
  /** Rows without a verdict. */
  readonly empty: number;
  /** Rows that say what is settled already. */
  readonly kept: number;
}

/**
 * Keeps the verdicts that a person filled in beside the losses of an audit: restored, stated or dropped, and because.
 * All or nothing: where one row cannot be used, nothing is written and each such row is a finding of the error.
 *
 * @param by `Name <address>` of who settles; refused for losses of changes that this person made
 */
export async function settleLosses(
  ports: Ports,
  catalog: Catalog,
  report: AuditReport,
  file: string,
  by: string,
): Promise<SettleReport> {
  const person = readPerson(by);
  const table = readTable(file, await ports.files.read(file));
  const { cell, has } = nameColumns(table, ['key', 'verdict', 'because']);
  const lacking = (['key', 'verdict', 'because'] as const).filter(c => !has(c));
  if (lacking.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${file} has no column ${lacking.join(', ')}; fill in the table that audit --out writes.`,
      { file, lacking },
    );
  }
  const lines = new Map(report.lines.filter(l => l.key !== '').map(l => [l.key, l]));
  const date = dayOf(ports.now());
  const wrong: Finding[] = [];
  const changes: BesideChange[] = [];
  const answered = new Map<string, TableRow>();
  let [empty, kept] = [0, 0];
  for (const row of table.rows) {
    const verdict = (cell(row, 'verdict') ?? '').toLowerCase();
    if (verdict === '') {
      empty++;
      continue;
    }
    const key = cell(row, 'key') ?? '';
    const line = lines.get(key);
    const because = cell(row, 'because') ?? '';
    const earlier = answered.get(key);
    if (earlier) {
      wrong.push(finding(row, `${key} is answered on line ${earlier.line} already; leave one of the two.`));
      continue;
    }
    if (line) answered.set(key, row);
    // A table written after some were settled brings them along; they stay under the name of whoever settled them.
    if (line?.state === 'settled' && line.answer?.verdict === verdict && line.answer.because === because) {
      kept++;
      continue;
    }
    const trouble = troubleWith(line, key, verdict, because, by);
    if (trouble) wrong.push(finding(row, trouble));
    else changes.push(lossChange(line!, answerTo(report, line!, verdict as LossVerdict, because, by, date)));
  }
  if (wrong.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${wrong.length} of ${table.rows.length} rows of ${file} cannot be used, the first one: ${wrong[0]!.message} Nothing was written; mend the table and try again.`,
      { file },
      wrong,
    );
  }
  if (changes.length > 0) {
    const author = { name: person.name, email: person.address, date: ports.now() };
    await changeBeside(catalog, changes, author, `Losses ${report.from} to ${report.to}: ${changes.length} settled`);
  }
  return { settled: changes.length, kept, empty };
}

/** An answer in the place of the one that was read with the line: what somebody else has said since is not written over. */
export function lossChange({ key, answer: before }: AuditLine, answer: LossAnswer): BesideChange {
  return { path: lossAnswerPath(key), before: before ? writeLossAnswer(before) : null, after: writeLossAnswer(answer) };
}

/** Why a verdict cannot be kept; undefined where it can. */
export function troubleWith(line: AuditLine | undefined, key: string, verdict: string, because: string, by: string) {
  if (!line)
    return `${key || 'A row without a key'} is no loss of these editions; run the audit again and fill that in.`;
  if (!(LOSS_VERDICTS as readonly string[]).includes(verdict)) {
    return `${verdict} is no verdict; write restored, stated or dropped.`;
  }
  if (verdict === 'dropped' && because === '') {
    return `${line.number} "${line.text}" is dropped without a reason; write one under because.`;
  }
  if (isSamePerson(line.changedBy, by)) {
    return `${by.trim()} made the change to ${line.number} and cannot settle its loss; let a second person do it.`;
  }
  return undefined;
}

/** By address where both have one, else by name; capitals and spaces aside. */
export function isSamePerson(a: string, b: string): boolean {
  const read = (text: string) => {
    const { name, address } = nameAndAddress(text) ?? { name: text.replace(/<.*/s, ''), address: '' };
    return { address: address.toLowerCase(), name: name.trim().replace(/\s+/g, ' ').toLowerCase() };
  };
  const [x, y] = [read(a), read(b)];
  return (x.address !== '' && x.address === y.address) || (x.name !== '' && x.name === y.name);
}

/** A verdict as it is kept, with the texts on which it was given. */
export function answerTo(
  { from, to }: AuditReport,
  { item, types, kind, text, texts }: AuditLine,
  verdict: LossVerdict,
  because: string,
  by: string,
  date: string,
): LossAnswer {
  return { from, to, item, types, kind, text, verdict, because, by: by.trim(), date, texts };
}

function finding({ file, line }: TableRow, message: string): Finding {
  return { rule: 'bad-verdict', severity: 'error', subject: file, message, place: { file, line } };
}
