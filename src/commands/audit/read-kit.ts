import { type Share, stratified, wilson } from '../../content/wilson.ts';
import { nameColumns } from '../../editing/columns.ts';
import { dayOf, isDay } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { readTable } from '../../tables/read-table.ts';
import { readXlsx } from '../../tables/read-xlsx.ts';
import type { Ports } from '../ports/ports.ts';
import { isSamePerson } from './settle-losses.ts';

export interface KitStratumResult {
  readonly name: string;
  readonly population: number;
  readonly drawn: number;
  /** Rows with a verdict and both names. */
  readonly looked: number;
  readonly right: Share;
}

export interface KitResult {
  readonly rows: number;
  readonly counted: number;
  /** Rows with a verdict that lack a name or a day that can be, or have the same person twice. */
  readonly unsigned: number;
  readonly strata: readonly KitStratumResult[];
  /** Share of old items found right, weighted by strata. */
  readonly right: Share;
  /** Sizes of strata in which nobody looked at a row; the figure says nothing of them. */
  readonly unlooked: number;
  readonly wrong: readonly { readonly number: string; readonly remark: string }[];
  readonly findings: readonly Finding[];
}

const COLUMNS = ['stratum', 'id', 'number', 'verdict', 'remark', 'name', 'date', 'second_name', 'second_date'] as const;

/** Reads a filled-in worksheet. A row counts with a verdict, a name and date, and those of a second, other person. */
export async function readKit(ports: Ports, file: string, from: string, to: string): Promise<KitResult> {
  const bytes = await ports.files.read(file);
  const table = readTable(file, bytes);
  const { cell, has } = nameColumns(table, COLUMNS);
  const lacking = COLUMNS.filter(c => !has(c));
  if (lacking.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${file} has no column ${lacking.join(', ')}; take the workbook that audit --sample writes, with its first sheet first.`,
      { file, lacking },
    );
  }
  checkEditions(file, bytes, from, to);
  const sizes = populations(file, bytes);
  const findings: Finding[] = [];
  const latest = lastDay(ports.now());
  const groups = new Map<string, { drawn: number; looked: number; right: number }>();
  const wrong: { number: string; remark: string }[] = [];
  let unsigned = 0;
  for (const row of table.rows) {
    const name = cell(row, 'stratum') ?? '';
    const group = groups.get(name) ?? { drawn: 0, looked: 0, right: 0 };
    groups.set(name, group);
    group.drawn++;
    const number = cell(row, 'number') ?? cell(row, 'id') ?? '';
    const verdict = (cell(row, 'verdict') ?? '').toLowerCase();
    const tell = (message: string) =>
      findings.push({
        rule: 'kit-row',
        severity: 'warning',
        subject: number,
        message,
        place: { file, line: row.line },
      });
    if (verdict === '') continue;
    if (verdict !== 'right' && verdict !== 'wrong') {
      tell(`${number} has the verdict ${verdict}; write right or wrong.`);
      continue;
    }
    const [first, second] = [cell(row, 'name') ?? '', cell(row, 'second_name') ?? ''];
    const dates = [cell(row, 'date'), cell(row, 'second_date')];
    const dated = dates.every(d => d !== undefined);
    if (first === '' || second === '' || !dated || isSamePerson(first, second)) {
      unsigned++;
      tell(
        first !== '' && isSamePerson(first, second)
          ? `${number} was signed twice by ${first}; the second person has to be another.`
          : `${number} lacks a name or a date; both persons sign with name and date.`,
      );
      continue;
    }
    const trouble = dates.map(d => dayTrouble(d!, latest)).find(t => t !== undefined);
    if (trouble !== undefined) {
      unsigned++;
      tell(`${number} ${trouble}`);
      continue;
    }
    group.looked++;
    if (verdict === 'right') group.right++;
    else wrong.push({ number, remark: cell(row, 'remark') ?? '' });
  }
  const strata = [...sizes].map(([name, population]): KitStratumResult => {
    const { drawn, looked, right } = groups.get(name) ?? { drawn: 0, looked: 0, right: 0 };
    return { name, population, drawn, looked, right: wilson(right, looked) };
  });
  return {
    rows: table.rows.length,
    counted: strata.reduce((sum, s) => sum + s.looked, 0),
    unsigned,
    strata,
    right: stratified(strata.map(s => ({ population: s.population, looked: s.looked, hits: s.right.hits }))),
    unlooked: strata.filter(s => s.looked === 0).reduce((sum, s) => sum + s.population, 0),
    wrong,
    findings,
  };
}

/** Nobody signs tomorrow. East of Greenwich it may be the next day already. */
function lastDay(now: Date): string {
  return dayOf(new Date(now.getTime() + 14 * 3_600_000));
}

function dayTrouble(date: string, latest: string): string | undefined {
  if (!isDay(date)) return `has the date ${date}; write it as year-month-day, for example 2024-07-01.`;
  return date > latest ? `is dated ${date}, which is still to come; write the day on which it was signed.` : undefined;
}

/** How many old items each stratum has, of the sheet Strata: rows of the worksheet may have been left out. */
function populations(file: string, bytes: Uint8Array): Map<string, number> {
  const sheet = readXlsx(file, bytes, 'Strata');
  const sizes = new Map<string, number>();
  for (const { cells } of sheet.rows) {
    const [name, size] = [cells.get('stratum') ?? '', Number(cells.get('population') ?? '')];
    if (!Number.isInteger(size) || size < 1) {
      throw new CatalogError(
        'BadTable',
        `The sheet Strata of ${file} gives no whole number for ${name}; take it from the workbook as it was written.`,
        { file },
      );
    }
    sizes.set(name, size);
  }
  return sizes;
}

function checkEditions(file: string, bytes: Uint8Array, from: string, to: string): void {
  const sheet = readXlsx(file, bytes, 'How to');
  const written = sheet.rows.find(r => r.cells.get('what') === 'editions')?.cells.get('how');
  if (written === `${from} to ${to}`) return;
  throw new CatalogError(
    'BadArgument',
    `${file} is a worksheet of ${written ?? 'other editions'}; name those: fishplate audit FROM TO --read ${file}`,
    { file, written },
  );
}

const percent = (n: number) => `${(100 * n).toFixed(1)} %`;

/** The result in sentences: what was counted, the share found right with its interval, and what was found wrong. */
export function toldKit(result: KitResult): string[] {
  const { rows, counted, unsigned, right, unlooked, wrong, strata } = result;
  const lines = [
    `${counted} of ${rows} rows counted; ${unsigned} have a verdict without the names and dates of two persons.`,
  ];
  if (counted === 0) return [...lines, 'No row can be counted yet.'];
  lines.push(
    `Right: ${percent(right.share)} of the old items (95 % interval ${percent(right.low)} to ${percent(right.high)}, Wilson, weighted by strata).`,
  );
  if (unlooked > 0) lines.push(`Says nothing of ${unlooked} old items in strata where no row is counted.`);
  for (const s of strata) {
    if (s.looked === 0) continue;
    const { hits, of, low, high } = s.right;
    lines.push(`  ${s.name}: ${hits} of ${of} right, of ${s.population} (${percent(low)} to ${percent(high)})`);
  }
  for (const { number, remark } of wrong) lines.push(`  wrong: ${number}${remark ? ` - ${remark}` : ''}`);
  return lines;
}
