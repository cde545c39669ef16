import type { Entry } from '../model/edition.ts';
import type { Item, ItemId } from '../model/item.ts';
import { MOMENT_WORDS } from '../model/said-words.ts';
import { type EditionOfLine, type Publication, traceInLine } from './publication.ts';
import { anchorOf, type SiteNames } from './site-names.ts';
import { type TwoLines, twoLines } from './two-lines.ts';

/** A number of one edition with its answer, as pages and the table for looking up show it. */
export interface NumberAnswer extends Omit<TwoLines, 'now'> {
  readonly id: ItemId;
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
    readonly verified: readonly string[];
  }[];
  /** When and how it is verified; of items of the published edition only. */
  readonly verified: readonly string[];
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
  const { line, joint, oldItems, newItems } = publication;
  return line
    .map(({ index }, at) => {
      const newest = at === line.length - 1;
      const compared = index.header.name === joint.from.header.name;
      return {
        edition: index.header.name,
        file: newest ? 'index.html' : names.edition(at),
        newest,
        answers: index.entries.map(entry => ({
          ...numberAnswer(line, at, entry, newItems, names),
          text: compared ? (oldItems.get(entry.id)?.text ?? '') : '',
        })),
      };
    })
    .reverse();
}

/**
 * What became of one item of an edition of a line.
 *
 * @param newItems of the last edition of the line
 */
export function numberAnswer(
  line: readonly EditionOfLine[],
  at: number,
  entry: Entry,
  newItems: ReadonlyMap<ItemId, Item>,
  names: Pick<SiteNames, 'item' | 'old'>,
): Omit<NumberAnswer, 'text'> {
  const newest = at === line.length - 1;
  const lines = twoLines(traceInLine(line, at, entry), line[at]!.direct);
  const verified = (id: ItemId) =>
    (newItems.get(id)?.verified ?? []).map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : ''));
  return {
    ...lines,
    id: entry.id,
    anchor: anchorOf(entry.id),
    number: entry.number,
    title: entry.title,
    level: entry.level,
    href: newest ? names.item(entry.id) : names.old(at, entry.id),
    verified: newest ? verified(entry.id) : [],
    now: lines.now.map(n => ({
      number: n.entry.number,
      title: n.entry.title,
      href: names.item(n.entry.id),
      marks: n.marks,
      duty: n.duty,
      verified: verified(n.entry.id),
    })),
  };
}
