/** A word or sign of a text, with its part of speech (Universal Dependencies: NOUN, VERB, AUX ...). */
export interface Word {
  /** Lower case. */
  readonly lower: string;
  readonly lemma: string;
  readonly tag: string;
  readonly start: number;
  readonly end: number;
}

/** A stretch between sentence ends, semicolons and colons. */
export interface Segment {
  readonly words: readonly Word[];
  /** Index of the first verb of an order ("seal the joint"); absent where nobody is told to do anything outright. */
  readonly orderAt?: number;
}

export interface Sentence {
  readonly start: number;
  readonly end: number;
  readonly segments: readonly Segment[];
}

/** A text read once, for all rules. */
export interface ReadText {
  readonly text: string;
  /** The text with plain quotes, dashes and spaces, and quoted words blanked; of the same length, so that places agree. */
  readonly plain: string;
  readonly sentences: readonly Sentence[];
}
