import type { FixedStretch, Passage } from '../model/document.ts';

/** What a document says, as far as citations can stand in it. */
export interface Reading {
  /** Law: `passage.text` is as long as the stretch that it comes from; what is no text in it is masked, not cut. */
  readonly passages: readonly Passage[];
  /** The edition that the file says its numbers belong to. */
  readonly edition?: string;
  /** Where the file says so, in files whose mark can be edited as their text is. */
  readonly editionAt?: { readonly start: number; readonly end: number };
  /** The line by which the file says that it is a signed or dated record. */
  readonly record?: string;
  readonly fixed?: readonly FixedStretch[];
}

/** Takes the place of code, html and addresses in a passage: not a space, so that words on both sides stay apart. */
export const MASK = '\ufffc';

/** Fills what takes no room on the page: a tag inside a word, the rest of an entity. Whoever looks for words drops it. */
export const FILL = '\u00ad';
