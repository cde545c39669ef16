import { findColumns, type Role } from '../carryover/jobs/columns.ts';
import type { Way } from '../carryover/jobs/job-reader.ts';
import type { JobSource } from '../commands/jobs/job-source.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { counted } from '../model/said-words.ts';
import { openWorkbook } from '../tables/open-workbook.ts';
import type { Ask, CarryRequest } from './carry-request.ts';

type Sample = Pick<JobSource, 'header' | 'sample'>;

/** Words of a table that are asked about, the ones with the most lines; the rest stand among the notes. */
const WORDS = 5;
/** A second column of numbers is worth a question where it fits at least this share as well as the first. */
const RIVAL = 0.5;
/** So much better must the numbers fit another edition. */
const BETTER = 0.05;

/** Rules of findings that become questions, and need not be told again. */
export const ASKED_RULES: ReadonlySet<string> = new Set([
  'no-job-column',
  'no-type-column',
  'no-state-column',
  'other-sheets',
]);

/** What a person should look at before anything else: the table leaves it open, and all that follows hangs on it. */
export function tableAsks(
  way: Way,
  ways: ReadonlyMap<string, Way>,
  request: CarryRequest,
  { header, sample }: Sample,
  {
    columns,
    findings,
  }: { readonly columns: Readonly<Record<string, { readonly at: number }>>; readonly findings: readonly Finding[] },
): readonly Ask[] {
  const free = header.map((_, at) => at).filter(at => !Object.values(columns).some(c => c.at === at));
  // Where lines name their editions, the one edition that is chosen says little.
  const editions = columns.edition ? [] : editionAsk(way, ways, request, { header, sample });
  const again = secondHead({ header, sample });
  // Words of a second table in the wrong columns would only be asked about one by one.
  if (again) return [...editions, again];
  const asks = [...editions, ...numberAsk(way, request, { header, sample }, columns)];
  for (const [role, means] of [
    ['state', 'No column says which lines are finished, so all of them are taken for open.'],
    ['type', 'No column says the installation type, so each number is answered for all types at once.'],
    ['job', 'No column says which job a line belongs to, so no line is joined to another and none is added.'],
  ] as const) {
    if (!findings.some(f => f.rule === `no-${role}-column`)) continue;
    asks.push(columnAsk(role, means, header, free, 'there is none'));
  }
  if (findings.some(f => f.rule === 'other-sheets')) asks.push(...sheetAsk(request, findings));
  return [...asks, ...wordAsks(way, findings)];
}

/** What a person can say where no column was found at all, or where the order of dates is open. */
export function refusedAsks(error: CatalogError, { header }: Sample): readonly Ask[] {
  if (/^No column holds numbers/.test(error.message)) {
    return [
      columnAsk(
        'number',
        'No column was found that holds numbers of the catalog.',
        header,
        header.map((_, at) => at),
        'no column',
      ),
    ];
  }
  if (!/--dates/.test(error.message)) return [];
  const options = [
    { value: '', label: 'please choose' },
    { value: 'dmy', label: 'the day' },
    { value: 'mdy', label: 'the month' },
    { value: 'ymd', label: 'the year' },
  ];
  return [
    {
      field: 'dates',
      key: '',
      sentence: 'The dates can be read in more than one way.',
      label: 'In dates, first comes',
      options,
    },
  ];
}

/** The head once more among the lines: a second table below the first, read by the columns of the first. */
function secondHead({ header, sample }: Sample): Ask | undefined {
  const names = new Set(header.map(fold).filter(name => name !== ''));
  const at = sample.findIndex(cells => {
    const filled = cells.map(fold).filter(cell => cell !== '');
    const known = filled.filter(cell => names.has(cell)).length;
    return known >= 2 && known >= filled.length / 2;
  });
  if (at < 0) return undefined;
  const lines = sample.slice(0, at).filter(cells => cells.some(cell => cell.trim() !== '')).length;
  const sentence = `After ${counted(lines, 'line')} the head comes once more: two tables seem to stand one below the other. All lines are read by the columns of the first; put the second on a sheet or into a file of its own, and choose both again.`;
  return { field: 'file', key: '', sentence, label: '', options: [] };
}

const fold = (cell: string) => cell.trim().toLowerCase();

/** A column by its name, and by its place where the name alone would not tell it. */
function columnName(header: readonly string[], at: number): string {
  const name = header[at] ?? '';
  if (name === '') return `column ${at + 1}`;
  return header.indexOf(name) === header.lastIndexOf(name) ? name : `${name} (column ${at + 1})`;
}

function columnAsk(
  role: Role,
  sentence: string,
  header: readonly string[],
  places: readonly number[],
  none: string,
): Ask {
  const options = places.map(at => ({ value: String(at + 1), label: columnName(header, at) }));
  return {
    field: 'columns',
    key: role,
    sentence,
    label: `The ${role} stands in`,
    options: [{ value: '', label: none }, ...options],
  };
}

