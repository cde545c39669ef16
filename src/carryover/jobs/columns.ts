import { titlesOf } from '../../citing/titles.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import { CatalogError } from '../../model/errors.ts';
import { readNumberCell } from './number-cell.ts';
import { stateOf } from './states.ts';
import { typeReader } from './type-names.ts';

/** What a column of a job table can be to us. */
export const ROLES = ['number', 'type', 'state', 'job', 'date', 'title', 'edition'] as const;
export type Role = (typeof ROLES)[number];

export interface FoundColumn {
  /** 0-based position. */
  readonly at: number;
  readonly header: string;
  /** Told by the user, or found by its values (with the share of filled cells that fit, 0 to 1). */
  readonly how: 'told' | 'found';
  readonly share: number;
}

export type Columns = Partial<Record<Role, FoundColumn>> & { readonly number: FoundColumn };

/** Header names, or 1-based positions as text, told by the user. */
export type ToldColumns = Partial<Record<Role, string>>;

const HINTS: Record<Role, RegExp> = {
  number: /\b(?:item|number|no|nr|requirement|clause|section|spec|cites?|citation|ref|reference)\b/i,
  type: /\b(?:type|installation|kind|category)\b/i,
  state: /\b(?:state|status|stage|progress|stand|zustand)\b/i,
  job: /\b(?:job|order|project|contract|site|case|work order)\b/i,
  date: /\b(?:date|day|when|on|at)\b/i,
  title: /\b(?:title|description|name|subject|what)\b/i,
  edition: /\b(?:edition|version|catalog(?:ue)?)\b/i,
};

/** What a name says that its column is for. */
export function rolesNamed(name: string): readonly Role[] {
  return ROLES.filter(role => HINTS[role].test(spaced(name)));
}

const FOR_NUMBERS = /^(?:cited|rule|regel|nummer|ziffer|punkt)$/i;

/**
 * Whether a cell is the name of a column of numbers and nothing else. "item missing" is what somebody wrote of a job, and so
 * is a plain "no".
 */
export function isNumberName(cell: string): boolean {
  const words = wordsOf(cell);
  return (
    cell.trim() !== 'no' && words.length > 0 && words.every(w => FOR_NUMBERS.test(w) || rolesNamed(w)[0] === 'number')
  );
}

/** Whether a cell is the name of a column and nothing else. */
export function isColumnName(cell: string): boolean {
  const words = wordsOf(cell);
  return cell.trim() !== 'no' && words.length > 0 && words.every(w => FOR_NUMBERS.test(w) || rolesNamed(w).length > 0);
}

function wordsOf(cell: string): readonly string[] {
  return spaced(cell).trim().split(' ').filter(Boolean);
}

/** A header that fits is worth this much, so that it decides between columns of like content and not against content. */
const HINT = 0.2;
/** The least share of filled cells that must fit, where the header says nothing. */
const LEAST: Record<Exclude<Role, 'job'>, number> = {
  number: 0.3,
  type: 0.5,
  state: 0.5,
  date: 0.6,
  title: 0.3,
  edition: 0.6,
};

const DOTTED = /^\d+(?:\.\d+)+\.?$/;
const DATE = /^\d{4}-\d\d-\d\d|^\d{1,2}[./]\d{1,2}[./]\d{2,4}$/;

/**
 * Finds what each column is by what is in it; the header's name only tips the scale. What the user told stands.
 *
 * @param sample the first records, without the header.
 * @throws CatalogError BadArgument if a told column does not exist; BadTable if no column holds numbers.
 */
export function findColumns(
  joint: Joint,
  header: readonly string[],
  sample: readonly (readonly string[])[],
  told: ToldColumns,
): Columns {
  const found: Partial<Record<Role, FoundColumn>> = {};
  const taken = new Set<number>();
  const take = (role: Role, at: number, how: FoundColumn['how'], share: number) => {
    found[role] = { at, header: header[at] ?? '', how, share };
    taken.add(at);
  };
  for (const role of ROLES) {
    const name = told[role];
    if (name !== undefined) take(role, toldColumn(header, name, role), 'told', 1);
  }
  const fits = fitting(joint);
  for (const role of ['number', 'type', 'state', 'date', 'edition', 'title'] as const) {
    if (found[role]) continue;
    const best = header
      .map((name, at) => ({ at, hint: HINTS[role].test(spaced(name)), share: shareOf(sample, at, fits[role]) }))
      .filter(c => !taken.has(c.at) && c.share > 0 && c.share + (c.hint ? HINT : 0) >= LEAST[role])
      .sort((a, b) => b.share + (b.hint ? HINT : 0) - (a.share + (a.hint ? HINT : 0)))[0];
    if (best) take(role, best.at, 'found', best.share);
  }
  const job = found.job ? undefined : jobColumn(header, sample, taken);
  if (job !== undefined) take('job', job, 'found', 1);
  if (!found.number) {
    throw new CatalogError(
      'BadTable',
      `No column holds numbers of edition ${joint.from.header.name}; say which one does, or check --from.`,
      { header },
    );
  }
  const columns = { ...found, number: found.number };
  refuseJobAsHead(joint, columns, fits.number);
  return columns;
}

