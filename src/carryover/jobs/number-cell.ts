import type { Joint } from '../../crosswalk/joint.ts';
import { type NumberList, readNumberList } from './number-list.ts';

/** What a cell with a number in it says. */
export interface NumberCell {
  readonly number: string;
  readonly title?: string;
  readonly edition?: string;
  /** Where the cell cites more than one; `number` is all of it then. */
  readonly several?: NumberList;
}

/** Words before a number. A short one counts before digits only: "Ref-3" may be a number as it stands. */
const LABEL =
  /^(?:(?:work items?|requirements?|sections?|clauses?|items?|parts?|groups?|nos?\.?|§§?)(?!\p{L})[\s:]*|(?:cls?|secs?|reqs?|nr|ref|art|para)\b\.?[\s:]*(?=\p{L}?\d))/iu;
const EDITION = /\s*\(((?:19|20)\d\d[^)]*)\)$/;
const CELL = /^(\S+?)(?:\.|[.,;]+$)?(?:\s*\(((?:19|20)\d\d[^)]*)\))?(?:[\s:]+(\S.*))?$/i;

/**
 * Reads a number from a cell as people fill it in: "3.2.1", "Item 3.2.1", "3.2.1.", "3.2.1 (2014)", "3.2.1 Overflow",
 * "cl. 3.2.1", and several in one: "3.2.1; 3.2.2".
 * A number that the edition prints is taken as it stands, whatever it looks like.
 */
export function readNumberCell(joint: Joint, cell: string): NumberCell {
  const text = cell
    .replace(/\u00ad/g, '')
    .replace(/[\u2010-\u2013]/g, '-')
    .replace(/[\s\u00a0]+/g, ' ')
    .trim();
  if (joint.old.withNumber(text).length > 0) return { number: text };
  if (text.length > 400) return { number: text };
  const bare = text.replace(LABEL, '');
  const said = EDITION.exec(bare)?.[1];
  const several = readNumberList(joint, said === undefined ? bare : bare.replace(EDITION, ''));
  if (several) return { number: text, several, ...(said === undefined ? {} : { edition: nameOf(said) }) };
  const [, number, edition, title] = CELL.exec(bare) ?? [];
  if (number === undefined || (title !== undefined && !/\d/.test(number))) return { number: text };
  return {
    number,
    ...(edition === undefined ? {} : { edition: nameOf(edition) }),
    ...(title === undefined ? {} : { title }),
  };
}

function nameOf(said: string): string {
  return said.replace(/\s*edition$/i, '');
}
