import type { Citation } from '../model/citation.ts';
import type { Passage } from '../model/document.ts';
import { beliefsOf } from './belief.ts';
import { titleAfter, titleBefore } from './beside.ts';
import type { Candidate } from './candidates.ts';
import { type CitedBook, prints } from './cited-book.ts';
import type { Evidence } from './evidence.ts';
import type { Member } from './groups.ts';
import { readCandidates } from './read-candidates.ts';
import { doubtOf, whyOf } from './told.ts';

export interface FindOptions {
  /** Names of the editions that a text may mean. */
  readonly editions: readonly string[];
  /** The edition that the file as a whole says it follows. */
  readonly fileEdition?: string;
  /** Further editions whose numbers are known, so that one that names them is checked against them. */
  readonly others?: readonly CitedBook[];
}

/** Log-odds from which a candidate is listed, and from which it may be rewritten without a person. */
const LISTED = 0;
const CERTAIN = 1;

/**
 * Finds the numbers of an edition that a document cites: single ones, lists, ranges, "items 2 and 5 of 4.1", "Part 3".
 * Each number that may be one is weighed by what stands around it (evidence.ts), then by what the other numbers of the
 * document are believed to be (neighbours.ts).
 *
 * @returns for each passage its citations; offsets are those of the document, `line` is the line of the number
 */
export function findCitations(
  book: CitedBook,
  passages: readonly Passage[],
  options: FindOptions,
): readonly (readonly Citation[])[] {
  const { candidates, evidence } = readCandidates(book, options.others ?? [], options.editions, passages);
  const found = new Map<Passage, Citation[]>();
  for (const [at, odds] of beliefsOf(candidates, evidence).entries()) {
    if (odds <= LISTED) continue;
    const candidate = candidates[at]!;
    const list = found.get(candidate.passage) ?? [];
    found.set(candidate.passage, list);
    list.push(...citationsOf(book, options, candidate, evidence[at]!, odds));
  }
  return passages.map(passage => found.get(passage) ?? []);
}

function citationsOf(
  book: CitedBook,
  options: FindOptions,
  candidate: Candidate,
  evidence: Evidence,
  odds: number,
): readonly Citation[] {
  const { group, passage, said, title, text, plain } = candidate;
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
    const doubt =
      doubtOfNumber(book, options, member, edition) ??
      (spoken === undefined && title === undefined ? otherTitle(options, candidate) : undefined) ??
      (isGapped(text.slice(member.start, member.end), member.number) ? 'it is written with gaps' : undefined) ??
      (odds < CERTAIN || evidence.labelled || evidence.ownHeading ? doubtOf(evidence) : undefined);
    return {
      ...place(member),
      line: passage.line + plain.lines(member.start),
      edition,
      evidence: spoken !== undefined ? 'said' : options.fileEdition !== undefined ? 'file' : 'given',
      certain: doubt === undefined,
      why: doubt ?? whyOf(book, candidate, evidence),
      ...(title === undefined ? {} : { title: title.title }),
      ...(member.through === undefined ? {} : { through: place(member.through) }),
      ...(member.short ? { short: true, within } : {}),
    };
  });
}

/** "12. A.2" for 12.A.2; a number that is printed with a blank has one: SB 1.2. */
function isGapped(written: string, number: string): boolean {
  const gaps = (text: string) => text.match(/\s+/g)?.length ?? 0;
  return gaps(written) > gaps(number);
}

/** "3.1.2 Grain of sand", where only another edition prints that title at that number: which one is meant is unsure. */
function otherTitle({ others = [] }: FindOptions, { group, text }: Candidate): string | undefined {
  const [first] = group.members;
  if (group.members.length > 1 || first!.through || first!.short) return undefined;
  const { number, start, end } = first!;
  const bearer = others.find(({ titles, places }) => {
    const beside = titleAfter(text, end, titles) ?? titleBefore(text, start, titles);
    const bearers = beside ? titles.named(beside.title) : [];
    return bearers.some(item => places.withNumber(number).some(i => i.id === item.id));
  });
  return bearer && `the title beside it is that of edition ${bearer.edition.header.name}`;
}

/** Why a number is to be looked at although it is cited: the edition that it means does not print it. */
function doubtOfNumber(
  book: CitedBook,
  { others }: FindOptions,
  { number, through }: Member,
  edition: string,
): string | undefined {
  const meant = [book, ...(others ?? [])].find(b => b.edition.header.name === edition);
  if (!meant) return undefined;
  const missing = [number, through?.number].find(n => n !== undefined && !prints(meant, n));
  return missing === undefined ? undefined : `edition ${edition} prints no ${missing}`;
}