/** Where a table has no head, its first job is taken for one and would be lost without a word. */
function refuseJobAsHead(joint: Joint, { number, date }: Columns, fits: (cell: string) => boolean): void {
  const name = number.header.trim();
  // "Clause 1" may well name a column of numbers, and so may "A"; what begins with a digit does not.
  const isNumber =
    /\p{N}/u.test(name) && (joint.old.withNumber(name).length > 0 || (/^\p{N}/u.test(name) && fits(name)));
  const day = date?.header.trim() ?? '';
  const what = isNumber
    ? `${name} is a number of ${joint.from.header.name}`
    : DOTTED.test(name)
      ? `${name} looks like a number`
      : DATE.test(day)
        ? `${day} is a day`
        : undefined;
  if (what === undefined) return;
  throw new CatalogError(
    'BadTable',
    `The first line looks like a job, not like a head: ${what}. Put a line with the names of the columns above the jobs, such as Item, and run again.`,
    { header: name },
  );
}

function fitting(joint: Joint): Record<Exclude<Role, 'job'>, (cell: string) => boolean> {
  const typeOf = typeReader(joint);
  const titles = titlesOf(joint.from);
  const editions = new Set([joint.from.header.name, joint.to.header.name]);
  return {
    number: cell => joint.old.withNumber(readNumberCell(joint, cell).number).length > 0,
    type: cell => typeOf(cell) !== undefined,
    state: cell => stateOf(cell) !== undefined,
    date: cell => DATE.test(cell.trim()),
    title: cell => titles.named(cell).length > 0,
    edition: cell => editions.has(cell.trim()) || /^(?:19|20)\d\d$/.test(cell.trim()),
  };
}

function shareOf(sample: readonly (readonly string[])[], at: number, fits: (cell: string) => boolean): number {
  const filled = sample.map(r => r[at] ?? '').filter(c => c.trim() !== '' && c.length < 1000);
  return filled.length === 0 ? 0 : filled.filter(fits).length / filled.length;
}

/** A job's id has a header that says so; values alone cannot tell a job from a crew or a street. */
function jobColumn(header: readonly string[], sample: readonly (readonly string[])[], taken: ReadonlySet<number>) {
  const named = header.map((name, at) => ({ name: spaced(name), at })).filter(c => !taken.has(c.at));
  const hinted = named.filter(c => HINTS.job.test(c.name) && sample.some(r => (r[c.at] ?? '').trim() !== ''));
  return (hinted.find(c => /\bjob\b/i.test(c.name)) ?? hinted[0])?.at;
}

function toldColumn(header: readonly string[], name: string, role: Role): number {
  const positions = header.flatMap((h, at) => (h.trim() === name.trim() ? [at] : []));
  if (positions.length === 1) return positions[0]!;
  const at = /^\d+$/.test(name) && positions.length === 0 ? Number(name) - 1 : -1;
  if (at >= 0 && at < header.length) return at;
  throw new CatalogError(
    'BadArgument',
    positions.length > 1
      ? `${positions.length} columns are called ${name}; give the position of the ${role} column instead, from 1.`
      : `There is no column ${name}; the columns are ${header.join(', ')}.`,
    { name, role },
  );
}

/** `job_id` and `jobNumber` as words. */
function spaced(name: string): string {
  return name.replace(/([a-z])([A-Z])/g, '$1 $2').replace(/[^\p{L}\p{N}]+/gu, ' ');
}

/** Whether lines name editions of their own, in a column or in brackets behind the number. */
export function namesEditions(sample: readonly (readonly string[])[], { edition, number }: Columns): boolean {
  return edition !== undefined || sample.some(cells => /\((?:19|20)\d\d[^)]*\)/.test(cells[number.at] ?? ''));
}
