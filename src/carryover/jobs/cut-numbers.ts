import type { Joint } from '../../crosswalk/joint.ts';
import type { Finding } from '../../model/finding.ts';
import { readNumberCell } from './number-cell.ts';

/** Numbers on lines of a table that a spreadsheet may have cut, and on how many lines each stands. */
export type CutNumbers = ReadonlyMap<string, number>;

const CUTTABLE = /^\d+\.\d*[1-9]$/;
const KEPT_ZERO = /^\d+\.\d*0$/;

/** Numbers of the edition that a spreadsheet makes of others of it: 1.1 of 1.10. Of three parts it makes none. */
export function numbersOfOthers(joint: Joint): ReadonlySet<string> {
  const has = (number: string) => joint.old.withNumber(number).length > 0;
  return new Set(joint.from.entries.map(e => e.number).filter(n => CUTTABLE.test(n) && has(`${n}0`)));
}

/**
 * Counts the lines whose number may be cut. Texts do not tell whether they were numbers once; but where one number has kept
 * its last zero, none was cut.
 *
 * @param cells number cells, each with how many lines have it
 */
export async function countCut(
  joint: Joint,
  cells: AsyncIterable<readonly [cell: string, lines: number]>,
): Promise<CutNumbers> {
  const cuttable = numbersOfOthers(joint);
  const found = new Map<string, number>();
  if (cuttable.size === 0) return found;
  for await (const [cell, lines] of cells) {
    const { number } = readNumberCell(joint, cell);
    if (KEPT_ZERO.test(number)) return new Map();
    if (cuttable.has(number)) found.set(number, (found.get(number) ?? 0) + lines);
  }
  return found;
}

/** @param subject the file or the table in a database */
export function cutFindings(joint: Joint, subject: string, cut: CutNumbers): readonly Finding[] {
  return [...cut].map(([number, lines]) => ({
    rule: 'perhaps-cut',
    severity: 'warning',
    subject,
    message: `${number} stands on ${lines} ${lines === 1 ? 'line' : 'lines'}, and ${number}0, which ${joint.from.header.name} prints too, on none: if a spreadsheet saved this table, it may have cut ${number}0 to ${number}, so ${lines === 1 ? 'it is' : 'they are'} left to a person where no title tells which is meant. Look at the original order.`,
    data: { number, lines },
  }));
}
