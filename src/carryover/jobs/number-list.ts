import type { Joint } from '../../crosswalk/joint.ts';
import { looksLikeDate } from './spreadsheet.ts';

/** Several numbers in one cell: written one after the other, or as a range. */
export interface NumberList {
  readonly numbers: readonly string[];
  /** "2.1 to 2.4": the two numbers are its ends. */
  readonly range: boolean;
}

const BETWEEN = /[\s;,/&+]+(?:(?:and|or|und|oder)[\s;,]+)?/i;
const RANGE = /^(\S+?)(?:\s*-\s*|\s+(?:to|through|until|bis)\s+)(\S+)$/i;
const DOTTED = /^\d+(?:\.\d+)+$/;

/**
 * Reads "2.1; 2.2", "2.1 and 2.2" and "2.1 to 2.4": taken for one number with a title behind it, all but the first would
 * be passed over in silence. Each part has to look like a number and one to be printed, so that titles and amounts
 * ("2.1 Pipe, 2.5 m") are no lists.
 *
 * @param text without a word before the numbers and without an edition behind them
 */
export function readNumberList(joint: Joint, text: string): NumberList | undefined {
  const printed = (part: string) => joint.old.withNumber(part).length > 0;
  if (looksLikeDate(text)) return undefined;
  const [, first, last] = RANGE.exec(text) ?? [];
  if (first !== undefined && last !== undefined && [first, last].every(printed)) {
    return { numbers: [first, last], range: true };
  }
  // "1,2" is what a spreadsheet of many countries makes of 1.2.
  if (/^\d+[,/]\d+$/.test(text)) return undefined;
  const numbers = [...new Set(text.split(BETWEEN).map(part => (printed(part) ? part : part.replace(/\.$/, ''))))];
  const parts = numbers.filter(part => part !== '');
  if (parts.length < 2 || !parts.some(printed) || !parts.every(p => printed(p) || DOTTED.test(p))) return undefined;
  return { numbers: parts, range: false };
}
