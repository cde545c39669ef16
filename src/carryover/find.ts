import type { Joint } from '../crosswalk/joint.ts';
import type { Citation } from '../model/citation.ts';
import type { Passage } from '../model/document.ts';
import { titleAfter, titleBefore } from './beside.ts';
import { type EditionReader, editionReader, type SaidEdition } from './edition-said.ts';
import { plainDashes } from './plain-dashes.ts';
import { titlesOf } from './titles.ts';
import { isTrap } from './traps.ts';

export interface FindOptions {
  /** Names of the editions that a text may mean. */
  readonly editions: readonly string[];
  /** The edition that the file as a whole says it follows. */
  readonly fileEdition?: string;
}

/** A number in the plain text, before it is known which edition it means. */
interface Spot {
  readonly number: string;
  readonly start: number;
  readonly end: number;
}

interface Group {
  readonly spots: { readonly spot: Spot; readonly through?: Spot }[];
  readonly cued: boolean;
}

const DECIMAL = /\d+(?:\.\d+)*/y;
const CUES = 'items?|sections?|requirements?|clauses?|work items?|groups?|nos?\\.|numbers?|§+';
const LIST = /^\s*(?:,\s*(?:and|or)?|;|and\b|or\b|&|\/)\s*/i;
const RANGE = /^\s*(?:to\b|through\b|thru\b|until\b|up to(?: and including)?\b|-)\s*/i;

/**
 * Finds the numbers of the joint's older edition that a passage cites. Numbers of three and more segments are taken
 * where the edition has them, a word says what they are (item, section, §) or a title stands beside them; of two segments only with such a word or
 * with the item's title beside them; of one only after the name of the top level (Part 3).
 *
 * Offsets of what is returned are those of the document, and `line` is the line of the number.
 */
export function findCitations(joint: Joint, passage: Passage, options: FindOptions): readonly Citation[] {
  const plain = plainDashes(passage.text);
  const editions = editionReader([...options.editions, joint.from.header.name, joint.to.header.name]);
  const found: Citation[] = [];
  for (const group of groupsIn(joint, plain.text)) {
    const titles = titlesOf(joint);
    const first = group.spots[0]!.spot;
    const last = group.spots.at(-1)!;
    const lastEnd = (last.through ?? last.spot).end;
    const alone = group.spots.length === 1 && !last.through;
    const title = alone
      ? (titleAfter(plain.text, lastEnd, titles) ?? titleBefore(plain.text, first.start, titles))
      : undefined;
    const said = saidEdition(editions, plain.text, first.start, lastEnd, title?.at);
    const silent = options.fileEdition ?? joint.from.header.name;
    // "3.2.1 and 3.2.2 (2014)": whether the bracket speaks for 3.2.1 is unsure, so the edition that stops the run wins.
    const listed = said?.bracketed && said.edition === joint.from.header.name ? silent : said?.edition;
    const place = (s: Spot) => ({
      number: s.number,
      start: passage.start + plain.at(s.start),
      end: passage.start + plain.at(s.end - 1) + 1,
    });
    for (const { spot, through } of group.spots) {
      const spoken = spot === last.spot ? said?.edition : listed;
      found.push({
        ...place(spot),
        line: passage.line + (plain.text.slice(0, spot.start).match(/\r\n|\n|\r/g)?.length ?? 0),
        edition: spoken ?? silent,
        evidence: spoken !== undefined ? 'said' : options.fileEdition !== undefined ? 'file' : 'given',
        ...(title === undefined ? {} : { title: title.title }),
        ...(through === undefined ? {} : { through: place(through) }),
      });
    }
  }
  return found;
}

