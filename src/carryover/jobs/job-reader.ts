import { sameTitle, titlesOf } from '../../citing/titles.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Outcome } from '../../model/citation.ts';
import type { TypeId } from '../../model/item.ts';
import type { Decisions } from '../decisions.ts';
import { type MarksOf, resolveCitation } from '../resolve.ts';
import { spoiledNumber } from '../unknown.ts';
import type { Governed } from './job-case.ts';
import type { JobPolicy } from './job-policy.ts';
import { readNumberCell } from './number-cell.ts';
import type { NumberList } from './number-list.ts';
import { settledByPolicy } from './settled-by-policy.ts';
import { resolveSeveral } from './several-numbers.ts';
import { totalLine } from './total-line.ts';

/** An edition that lines may cite, joined to the one that they are carried to. */
export interface Way {
  readonly joint: Joint;
  readonly marks: MarksOf;
}

/** The cells of a line that say what it cites. */
export interface CitedCells {
  readonly number: string;
  readonly title: string;
  readonly edition: string;
  readonly type: TypeId | undefined;
  readonly state: string;
  readonly governed: Governed;
  /** The number cell holds a number, not a text: what it shows, and what it stores. */
  readonly numeric: readonly string[];
  /** The word by which the line says that it is a sum of others. */
  readonly total?: string;
}

/** What a line cites, read and answered. */
export interface ReadCase {
  readonly way: Way;
  readonly number: string;
  /** Where the cell cites more than one number; `number` is all of it then. */
  readonly several?: NumberList;
  readonly title: string | undefined;
  readonly edition: string;
  readonly outcome: Outcome;
  /** Before anybody decided. */
  readonly undecided: Outcome;
}

/** Cells longer than this are no titles. */
const LONG_CELL = 200;

/**
 * Reads what a line cites and follows it. The edition is the one of its own column, the one in brackets behind the
 * number, or the one that the run starts from, in this order.
 *
 * @param perhapsCut whether a spreadsheet may have cut such a number before it saved the table as text
 */
export function caseReader(
  main: Way,
  others: ReadonlyMap<string, Way>,
  policy: JobPolicy | undefined,
  decisions: Decisions | undefined,
  perhapsCut: (number: string) => boolean = () => false,
): {
  cited(cells: CitedCells): Omit<ReadCase, 'outcome' | 'undecided'>;
  answer(cells: CitedCells): ReadCase;
} {
  const cited = (cells: CitedCells) => {
    const first = readNumberCell(main.joint, cells.number);
    const edition = cells.edition.trim() || first.edition || main.joint.from.header.name;
    const way = others.get(edition) ?? main;
    const cell = way === main ? first : readNumberCell(way.joint, cells.number);
    const beside = cells.title.trim() || cell.title;
    // A title that names nothing is a remark; keeping it in the case would make every remark a case of its own.
    const title = beside !== undefined && telling(way, cell.number, beside) ? beside : undefined;
    return { way, number: cell.number, title, edition, ...(cell.several ? { several: cell.several } : {}) };
  };
  return {
    cited,
    answer: cells => {
      const read = cited(cells);
      const { way, number, title, edition, several } = read;
      if (cells.total !== undefined) {
        const outcome = totalLine(cells.total);
        return { ...read, outcome, undecided: outcome };
      }
      const { joint, marks } = way;
      const isText = cells.numeric.length === 0;
      const meant = numbersBehind(joint, number, isText && perhapsCut(number) ? [number] : cells.numeric);
      const byTitle = meant.filter(
        n => title !== undefined && joint.old.withNumber(n).some(i => sameTitle(i.title, title)),
      );
      const one = byTitle.length === 1 ? byTitle[0]! : meant.length === 1 ? meant[0]! : undefined;
      const ofType = cells.type === undefined ? {} : { type: cells.type };
      const found: Outcome = several
        ? resolveSeveral(joint, marks, { edition, ...ofType }, several)
        : meant.length > 1 && one === undefined
          ? { ...spoiledNumber(meant, isText ? 'text' : 'number'), ...ofType }
          : resolveCitation(joint, marks, {
              number: one ?? number,
              edition,
              ...ofType,
              ...(title === undefined ? {} : { title }),
            });
      const undecided = policy ? settledByPolicy(joint, marks, policy, found) : found;
      const key = { number, title, edition, type: cells.type, state: cells.state };
      const outcome = decisions ? decisions.apply(joint, key, undecided) : undecided;
      return { ...read, outcome, undecided };
    },
  };
}

/** The numbers of the edition that a spreadsheet would have made this number: 3.1 of 3.1 and 3.10. */
export function numbersBehind(joint: Joint, number: string, numeric: readonly string[]): readonly string[] {
  if (numeric.length === 0) return [];
  const all = [number, ...numeric].flatMap(n => (n.includes('.') ? [n, `${n}0`, `${n}00`] : [n]));
  return [...new Set(all)].filter(n => joint.old.withNumber(n).length > 0);
}

function telling({ joint }: Way, number: string, title: string): boolean {
  if (title.length > LONG_CELL) return false;
  return (
    titlesOf(joint.from).named(title).length > 0 || joint.old.withNumber(number).some(i => sameTitle(i.title, title))
  );
}
