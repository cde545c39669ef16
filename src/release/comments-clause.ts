import type { CirculatedItem, Circulation, CommentedItem } from '../model/comment.ts';
import type { Entry } from '../model/edition.ts';
import { nearestNames } from '../text/nearest.ts';

/** An edition that a clause may name. Entries stand in document order. */
export interface CitedEdition {
  readonly name: string;
  readonly entries: readonly Pick<Entry, 'id' | 'number' | 'level' | 'title' | 'hash'>[];
}

/** What a comment's clause and line mean: items, the whole, or a reason why that cannot be said. */
export type Placed =
  | { readonly items: readonly CommentedItem[]; readonly note?: string }
  | { readonly rule: string; readonly because: string };

const WHOLE =
  /^(?:|[-–—*]|n\/?a|general|all|whole|throughout|(?:the )?(?:whole|entire|complete) (?:document|draft|edition))$/i;

/** `line 7`, `Lines 7-9`, `l. 7`, `Zeile 7`: a line, and no number of an item. */
const LINE = /^(?:lines?|l\.|ln\.?|zeilen?|lignes?)\s*\d/i;
/** Words that may stand before a number. */
const BEFORE = /^(?:(?:sub-?)?clauses?|sections?|items?|work items?|requirements?|parts?|groups?|nos?\.|nr\.|§+)\s*/i;
/** What may follow a number without naming anything else: a list mark, or which piece of the item is meant. */
const BEHIND = /^(?:\(?[a-z0-9]{1,2}\)|title|heading|text|whole|all)$/i;

/**
 * Finds what a comment is about. A number is looked up in the draft that was sent out, or in the older edition that
 * stands before it (`2018 2.1.3.5`); the nearest number is offered in the message and never taken.
 *
 * @param draft the draft as it was circulated
 * @param others older editions by name
 * @param stored the cell is stored as a number, so that 3.10 may have become 3.1
 */
export function placeComment(
  said: { readonly clause: string; readonly line: string; readonly stored?: boolean },
  draft: CitedEdition,
  others: readonly CitedEdition[],
  circulation?: Circulation,
): Placed {
  const written = said.clause.replace(/\s+/g, ' ').trim();
  // A reviewer without a column for lines writes the line where the clause goes.
  const lineInClause = said.line === '' && LINE.test(written);
  const [clause, line] = lineInClause ? ['', written] : [written, said.line];
  const byLine = line === '' ? undefined : itemsAtLine(line, circulation);
  if (WHOLE.test(clause)) {
    if (clause !== '' || line === '') return { items: [] };
    if (!circulation) {
      return { rule: 'line-unknown', because: `${lineWord(line)} cannot be looked up: no numbered draft is on record` };
    }
    if (!byLine || byLine.length === 0) {
      return { rule: 'line-unknown', because: `the numbered draft has no ${lineWord(line)}` };
    }
    return { items: byLine.map(({ id, number, hash }) => ({ edition: draft.name, id, number, hash })) };
  }
  const items = placeList(clause, draft, [draft, ...others], said.stored ?? false);
  if (typeof items === 'string') return { rule: 'clause-unknown', because: items };
  const here = items.filter(i => i.edition === draft.name);
  const elsewhere =
    here.length > 0 &&
    byLine &&
    byLine.length > 0 &&
    !byLine.some(l => here.some(i => i.id === l.id || isBelow(l.number, i.number)));
  if (!elsewhere) return { items };
  return { items, note: `${lineWord(line)} lies in ${byLine[0]!.number}, not in ${clause}; the clause counts` };
}

type Known = readonly CitedEdition[];

/** One number, a range, or several: whole first, since a title behind a number may hold an "and" of its own. */
function placeList(clause: string, draft: CitedEdition, known: Known, stored: boolean): CommentedItem[] | string {
  const whole = placeOne(clause, draft, known, stored);
  if (typeof whole !== 'string') return whole;
  const range = placeRange(clause, draft, known, stored);
  if (range !== undefined) return range;
  const pieces = clause.split(/\s*(?:,|;|&|\band\b)\s*/i).filter(p => p !== '');
  if (pieces.length < 2) return whole;
  const items = new Map<string, CommentedItem>();
  for (const piece of pieces) {
    const found = placeRange(piece, draft, known, stored) ?? placeOne(piece, draft, known, stored);
    if (typeof found === 'string') return found;
    for (const item of found) items.set(`${item.edition} ${item.id}`, item);
  }
  return [...items.values()];
}

