import { statedEdition } from '../../citing/stated-edition.ts';
import type { Passage } from '../../model/document.ts';
import { wholeSentence } from '../stale/stale-history.ts';
import type { CarriedCitation } from './passages.ts';
import { nameIn } from './said-edition.ts';

interface Place {
  readonly start: number;
  readonly end: number;
}

/** The edition that a file as such names, outside of its text: "front matter", "document property". */
export interface FileMark {
  readonly place: string;
  readonly edition: string;
  /** Where it can be changed. */
  readonly at?: Place;
}

/** A place at which a document says that it follows an edition; `at` is the edition's name. */
export interface FoundMark {
  readonly line: number;
  readonly place: string;
  readonly text: string;
  readonly at?: Place;
  /** Whether it says nothing else: "the 2018 edition was thicker" names what is followed, and tells of it. */
  readonly plain: boolean;
}

export interface SearchedDocument {
  readonly passages: readonly Passage[];
  readonly citations: readonly CarriedCitation[];
  readonly mark?: FileMark;
  /** The title of the catalog: who names it with an edition says what is followed. */
  readonly catalog: string;
}

const WORD = '(?:edition|ed\\.|book|numbering|numbers|catalog(?:ue)?|version|issue|requirements|rules)';
const AROUND = 60;
/** So many passages at the top of a document are its title, its subtitle and what it says of itself. */
const FIRST = 3;

/**
 * Headings, headers, footers and the first lines that name an edition, statements that the text or its numbers follow it,
 * passages that name it with the catalog or with a number that was rewritten, and the file's own mark. A name that goes with a rewritten number is none.
 */
export function marksIn(
  { passages, citations, mark, catalog }: SearchedDocument,
  edition: string,
): readonly FoundMark[] {
  const name = nameIn(edition);
  const escaped = name.source;
  const asEdition = new RegExp(
    `(?<=${WORD}\\s+(?:of\\s+)?(?:the\\s+)?)${escaped}|${escaped}(?=\\s+(?:\\p{L}+\\s+)?${WORD})`,
    'giu',
  );
  const inHeading = new RegExp(`${asEdition.source}|(?<=[([])${escaped}(?=[)\\]])`, 'giu');
  const isEdited = editedPlaces(citations.flatMap(c => c.edits));
  const names = catalog.trim().toLowerCase();
  const found = passages.flatMap((passage, n): FoundMark[] => {
    const { text } = passage;
    if (!name.test(text)) return [];
    const heading = isHeading(passage) || (n < FIRST && isTitle(text));
    const states = (stretch: string) => statedEdition([{ ...passage, text: stretch }], [edition]) === edition;
    const named = names !== '' && text.toLowerCase().includes(names);
    if (!heading && !named && !isEdited(passage) && !states(text)) return [];
    return [...text.matchAll(heading ? inHeading : asEdition)].flatMap(({ index, 0: said }): FoundMark[] => {
      const at = { start: passage.start + index, end: passage.start + index + said.length };
      if (isEdited(at)) return [];
      const line = passage.line + (text.slice(0, index).match(/\r\n|\n|\r/g)?.length ?? 0);
      const place = passage.place ?? `line ${line}`;
      const plain = heading || states(wholeSentence(text, index, index + said.length));
      return [{ line, place, text: shown(text, index, said.length), at, plain }];
    });
  });
  if (mark?.edition !== edition) return found;
  const own = {
    plain: true,
    line: 1,
    place: mark.place,
    text: `edition: ${edition}`,
    ...(mark.at ? { at: mark.at } : {}),
  };
  return [own, ...found];
}

/** Tells whether an edit touches a place. */
function editedPlaces(edits: readonly Place[]): (place: Place) => boolean {
  const inOrder = [...edits].sort((a, b) => a.start - b.start);
  return ({ start, end }) => {
    let [low, high] = [0, inOrder.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (inOrder[middle]!.end > start) high = middle;
      else low = middle + 1;
    }
    return low < inOrder.length && inOrder[low]!.start < end;
  };
}

function isTitle(text: string): boolean {
  return text.length <= 120 && !/[.!?]\s*$/.test(text);
}

function isHeading({ text, heading, place }: Passage): boolean {
  if (/^(?:header|footer)/.test(place ?? '')) return true;
  return heading !== undefined && text.replace(/^[\s#]+|[\s#]+$/g, '').replace(/\s+/g, ' ') === heading.trim();
}

function shown(text: string, at: number, length: number): string {
  const stretch = text.slice(Math.max(0, at - AROUND), at + length + AROUND);
  return stretch
    .replace(/\u00ad/g, '')
    .replace(/\ufffc+/g, '…')
    .replace(/\s+/g, ' ')
    .trim();
}
