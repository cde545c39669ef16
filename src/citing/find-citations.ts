import type { Citation } from '../model/citation.ts';
import type { Passage } from '../model/document.ts';
import { type Beside, titleAfter, titleBefore } from './beside.ts';
import { type CitedBook, prints } from './cited-book.ts';
import { type Cue, type CueReader, cueReader } from './cues.ts';
import { type EditionReader, editionReader, type SaidEdition } from './edition-said.ts';
import { type Group, groupFrom, groupOfCounters, type Member } from './groups.ts';
import { standsBefore } from './left-word.ts';
import { ourBook } from './other-books.ts';
import { plainDashes } from './plain-dashes.ts';
import { bearsLevel, brokenSpotAt, namedSpotAt, runLength, segments, spotAt } from './spots.ts';
import { isShortDate, looksOtherwise, standsElsewhere } from './traps.ts';

export interface FindOptions {
  /** Names of the editions that a text may mean. */
  readonly editions: readonly string[];
  /** The edition that the file as a whole says it follows. */
  readonly fileEdition?: string;
  /** Further editions whose numbers are known, so that one that names them is checked against them. */
  readonly others?: readonly CitedBook[];
  /** Numbers of the document's own headings; see ownNumbers. */
  readonly own?: ReadonlySet<string>;
}

/** Why a group is taken for citations; `doubt` says why a person should look. */
interface Verdict {
  readonly why: string;
  readonly doubt?: string;
}

interface Context {
  readonly book: CitedBook;
  readonly text: string;
  readonly cues: CueReader;
  readonly editions: EditionReader;
  readonly options: FindOptions;
}

const BEFORE = 160;
const AFTER = 160;

/**
 * Finds the numbers of an edition that a passage cites: single ones, lists, ranges, "items 2 and 5 of 4.1", "Part 3".
 * What speaks for a citation is a word that says what the number is (item, section, §, a level's name), the item's
 * title or an edition beside it, or that the edition prints a number so long that little else looks like it. What
 * speaks against it is in traps.ts. Where neither settles it the citation is not `certain`.
 *
 * Offsets of what is returned are those of the document, and `line` is the line of the number.
 */
export function findCitations(book: CitedBook, passage: Passage, options: FindOptions): readonly Citation[] {
  const plain = plainDashes(passage.text);
  const editions = editionReader([...options.editions, book.edition.header.name]);
  const context = { book, text: plain.text, cues: cueReader(book.edition.settings), editions, options };
  return groupsIn(context).flatMap(({ group, verdict, title, said }) => {
    const silent = options.fileEdition ?? book.edition.header.name;
    // "3.2.1 and 3.2.2 (2014)": whether the bracket speaks for 3.2.1 is unsure, so the edition that stops the run wins.
    const listed = said?.bracketed && said.edition === book.edition.header.name ? silent : said?.edition;
    const place = (s: { number: string; start: number; end: number }) => ({
      number: s.number,
      start: passage.start + plain.at(s.start),
      end: passage.start + plain.at(s.end - 1) + 1,
    });
    const within = { start: passage.start + plain.at(group.start), end: passage.start + plain.at(group.end - 1) + 1 };
    return group.members.map((member): Citation => {
      const spoken = member === group.members.at(-1) || member.short ? said?.edition : listed;
      const edition = spoken ?? silent;
      const doubt = verdict.doubt ?? doubtOfNumber(context, member, edition) ?? doubtOfGaps(plain.text, member);
      return {
        ...place(member),
        line: passage.line + (plain.text.slice(0, member.start).match(/\r\n|\n|\r/g)?.length ?? 0),
        edition,
        evidence: spoken !== undefined ? 'said' : options.fileEdition !== undefined ? 'file' : 'given',
        certain: doubt === undefined,
        why: doubt ?? verdict.why,
        ...(title === undefined ? {} : { title: title.title }),
        ...(member.through === undefined ? {} : { through: place(member.through) }),
        ...(member.short ? { short: true, within } : {}),
      };
    });
  });
}

interface Found {
  readonly group: Group;
  readonly verdict: Verdict;
  readonly title: Beside | undefined;
  readonly said: SaidEdition | undefined;
}

