/** Text with an address in a document. Offsets are UTF-16 units into the decoded file. */
export interface Passage {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** 1-based line of `start`. */
  readonly line: number;
  /** The heading that the passage stands under, if any. */
  readonly heading?: string;
}

/** A change to a document: replace `start`-`end` by `text`. Edits do not overlap. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}
