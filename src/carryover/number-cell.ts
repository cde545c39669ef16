import type { Joint } from '../crosswalk/joint.ts';

/** What a cell with a number in it says. */
export interface NumberCell {
  readonly number: string;
  readonly title?: string;
  readonly edition?: string;
}

const CELL =
  /^(?:(?:work item|requirement|section|clause|item|part|group|no\.?|§)[\s:]*)?(\S+?)\.?(?:\s*\(((?:19|20)\d\d[^)]*)\))?(?:[\s:]+(\S.*))?$/i;

/**
 * Reads a number from a cell as people fill it in: "3.2.1", "Item 3.2.1", "3.2.1.", "3.2.1 (2014)", "3.2.1 Overflow".
 * A number that the edition prints is taken as it stands, whatever it looks like.
 */
export function readNumberCell(joint: Joint, cell: string): NumberCell {
  const text = cell
    .replace(/\u00ad/g, '')
    .replace(/[\u2010-\u2013]/g, '-')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();
  if (joint.old.withNumber(text).length > 0) return { number: text };
  const [, number, edition, title] = text.length > 400 ? [] : (CELL.exec(text) ?? []);
  if (number === undefined || (title !== undefined && !/\d/.test(number))) return { number: text };
  return {
    number,
    ...(edition === undefined ? {} : { edition: edition.replace(/\s*edition$/i, '') }),
    ...(title === undefined ? {} : { title }),
  };
}