function groupsIn(context: Context): readonly Found[] {
  const { text, cues } = context;
  const found: Found[] = [];
  // Where the last number of another book ends: "clause 4.2 thereof is struck out, clause 5.1 is amended".
  let elsewhere = -1;
  const starts = /[\p{L}\p{N}]+/gu;
  for (let next = starts.exec(text); next; next = starts.exec(text)) {
    const numeral = /\p{N}/u.test(next[0]);
    if (!numeral && next[0].length > 6) continue;
    const before = text.slice(Math.max(0, next.index - BEFORE), next.index);
    const cue = cues.before(before);
    if (!numeral && cue?.kind !== 'level' && !/^[.-]?\p{N}/u.test(text.slice(next.index + next[0].length))) continue;
    const group = groupAt(context, next.index, cue);
    const judged = group && judge(context, group, before, cue);
    const goesOn = elsewhere >= 0 && goesOnElsewhere(text.slice(elsewhere, next.index), cue);
    if (group && (judged === ELSEWHERE || (judged && judged !== OTHERWISE && goesOn && !judged.title && !judged.said)))
      elsewhere = group.end;
    if (!judged || judged === ELSEWHERE || judged === OTHERWISE || elsewhere === group?.end) {
      // A list is trapped as a whole: "sheets 4.2.3/1 and 4.2.3/2".
      if (judged) starts.lastIndex = group.end;
      // What was looked at as one number is not looked at again from its middle.
      if (numeral) starts.lastIndex = Math.max(starts.lastIndex, next.index + runLength(text, next.index));
      continue;
    }
    starts.lastIndex = group.end;
    found.push({ group, ...judged });
  }
  return found;
}

const ELSEWHERE = 'elsewhere';
const OTHERWISE = 'otherwise';

/** Whether a number is still one of the book named before it: in the same sentence, and not called an item of ours. */
function goesOnElsewhere(between: string, cue: Cue | undefined): boolean {
  if (between.length > 90 || /[.!?;:]\s|[\r\n]\s*[\r\n]|\bours?\b/i.test(between)) return false;
  return cue?.kind !== 'level' && !/^(?:items?|requirements?|reqs?)\b/.test(cue?.word ?? '');
}

function groupAt(context: Context, at: number, cue: Cue | undefined): Group | undefined {
  const { book, text, cues } = context;
  if (cue && cue.kind !== 'pointing') {
    const counted = groupOfCounters(book, text, at, cues);
    if (counted) return counted;
    const named = cue.kind === 'level' && !/\d/.test(text[at]!) ? namedSpotAt(book, text, at, cue) : undefined;
    if (named) return { members: [named], start: named.start, end: named.end };
  }
  const broken = brokenSpotAt(book, text, at);
  if (broken) return { members: [broken], start: broken.start, end: broken.end };
  const spot = spotAt(book, text, at);
  return spot && groupFrom(book, text, spot, cue, cues);
}

function judge(
  context: Context,
  group: Group,
  before: string,
  cue: Cue | undefined,
): Omit<Found, 'group'> | typeof ELSEWHERE | typeof OTHERWISE | undefined {
  const { book, text, options } = context;
  const first = group.members[0]!;
  if (/^\p{N}+$/u.test(first.number) && !first.short && cue?.kind !== 'level') return undefined;
  const after = text.slice(group.end, group.end + AFTER);
  const alone = group.members.length === 1 && !first.through && !first.short;
  const title = alone
    ? (titleAfter(text, first.end, book.titles) ?? titleBefore(text, first.start, book.titles))
    : undefined;
  if (!first.short) {
    const behind = text.slice(first.end, first.end + AFTER);
    const other = looksOtherwise({ number: first.number, before: cue?.kind === 'level' ? '' : before, after: behind });
    if (other !== undefined) return OTHERWISE;
  }
  const said = saidEdition(context.editions, text, group, title?.at);
  const verdict = verdictOn(context, group, { before, cue, title, said });
  if (!verdict) return undefined;
  if (standsElsewhere(before, after, book.edition.settings.title) !== undefined) return ELSEWHERE;
  const own = cue?.kind !== 'level' && !said && group.members.some(m => options.own?.has(m.number));
  if (own && (startsLine(before) || /^(?:sections?|clauses?|paragraphs?|§)/.test(cue?.word ?? ''))) return undefined;
  return {
    verdict: own ? { ...verdict, doubt: 'the document numbers a heading of its own so' } : verdict,
    title,
    said,
  };
}

interface Around {
  readonly before: string;
  readonly cue: Cue | undefined;
  readonly title: Beside | undefined;
  readonly said: SaidEdition | undefined;
}

