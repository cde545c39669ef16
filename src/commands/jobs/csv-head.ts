import { isRoleName } from '../../carryover/jobs/columns.ts';

/** The head of a csv table, which may take two lines: a spreadsheet saves groups above the names as a line of its own. */
export interface CsvHead {
  readonly names: readonly string[];
  /** Records of the head. */
  readonly records: 1 | 2;
}

const NUMBER = /^\d+(?:[.,]\d+)*\.?$/;

/**
 *   Work,,Place,                  groups, each over the columns up to the next
 *   Job,Item,Kind,Status          names: all words, where the columns below have numbers
 *   J1,3.1.1,park,open
 *
 * A job must never be taken for a head, so a second line counts only where nothing in it comes again below, and the first
 * line has gaps that it fills, or it says itself what columns are for.
 *
 * @param sample the first records, the head among them
 */
export function csvHead([first = [], second = [], ...lines]: readonly (readonly string[])[]): CsvHead {
  const one: CsvHead = { names: first, records: 1 };
  const width = Math.max(first.length, second.length);
  const at = (record: readonly string[], column: number) => (record[column] ?? '').trim();
  const columns = Array.from({ length: width }, (_, column) => column);
  const filled = columns.filter(c => at(second, c) !== '');
  if (filled.length < 2 || lines.length === 0) return one;
  // A digit tells a job (J1) from a name; in an output of ours a name that was taken got one.
  if (filled.some(c => !/^[^\d]*\p{L}[^\d]*$/u.test(at(second, c).replace(/_\d+$/, '')))) return one;
  if (new Set(filled.map(c => at(second, c))).size < filled.length) return one;
  if (columns.some(c => at(first, c) === '' && at(second, c) === '')) return one;
  const below = columns.map(c => lines.map(line => at(line, c)).filter(cell => cell !== ''));
  if (filled.some(c => below[c]!.includes(at(second, c)))) return one;
  const numbered = (c: number) => below[c]!.filter(cell => NUMBER.test(cell)).length > below[c]!.length / 2;
  if (!columns.some(c => numbered(c) && !NUMBER.test(at(first, c)) && (at(second, c) || at(first, c)))) return one;
  const gaps = columns.filter(c => at(first, c) === '');
  const named = filled.filter(c => isRoleName(at(second, c)));
  const fills = gaps.length > 0 && gaps.every(c => at(second, c) !== '');
  if (!fills && named.length < 2) return one;
  let group = '';
  const names = columns.map(c => {
    group = at(first, c) || group;
    return at(second, c) || group;
  });
  return { names, records: 2 };
}
