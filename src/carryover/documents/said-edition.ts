import type { Joint } from '../../crosswalk/joint.ts';
import type { Citation } from '../../model/citation.ts';
import type { Edit, Passage } from '../../model/document.ts';
import { tellsHistory, wholeSentence } from '../stale/stale-history.ts';
import type { Answer } from './carry-citation.ts';

/** What is carried, with the edit to the name of the edition that stands beside the number. */
export interface SaidAnswer extends Answer {
  readonly name?: Edit;
}

/** What stands around a citation. */
export interface CitedIn {
  readonly passage: Passage;
  /** The citations before and behind it in the passage. */
  readonly neighbours: readonly Citation[];
  /** The other cells of the table row, if it stands in one. */
  readonly row: readonly Passage[];
  /** Names of all editions. */
  readonly editions: readonly string[];
}

/**
 * "3.1.1 (2018)" carried as "3.1.2 (2018)" would cite another item, so number and name are carried together or not at all.
 * The name is rewritten where it stands right beside this number, speaks for no other one, and the sentence tells of no
 * other edition and of nothing past; all else is left to a person. A table of old and new numbers stays true as it is.
 */
export function withSaidEdition(joint: Joint, citation: Citation, answer: Answer, around: CitedIn): SaidAnswer {
  const { outcome, edits } = answer;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  if (citation.evidence !== 'said' || citation.edition !== from || edits.length === 0) return answer;
  const { passage, neighbours, row, editions } = around;
  if (row.some(cell => cell.columnHead !== undefined && nameIn(to).test(cell.columnHead))) {
    const why = `The table gives the number of ${from} beside that of ${to}.`;
    return { outcome: { ...outcome, kind: 'kept', cause: 'other-edition', why }, edits: [] };
  }
  const name = besideOf(passage, citation, from);
  const ofColumn = passage.columnHead !== undefined && nameIn(from).test(passage.columnHead);
  // Said at a distance it is said of the text, not of this number; see edition-marks.ts.
  if (!name && !ofColumn) return answer;
  const at = citation.start - passage.start;
  const sentence = wholeSentence(passage.text, at, (citation.through ?? citation).end - passage.start);
  const isAlone = name && !neighbours.some(c => isOfSame(passage, c, citation, from, name));
  if (name && isAlone && !tellsHistory(sentence, from, editions)) return { ...answer, name: { ...name, text: to } };
  const numbers = edits.map(e => e.text).join(' to ');
  const why = `${outcome.why} But the text says that it is of ${from}.`;
  const toDo = `Write ${numbers} and name ${to} as its edition, or leave both as they are.`;
  const { undecided } = answer;
  return {
    outcome: { ...outcome, kind: 'choose', cause: 'reading', why, toDo },
    edits: [],
    ...(undecided && { undecided }),
  };
}

interface Place {
  readonly start: number;
  readonly end: number;
}

const WHAT = '(?:edition|book|numbering|numbers|catalog(?:ue)?|version|issue|requirements|rules|text)';

/** Where the edition is named right behind a number and its title, or right before it: "the 2018 edition, 3.1.1". */
function besideOf(passage: Passage, citation: Citation, edition: string): Place | undefined {
  const { text, start: from } = passage;
  const end = (citation.through ?? citation).end - from;
  const title = citation.title === undefined ? '' : `(?:[\\s:,(–-]*["“'*]*${escaped(citation.title)}["”'*)]*)?`;
  const name = `${escaped(edition)}(?![\\p{L}\\p{N}]|\\.\\p{N})`;
  const lead = `\\s*[([]\\s*(?:the\\s+)?(?:edition\\s+)?|\\s*,?\\s*\\(?(?:of|in|from|under|per)?\\s*(?:the\\s+)?(?:ed(?:ition|\\.)\\s+(?:of\\s+)?)?`;
  const behind = new RegExp(`^${title}(?:${lead})${name}`, 'iu').exec(text.slice(end, end + 200));
  if (behind) {
    const stop = from + end + behind[0].length;
    return { start: stop - edition.length, end: stop };
  }
  const ahead = text.slice(Math.max(0, citation.start - from - 120), citation.start - from);
  const tail = `(?:['’]s\\s+(?:\\p{L}+\\s+)?|:\\s*["“]?|\\s+(?:\\p{L}+\\s+)?${WHAT}[^.;!?\\d]{0,40}|(?<=edition\\s+(?:of\\s+)?${escaped(edition)})[^.;!?\\d]{0,40})$`;
  const before = new RegExp(`(?<![\\p{L}\\p{N}.])${name}${tail}`, 'iu').exec(ahead);
  if (!before) return undefined;
  const start = citation.start - (ahead.length - before.index);
  return { start, end: start + edition.length };
}

/** Whether a name beside one citation speaks for another as well: it is the nearest to both, or they stand in one list. */
function isOfSame(passage: Passage, other: Citation, own: Citation, edition: string, name: Place): boolean {
  if (besideOf(passage, other, edition)?.start === name.start) return true;
  const [first, last] = other.start < own.start ? [other, own] : [own, other];
  const between = passage.text.slice((first.through ?? first).end - passage.start, last.start - passage.start);
  const isList = /^(?:[\s,;&/()]|and|or|items?|numbers?)*$/i.test(between);
  return isList && besideOf(passage, other, edition) === undefined;
}

/** A name of an edition, standing by itself. */
export function nameIn(edition: string): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}.,-])${escaped(edition)}(?![\\p{L}\\p{N}]|[.,-]\\p{N})`, 'u');
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