function verdictOn(context: Context, group: Group, { before, cue, title, said }: Around): Verdict | undefined {
  const { book, text } = context;
  const first = group.members[0]!;
  const after = text.slice(group.end, group.end + AFTER);
  const depth = first.short ? 3 : segments(first.number);
  const known =
    isKnown(context, first.number) || (depth >= 3 && !isShortDate(first.number) && hasSiblings(context, first.number));
  if (/^\p{N}+$/u.test(first.number) && !first.short) {
    return cue && known && bearsLevel(book, first.number, cue) ? { why: `it stands behind “${cue.word}”` } : undefined;
  }
  if (first.short) return { why: `it counts within ${text.slice(group.start, group.end)}` };
  if (cue && cue.kind !== 'pointing') {
    const why = `it stands behind “${cue.word}”`;
    // "Wage group 3.1": what stands before a level's name may make it another thing's.
    const ahead = before.slice(0, before.toLowerCase().lastIndexOf(cue.word));
    const clear = title || said || standsBefore(book, first.number, ahead) === 'safe';
    return clear ? { why } : { why, doubt: `the word before “${cue.word}” may make it something else` };
  }
  if (depth >= 2 && known && ourBook(before, after, book.edition.settings.title))
    return { why: 'the catalog is named beside it' };
  if (depth >= 3 && known) {
    if (title) return { why: `the title “${title.title}” stands beside it` };
    if (said) return { why: `edition ${said.edition} is named beside it` };
    const stands = cue ? 'safe' : standsBefore(book, first.number, before);
    const why = `edition ${book.edition.header.name} prints this number`;
    if (stands === 'safe') return { why };
    // A list of numbers that are all printed is hardly one of spare parts.
    const printed = group.members.length > 1 && group.members.every(m => isKnown(context, m.number));
    const doubt = 'the word before it may say that it numbers something else';
    return stands === 'label' || printed ? { why, doubt } : undefined;
  }
  if (depth === 2 && known && isBracketed(before, text.slice(group.end, group.end + 2))) {
    const why = `edition ${book.edition.header.name} prints this number, alone in brackets`;
    return /\p{L}/u.test(first.number) ? { why } : { why, doubt: 'a number alone in brackets may be a measure' };
  }
  // A long number that the edition lacks beside a title that it has is a citation with a wrong number, to be told.
  if (title && (depth >= 3 || (known && book.titles.named(title.title).some(e => e.number === first.number)))) {
    return { why: `the title “${title.title}” stands beside it` };
  }
  if (said && known && depth === 2) return { why: `edition ${said.edition} is named beside it` };
  const numbered = (context.options.own?.size ?? 0) > 0;
  if (cue && depth === 2 && known && !numbered && endsThere(text.slice(group.end, group.end + 40))) {
    return { why: `it stands behind “${cue.word}”` };
  }
  return cue && depth >= 3 ? { why: `it stands behind “${cue.word}”` } : undefined;
}

/** After "see 4.2" a noun would make it a measure of something: only what can follow a citation may stand there. */
function endsThere(after: string): boolean {
  return /^\s*(?:$|[.,;:)\]"”’]|(?:and|or|to|for|in|is|are|on|before|after|when|if|first|again|where|with|as|which|that|applies|asks|requires|says|must|shall|should|also|instead|too)\b)/i.test(
    after,
  );
}

function isBracketed(before: string, after: string): boolean {
  return /[([]$/.test(before) && /^[)\]]/.test(after);
}

function startsLine(before: string): boolean {
  return /(?:^|[\r\n])[\s#*_>|-]*$/.test(before);
}

/** Whether the edition prints numbers right beside one that it lacks: somebody who cites 2.2.1.4 may have miscounted. */
function hasSiblings({ book }: Context, number: string): boolean {
  const parent = number.replace(/[.-][^.-]+$/, '');
  return book.places.withNumber(parent).some(item => book.places.children(item.id).length > 0);
}

function isKnown({ book, options }: Context, number: string): boolean {
  return [book, ...(options.others ?? [])].some(b => prints(b, number));
}

/** Why a number is to be looked at although it is cited: the edition that it means does not print it. */
function doubtOfNumber({ book, options }: Context, { number, through }: Member, edition: string): string | undefined {
  const meant = [book, ...(options.others ?? [])].find(b => b.edition.header.name === edition);
  if (!meant) return undefined;
  const missing = [number, through?.number].find(n => n !== undefined && !prints(meant, n));
  return missing === undefined ? undefined : `edition ${edition} prints no ${missing}`;
}

function doubtOfGaps(text: string, { start, end }: Member): string | undefined {
  return /\s/.test(text.slice(start, end)) ? 'it is written with gaps' : undefined;
}

function saidEdition(
  editions: EditionReader,
  text: string,
  { start, end }: Group,
  titleAt: number | undefined,
): SaidEdition | undefined {
  const behind = titleAt === undefined || titleAt < end ? end : titleAt;
  const before = editions.before(text.slice(Math.max(0, start - 120), start));
  return (
    editions.after(text.slice(end, end + 80)) ??
    editions.after(text.slice(behind, behind + 80)) ??
    (before === undefined ? undefined : { edition: before, bracketed: false })
  );
}