function saidEdition(
  editions: EditionReader,
  text: string,
  start: number,
  end: number,
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

/** Numbers that stand in one list or range share their cue and their edition. */
function groupsIn(joint: Joint, text: string): readonly Group[] {
  const groups: Group[] = [];
  const cues = cuesOf(joint);
  const starts = /[\p{L}\p{N}]+/gu;
  for (let next = starts.exec(text); next; next = starts.exec(text)) {
    const before = text.slice(Math.max(0, next.index - 120), next.index);
    const spot = spotAt(joint, text, next.index, before);
    const cue = spot && cues.exec(before)?.[1]?.toLowerCase();
    if (!spot || !isCited(joint, text, spot, before, cue)) {
      // What was looked at as one number is not looked at again from its middle: 192.168.3.1.2 holds no 3.1.2.
      const wide =
        /^[\p{L}\p{N}]+(?:[.:/@_][\p{L}\p{N}]+)*/u.exec(text.slice(next.index, next.index + 200))?.[0].length ?? 1;
      starts.lastIndex = Math.max(starts.lastIndex, /\d/.test(next[0]) ? next.index + wide : starts.lastIndex);
      continue;
    }
    const group: Group = { spots: [{ spot }], cued: cue !== undefined };
    starts.lastIndex = goOn(joint, text, group, cue, cues);
    groups.push(group);
  }
  return groups;
}

/** Takes in the further members of a list; answers where the list ends. */
function goOn(joint: Joint, text: string, group: Group, cue: string | undefined, cues: RegExp): number {
  let end = group.spots[0]!.spot.end;
  for (;;) {
    const rest = text.slice(end, end + 60);
    const link = LIST.exec(rest) ?? RANGE.exec(rest);
    if (!link || link[0] === '') return end;
    const again = new RegExp(`^(?:the\\s+)?(?:${cues.source.slice(CUE_HEAD.length, -CUE_TAIL.length)})\\.?\\s*`, 'iu');
    const at = end + link[0].length + (again.exec(text.slice(end + link[0].length, end + 80))?.[0].length ?? 0);
    const isRange = !LIST.test(rest);
    const previous = group.spots.at(-1)!;
    const spot = memberAt(joint, text, at, previous.spot, isRange && link[0] === '-');
    if (!spot || !isCited(joint, text, spot, '', cue ?? (segments(spot.number) >= 3 ? 'list' : undefined))) return end;
    if (isRange) {
      if (previous.through) return end;
      group.spots[group.spots.length - 1] = { ...previous, through: spot };
    } else group.spots.push({ spot });
    end = spot.end;
  }
}

/** "3.2.1-4" means 3.2.1 to 3.2.4: a bare last segment right behind a hyphen. */
function memberAt(joint: Joint, text: string, at: number, previous: Spot, hyphen: boolean): Spot | undefined {
  const spot = spotAt(joint, text, at, '');
  if (!spot || !hyphen || segments(spot.number) !== 1 || segments(previous.number) < 2) return spot;
  const whole = previous.number.replace(/[^.]+$/, spot.number);
  return joint.old.withNumber(whole).length > 0 ? { ...spot, number: whole } : undefined;
}

/** The number that stands at an offset: one of the edition's with letters in it, or decimal segments. */
function spotAt(joint: Joint, text: string, start: number, before: string): Spot | undefined {
  if (
    /[\p{L}\p{N}_@=~^<>\\#+$.-]$/u.test(before.replace(/(?:^|[\s(*])[*-]+$/, '')) ||
    /\d[:/,]$|[^\s\d]\/$/.test(before)
  )
    return undefined;
  const lettered = /^[\p{L}\p{N}]+(?:[.-][\p{L}\p{N}]+)+(?:\(\d+\))?/u.exec(text.slice(start, start + 40))?.[0];
  if (lettered !== undefined && /\p{L}/u.test(lettered) && joint.old.withNumber(lettered).length > 0) {
    return { number: lettered, start, end: start + lettered.length };
  }
  DECIMAL.lastIndex = start;
  const number = DECIMAL.exec(text)?.[0];
  if (number === undefined || /^(?:[\p{L}\p{N}_@]|:\d|,\d+(?![\d.]))/u.test(text.slice(start + number.length)))
    return undefined;
  return { number, start, end: start + number.length };
}

function isCited(joint: Joint, text: string, spot: Spot, before: string, cue: string | undefined): boolean {
  const { number, start, end } = spot;
  const known = joint.old.withNumber(number).length > 0;
  const depth = segments(number);
  const top = (joint.from.settings.levels[0]?.name ?? 'part').toLowerCase();
  if (/\p{L}/u.test(number)) return known;
  const catalog = joint.from.settings.title;
  if (isTrap({ number, before, after: text.slice(end, end + 120), catalog })) return false;
  if (depth === 1) return known && cue !== undefined && cue.replace(/s$/, '') === top;
  if (cue !== undefined) return known || cue !== 'list';
  if (depth >= 3 && known) return true;
  const titles = titlesOf(joint);
  const title = titleAfter(text, end, titles) ?? titleBefore(text, start, titles);
  if (title === undefined) return false;
  // A long number that the edition lacks beside a title that it has is a citation with a wrong number, to be told.
  return depth >= 3 || (known && titles.named(title.title).some(e => e.number === number));
}

const CUE_HEAD = '(?<![\\p{L}])(';
const CUE_TAIL = ')\\s*[:(\\[]?\\s*$';

/** The words that say what a number is: the common ones and the names of the catalog's own levels. */
function cuesOf(joint: Joint): RegExp {
  const levels = joint.from.settings.levels.map(l => `${l.name.toLowerCase().replace(/[^\p{L}\p{N} ]/gu, '')}s?`);
  return new RegExp(`${CUE_HEAD}${[CUES, ...levels].join('|')}${CUE_TAIL}`, 'iu');
}

function segments(number: string): number {
  return number.split('.').length;
}