/** Whether another edition has more of the numbers: a table of 2014 read in 2018 is wrong from the first line on. */
function editionAsk(way: Way, ways: ReadonlyMap<string, Way>, request: CarryRequest, sample: Sample): Ask[] {
  const shares = [...ways].map(([edition, other]) => ({ edition, share: shareIn(other, sample, request) }));
  const here = way.joint.from.header.name;
  const own = shares.find(s => s.edition === here)?.share ?? 0;
  const best = shares.reduce((a, b) => (b.share > a.share ? b : a));
  if (best.share < own + BETTER) return [];
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  return [
    {
      field: 'from',
      key: '',
      sentence: `Of the first lines ${percent(best.share)} have a number of ${best.edition}, and ${percent(own)} one of ${here}.`,
      label: 'The numbers are those of',
      options: [here, ...shares.map(s => s.edition).filter(e => e !== here)].map(e => ({ value: e, label: e })),
    },
  ];
}

function shareIn({ joint }: Way, { header, sample }: Sample, { columns = {} }: CarryRequest): number {
  try {
    return findColumns(joint, header, sample, columns.number === undefined ? {} : { number: columns.number }).number
      .share;
  } catch (error) {
    if (error instanceof CatalogError) return 0;
    throw error;
  }
}

/** Whether a second column holds numbers: found by looking again with the first one covered. */
function numberAsk(
  way: Way,
  request: CarryRequest,
  { header, sample }: Sample,
  columns: Readonly<Record<string, { readonly at: number }>>,
): Ask[] {
  if (request.columns?.number !== undefined) return [];
  const taken = columns.number!.at;
  // A quantity is the number of a chapter too; it counts only where the numbers themselves are as plain.
  const isPlain = (cell: string) => /^\s*\d+\s*$/.test(cell);
  const filled = sample.map(cells => cells[taken] ?? '').filter(cell => cell.trim() !== '');
  const plainToo = filled.filter(isPlain).length > filled.length / 2;
  const covers = (cell: string, at: number) => at === taken || (isPlain(cell) && !plainToo);
  const covered = sample.map(cells => cells.map((cell, at) => (covers(cell, at) ? '' : cell)));
  const own = shareIn(way, { header, sample }, request);
  try {
    const { number } = findColumns(
      way.joint,
      header.map((h, at) => (at === taken ? '' : h)),
      covered,
      {},
    );
    if (number.share < own * RIVAL) return [];
    const sentence = `Two columns hold numbers: ${columnName(header, taken)}, which is carried, and ${columnName(header, number.at)}. If two tables stand beside each other, put each on a sheet of its own.`;
    return [columnAsk('number', sentence, header, [number.at], columnName(header, taken))];
  } catch (error) {
    if (error instanceof CatalogError) return [];
    throw error;
  }
}

function sheetAsk({ files, sheet }: CarryRequest, findings: readonly Finding[]): Ask[] {
  const [file] = files;
  const { sheets } = openWorkbook(file!.bytes, file!.name);
  const read = /^Sheet (.*) is read; /.exec(findings.find(f => f.rule === 'other-sheets')!.message)?.[1] ?? sheet;
  const label = ({ name, hidden }: { readonly name: string; readonly hidden: boolean }) => ({
    value: name,
    label: hidden ? `${name} (hidden)` : name,
  });
  const [first, others] = [sheets.filter(s => s.name === read), sheets.filter(s => s.name !== read)];
  return [
    {
      field: 'sheet',
      key: '',
      sentence: `The workbook has ${counted(sheets.length, 'sheet')}; one is carried at a time.`,
      label: 'The sheet to carry',
      options: [...first, ...others].map(label),
    },
  ];
}

/** Words for a state or a type that are on no list. */
function wordAsks({ joint }: Way, findings: readonly Finding[]): Ask[] {
  const words = (rule: string) => {
    const all = findings.filter(f => f.rule === rule && f.subject !== '(others)');
    const linesOf = (f: Finding) => Number(f.data?.lines ?? 0);
    return all
      .sort((a, b) => linesOf(b) - linesOf(a))
      .slice(0, WORDS)
      .map(f => ({ word: f.subject, lines: linesOf(f) }));
  };
  const types = joint.to.settings.installationTypes.map(({ id, name }) => ({ value: id, label: name }));
  return [
    ...words('unknown-state').map(
      ({ word, lines }): Ask => ({
        field: 'stateNames',
        key: word,
        sentence: `“${word}” is no state that is known; ${counted(lines, 'line')} with it ${lines === 1 ? 'is' : 'are'} taken for open.`,
        label: `“${word}” means`,
        options: [
          { value: '', label: 'open' },
          { value: 'done', label: 'finished: leave its lines alone' },
        ],
      }),
    ),
    ...words('unknown-type').map(
      ({ word, lines }): Ask => ({
        field: 'typeNames',
        key: word,
        sentence: `“${word}” is no installation type of either edition; ${counted(lines, 'line')} ${lines === 1 ? 'is' : 'are'} answered for all types.`,
        label: `“${word}” means`,
        options: [{ value: '', label: 'all types' }, ...types],
      }),
    ),
  ];
}
