import type { ItemId } from '../model/item.ts';
import { type Publication, traceInLine } from './publication.ts';
import { anchorOf, type SiteNames } from './site-names.ts';
import { type TwoLines, twoLines } from './two-lines.ts';

/** A number of one edition with its answer, as pages and the table for looking up show it. */
export interface NumberAnswer extends Omit<TwoLines, 'now'> {
  readonly anchor: string;
  readonly number: string;
  readonly title: string;
  readonly level: number;
  readonly href: string;
  readonly now: readonly {
    readonly number: string;
    readonly title: string;
    readonly href: string;
    readonly marks: readonly string[];
    readonly duty: string;
  }[];
  /** What it said; of the edition that is compared with only. */
  readonly text: string;
}

export interface EditionNumbers {
  readonly edition: string;
  readonly file: string;
  readonly newest: boolean;
  readonly answers: readonly NumberAnswer[];
}

/** Every number of every edition with what became of it, newest edition first. */
export function editionNumbers(publication: Publication, names: SiteNames): EditionNumbers[] {
  const { line, joint, oldItems } = publication;
  return line
    .map(({ index, direct }, at) => {
      const newest = at === line.length - 1;
      const compared = index.header.name === joint.from.header.name;
      const hrefOf = (id: ItemId) => (newest ? names.item(id) : names.old(at, id));
      return {
        edition: index.header.name,
        file: newest ? 'index.html' : names.edition(at),
        newest,
        answers: index.entries.map(entry => {
          const lines = twoLines(traceInLine(line, at, entry), direct);
          return {
            ...lines,
            anchor: anchorOf(entry.id),
            number: entry.number,
            title: entry.title,
            level: entry.level,
            href: hrefOf(entry.id),
            now: lines.now.map(n => ({
              number: n.entry.number,
              title: n.entry.title,
              href: names.item(n.entry.id),
              marks: n.marks,
              duty: n.duty,
            })),
            text: compared ? (oldItems.get(entry.id)?.text ?? '') : '',
          };
        }),
      };
    })
    .reverse();
}
