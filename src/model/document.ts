/**
 * Text with an address in a document. Offsets are UTF-16 units into the decoded file. Files that are no text (docx, pptx,
 * pdf) have no such offsets: theirs count the texts of their passages one after another, and `place` says where it is.
 */
export interface Passage {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** 1-based line of `start`; in files that are no text, the passage's count. */
  readonly line: number;
  /** The heading that the passage stands under, if any. */
  readonly heading?: string;
  /** Of a heading itself: how deep it stands, from 1 (a document's title 0), in files that say so. */
  readonly level?: number;
  /** Where it stands, in words, in files without lines: "table 2, row 3", "footnote 4", "slide 5, notes", "page 7". */
  readonly place?: string;
  /** Of a table's cell: what the first cell of its column says. */
  readonly columnHead?: string;
  /** The part of an office file that holds it: "word/footnotes.xml". */
  readonly part?: string;
}

/** A change to a document: replace `start`-`end` by `text`. Edits do not overlap. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** What a document is to tell its reader about a stretch of it, a paragraph each; in Word a comment. */
export interface Remark {
  readonly start: number;
  readonly end: number;
  readonly paragraphs: readonly string[];
}

/** A stretch that can be read and cannot be changed, with the reason, to follow "it stands": "in a locked control". */
export interface FixedStretch {
  readonly start: number;
  readonly end: number;
  readonly why: string;
}
