import type { ReadText } from './read-text.ts';

/** A term of the catalog's glossary. `use` names the term that takes the place of a deprecated one. */
export interface Term {
  readonly term: string;
  readonly deprecated: boolean;
  readonly use?: string;
}

/** What a rule may know besides the text itself. Everything may be absent: a bare text is judged by its words alone. */
export interface DraftContext {
  readonly terms?: readonly Term[];
  /** The purpose that the text's work item states already. */
  readonly purpose?: string;
  /** How often jobs marked this requirement as not applicable. */
  readonly notApplicable?: { readonly lines: number; readonly notApplicable: number };
}

/** A place in a text, in UTF-16 units, and what is to be said of it in one sentence. */
export interface Spot {
  readonly start: number;
  readonly end: number;
  readonly message: string;
}

/** Something that a careful editor would ask about a text. */
export interface Remark extends Spot {
  readonly rule: string;
  /** The words at the place. */
  readonly words: string;
}

/** An example of a rule; `context` where the rule needs more than the text. */
export interface Example {
  readonly text: string;
  readonly context?: DraftContext;
}

/**
 * One question of the review, asked of one text. The examples stand beside the question and are run by a test: the bad
 * ones must be remarked on by this rule, the good ones by no rule that has the same name.
 */
export interface Rule {
  readonly name: string;
  readonly good: readonly Example[];
  readonly bad: readonly Example[];
  readonly find: (text: ReadText, context: DraftContext) => Spot[];
}
