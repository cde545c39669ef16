import { isColumnName, isNumberName, rolesNamed } from '../../carryover/jobs/columns.ts';

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
 * A job must never be taken for a head: it would be lost without a word, while a head that is taken for a job is told as
 * one of an unknown number. So a second line counts only where nothing in it comes again below, another of its cells is the
 * name of a column and nothing else, and
 * - the first line does not name the column of numbers, and here stands its name and nothing else ("Item", not "item
 *   missing"), or
 * - the first line does name it, and what stands here are such names only, under cells that reach over several columns or
 *   under none.
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
  const numbered = columns.filter(
    c => below[c]!.filter(cell => NUMBER.test(cell)).length > below[c]!.length / 2 && !NUMBER.test(at(first, c)),
  );
  const isGap = (c: number) => c < width && at(first, c) === '';
  const isNamed = (c: number) => rolesNamed(at(first, c)).includes('number');
  const namesIt = numbered.some(c => isNumberName(at(second, c))) && !numbered.some(isNamed);
  const under =
    filled.every(c => (isGap(c) || isGap(c + 1)) && isColumnName(at(second, c))) &&
    numbered.some(c => at(first, c) && !at(second, c));
  const others = filled.filter(c => !(numbered.includes(c) && isNumberName(at(second, c)))).map(c => at(second, c));
  if (!(namesIt || under) || !others.some(isColumnName)) return one;
  let group = '';
  const names = columns.map(c => {
    group = at(first, c) || group;
    const own = at(second, c);
    // "no." below "Order" is the order's number; below "Item" it names what "Item" does.
    const more = rolesNamed(at(first, c)).some(role => !rolesNamed(own).includes(role));
    return own !== '' && more ? `${at(first, c)} ${own}` : own || group;
  });
  return { names, records: 2 };
}