function placeOne(piece: string, draft: CitedEdition, known: Known, stored: boolean): CommentedItem[] | string {
  const { edition, rest } = editionIn(piece, draft, known);
  const items = itemsNumbered(edition, rest, stored);
  return typeof items === 'string' ? items : items.map(e => cited(edition, e));
}

/** All items of one level from one number to another; undefined where it is no range. */
function placeRange(piece: string, draft: CitedEdition, known: Known, stored: boolean): CommentedItem[] | undefined {
  const ends = /^(.+?)\s*(?:[-–—]|\bto\b)\s*(.+)$/.exec(piece);
  if (!ends) return undefined;
  const { edition, rest } = editionIn(ends[1]!, draft, known);
  const [from, to] = [rest, ends[2]!.replace(BEFORE, '')].map(number => {
    const found = itemsNumbered(edition, number, stored);
    return typeof found === 'string' ? -1 : edition.entries.findIndex(e => e.id === found[0]!.id);
  });
  const level = edition.entries[from!]?.level;
  if (from! < 0 || to! < from! || level !== edition.entries[to!]?.level) return undefined;
  return edition.entries.slice(from!, to! + 1).flatMap(e => (e.level === level ? [cited(edition, e)] : []));
}

/** `2018 2.1.3.5`, `edition 2018, 2.1.3.5`, `2.1.3.5 of 2018` and `2.1.3.5 (2018)` name their edition. */
function editionIn(piece: string, draft: CitedEdition, known: readonly CitedEdition[]) {
  const bare = piece.trim().replace(BEFORE, '');
  for (const edition of known) {
    const name = edition.name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
    const before = new RegExp(`^(?:the )?(?:edition )?${name}(?: edition)?[:,]?\\s+(\\S.*)$`, 'i').exec(bare);
    const behind = new RegExp(
      `^(\\S.*?)\\s+(?:(?:of|in) (?:the )?(?:edition )?${name}|\\((?:edition )?${name}\\))$`,
      'i',
    ).exec(bare);
    const rest = before?.[1] ?? behind?.[1];
    if (rest !== undefined) return { edition, rest: rest.replace(BEFORE, '') };
  }
  return { edition: draft, rest: bare };
}

function itemsNumbered({ name, entries }: CitedEdition, said: string, stored: boolean) {
  const [, number = '', tail = ''] = /^(\S+?)[.:]?(?:\s+(.*))?$/.exec(said.trim()) ?? [];
  const found = entries.filter(e => e.number === number || e.id === number);
  if (found.length === 0) {
    const near = nearestNames(
      number,
      entries.map(e => e.number).filter(n => n !== ''),
    );
    return `${name} has no clause ${short(said)}${near.length > 0 ? `; the nearest are ${near.join(', ')}` : ''}`;
  }
  if (found.length > 1) return `${name} prints ${number} for ${found.length} items`;
  if (stored && entries.some(e => e.number === `${number}0`)) {
    return `the cell is stored as the number ${number}, which may have been ${number}0`;
  }
  if (tail !== '' && !BEHIND.test(tail) && plain(tail) !== plain(found[0]!.title)) {
    return `"${short(said)}" says more than a clause of ${name}`;
  }
  return found;
}

/** `line 7`, whether the form says `7` or `line 7`. */
const lineWord = (said: string) => (/^\d/.test(said) ? `line ${said}` : said);

function cited(edition: CitedEdition, { id, number, hash }: CitedEdition['entries'][number]): CommentedItem {
  return { edition: edition.name, id, number, hash };
}

/** `41`, `41-43`, `lines 41 to 43`: the innermost items that hold these lines; none where it is no line. */
function itemsAtLine(said: string, circulation: Circulation | undefined): readonly CirculatedItem[] | undefined {
  const found = /^(?:(?:lines?|l\.|ln\.?|zeilen?|lignes?)\s*)?(\d{1,7})(?:\s*(?:-|–|to|bis)\s*(\d{1,7}))?$/i.exec(
    said.trim(),
  );
  if (!circulation || !found) return undefined;
  const [from, to] = [Number(found[1]), Number(found[2] ?? found[1])];
  return circulation.items.filter(i => i.first <= to && i.last >= from);
}

/** A comment on a work item may give the line of one of its requirements. */
function isBelow(number: string, above: string): boolean {
  return number.startsWith(above) && !/^[\p{L}\p{N}]/u.test(number.slice(above.length));
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57).trimEnd()}…` : text;
}
