import type { BareRow } from '../../matching/bare-row.ts';
import type { Candidate, MatchedLink, Matching } from '../../matching/match-rows.ts';
import type { Item } from '../../model/item.ts';
import { compareItems, type FieldText } from '../drafts/compare-items.ts';
import type { BareEdition } from './bare-edition.ts';
import type { Ends } from './match-answers.ts';

/** One row as a review shows it. */
export interface ReviewSide {
  readonly row: number;
  readonly number: string;
  readonly title: string;
  readonly text: string;
  /** Number and title of the rows above, the top first. */
  readonly above: readonly string[];
  /** What it is linked with so far, believed or answered: a merge, a split. */
  readonly linked: readonly { readonly row: number; readonly word: string; readonly sure: number }[];
}

/** What a question shows of the two rows, whoever asks it. */
export interface ShownQuestion {
  readonly kind: 'pair' | 'ended' | 'new';
  readonly old?: ReviewSide;
  readonly new?: ReviewSide;
  /** The fields of both rows with their words marked; of the one row there is, where the other is missing. */
  readonly fields: readonly FieldText[];
  /** The sum behind the confidence; absent for the end of a row and for a new one. */
  readonly sum?: Candidate;
  /** Other rows that it may be, likeliest first: old ones where a new row is asked about. */
  readonly others: readonly (ReviewSide & { readonly sure: number })[];
}

/** Links by the row at each end, so that a page need not go through all of them. */
export interface LinksByRow {
  readonly ofOld: ReadonlyMap<number, readonly MatchedLink[]>;
  readonly ofNew: ReadonlyMap<number, readonly MatchedLink[]>;
}

export interface Matched {
  readonly from: BareEdition;
  readonly to: BareEdition;
  readonly matching: Matching;
  readonly links: LinksByRow;
}

const OTHERS = 6;

export function showQuestion(matched: Matched, { from: i, to: j }: Ends): ShownQuestion {
  const { from, to, matching } = matched;
  const sum = i !== null && j !== null ? matching.explain(i, j) : undefined;
  const others =
    i === null
      ? sourcesOf(matching, from.rows.length, j!).map(c => ({ ...oldSide(matched, c.from), sure: c.confidence }))
      : matching
          .runnersUp(i, OTHERS + 1)
          .filter(c => c.to !== j)
          .slice(0, OTHERS)
          .map(c => ({ ...newSide(matched, c.to), sure: c.confidence }));
  return {
    kind: j === null ? 'ended' : i === null ? 'new' : 'pair',
    ...(i === null ? {} : { old: oldSide(matched, i) }),
    ...(j === null ? {} : { new: newSide(matched, j) }),
    fields: fieldsOf(from.items.get(String(i)), to.items.get(String(j))),
    ...(sum ? { sum } : {}),
    others,
  };
}

export function linksByRow(links: readonly MatchedLink[]): LinksByRow {
  const [ofOld, ofNew] = [new Map<number, MatchedLink[]>(), new Map<number, MatchedLink[]>()];
  const add = (map: Map<number, MatchedLink[]>, row: number, link: MatchedLink) => {
    const known = map.get(row);
    if (known) known.push(link);
    else map.set(row, [link]);
  };
  for (const link of links) {
    if (link.from === null || link.to === null) continue;
    add(ofOld, link.from, link);
    add(ofNew, link.to, link);
  }
  return { ofOld, ofNew };
}

function oldSide({ from, to, links }: Matched, i: number): ReviewSide {
  const linked = (links.ofOld.get(i) ?? []).map(l => ({ row: l.to!, word: word(to.rows[l.to!]!), sure: l.confidence }));
  return { ...sideOf(from.rows, i), linked };
}

function newSide({ from, to, links }: Matched, j: number): ReviewSide {
  const linked = (links.ofNew.get(j) ?? []).map(l => ({
    row: l.from!,
    word: word(from.rows[l.from!]!),
    sure: l.confidence,
  }));
  return { ...sideOf(to.rows, j), linked };
}

const word = ({ number, title, text }: BareRow) => [number, title || text.slice(0, 60)].filter(Boolean).join(' ');

function sideOf(rows: readonly BareRow[], at: number): Omit<ReviewSide, 'linked'> {
  const { number, title, text } = rows[at]!;
  const above: string[] = [];
  // A row of a damaged table may be its own ancestor.
  const seen = new Set([at]);
  for (let up = rows[at]!.parent; up >= 0 && !seen.has(up); up = rows[up]!.parent) {
    seen.add(up);
    above.unshift(word(rows[up]!));
  }
  return { row: at, number, title, text, above };
}

function fieldsOf(old: Item | undefined, next: Item | undefined): FieldText[] {
  const either = (old ?? next)!;
  const typesOf = (item: Item | undefined) => (item ?? either).appliesTo ?? [];
  const types = { from: typesOf(old), to: typesOf(next) };
  // A title stands in the heading already; where it changed, its words are marked as well.
  const fields = compareItems(old ?? either, next ?? either, types).filter(f => f.field !== 'title' || f.changed);
  if (old && next) return fields;
  return fields.map(f => (old ? { ...f, new: [] } : { ...f, old: [] }));
}

/** The old rows that a new one may come from. The matching keeps its candidates by old row, so all are asked. */
function sourcesOf(matching: Matching, olds: number, j: number): Candidate[] {
  const found: Candidate[] = [];
  for (let i = 0; i < olds; i++) {
    const candidate = matching.explain(i, j);
    if (candidate) found.push(candidate);
  }
  return found.sort((a, b) => b.confidence - a.confidence || a.from - b.from).slice(0, OTHERS);
}
