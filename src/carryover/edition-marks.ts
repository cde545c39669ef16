import { statedEdition } from '../citing/stated-edition.ts';
import type { Passage } from '../model/document.ts';
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
}

export interface SearchedDocument {
  readonly passages: readonly Passage[];
  readonly citations: readonly CarriedCitation[];
  readonly mark?: FileMark;
}

const WORD = '(?:edition|ed\\.|book|numbering|numbers|catalog(?:ue)?|version|issue|requirements|rules)';
const AROUND = 60;

/**
 * Headings, headers and footers that name an edition, statements that the text or its numbers follow it, passages that name
 * it and hold a number that was rewritten, and the file's own mark. A name that goes with a rewritten number is none.
 */
export function marksIn({ passages, citations, mark }: SearchedDocument, edition: string): readonly FoundMark[] {
  const name = nameIn(edition);
  const escaped = name.source;
  const asEdition = new RegExp(
    `(?<=${WORD}\\s+(?:of\\s+)?(?:the\\s+)?)${escaped}|${escaped}(?=\\s+(?:\\p{L}+\\s+)?${WORD})`,
    'giu',
  );
  const inHeading = new RegExp(`${asEdition.source}|(?<=[([])${escaped}(?=[)\\]])`, 'giu');
  const edits = citations.flatMap(c => c.edits);
  const changed = new Set(passages.filter(p => edits.some(e => e.start >= p.start && e.start < p.end)));
  const found = passages.flatMap((passage): FoundMark[] => {
    if (!name.test(passage.text)) return [];
    const heading = isHeading(passage);
    if (!heading && !changed.has(passage) && statedEdition([passage], [edition]) !== edition) return [];
    return [...passage.text.matchAll(heading ? inHeading : asEdition)].flatMap(({ index, 0: said }): FoundMark[] => {
      const at = { start: passage.start + index, end: passage.start + index + said.length };
      if (edits.some(e => e.start < at.end && e.end > at.start)) return [];
      const line = passage.line + (passage.text.slice(0, index).match(/\r\n|\n|\r/g)?.length ?? 0);
      return [{ line, place: passage.place ?? `line ${line}`, text: shown(passage.text, index, said.length), at }];
    });
  });
  if (mark?.edition !== edition) return found;
  const own = { line: 1, place: mark.place, text: `edition: ${edition}`, ...(mark.at ? { at: mark.at } : {}) };
  return [own, ...found];
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
