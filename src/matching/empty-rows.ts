import { counted } from '../model/counted.ts';
import type { Finding, Severity } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';

interface SaidRow {
  readonly number: string;
  /** Title and text. */
  readonly words: string;
  readonly file: string;
  readonly line: number;
}

const SHOWN = 5;

/**
 * Rows that have no number although others of their table have one, and rows without a word to go by: one finding a
 * table for each. A table without any numbers is as it was meant.
 */
export function emptyRows(rows: readonly SaidRow[]): Finding[] {
  return [...groupBy(rows, row => row.file)].flatMap(([file, ofFile]) => {
    const finding = (rule: string, severity: Severity, empty: readonly SaidRow[], what: string, so: string) => {
      if (empty.length === 0) return [];
      const lines = empty.slice(0, SHOWN).map(row => row.line);
      const places = `line${empty.length === 1 ? '' : 's'} ${lines.join(', ')}${empty.length > SHOWN ? ' …' : ''}`;
      const message = `${counted(empty.length, 'row')} of ${file} ${empty.length === 1 ? 'has' : 'have'} ${what} (${places}): ${so}.`;
      return [{ rule, severity, subject: file, message, place: { file, line: lines[0]! } }];
    };
    const numberless = ofFile.filter(row => row.number === '');
    const wordless = ofFile.filter(row => !/[\p{L}\p{N}]/u.test(row.words));
    return [
      ...(numberless.length === ofFile.length
        ? []
        : finding(
            'row-without-number',
            'note',
            numberless,
            'no number',
            'in the crosswalk the title and the code under pair tell which they are',
          )),
      ...finding(
        'row-without-words',
        'warning',
        wordless,
        'neither title nor text',
        'only place and number are used for them',
      ),
    ];
  });
}
