import type { ItemId, TypeId } from './item.ts';

/** A number cited somewhere, with the edition it means and the evidence for that. */
export interface Citation {
  readonly number: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
  /** The edition that the citation means, by name. */
  readonly edition: string;
  /** Why that edition: said outright, the file's mark, or the command's --from. */
  readonly evidence: 'said' | 'file' | 'given';
  /** A title that stands beside the number, where one does. */
  readonly title?: string;
  /** Of a range ("3.2.1 to 3.2.4"): its last number and where that stands; `start`-`end` is the first number alone. */
  readonly through?: { readonly number: string; readonly start: number; readonly end: number };
  /** Whether the text leaves no doubt that the number is cited and that its edition prints it. */
  readonly certain: boolean;
  /** What speaks for the citation, or what leaves a doubt. */
  readonly why: string;
  /** What stands at `start`-`end` is not the whole number: the 2 of "items 2 and 5 of 4.1", the .4 of "3.2.1 and .4". */
  readonly short?: true;
  /** The whole expression in which a short number is written. */
  readonly within?: { readonly start: number; readonly end: number };
}

/**
 * What happens to a citation. `kept`: nothing to change. `carried`: a declared, sole heir with unchanged duty takes
 * its place. `choose`: a person decides. `withdrawn`: no heir. `unknown`: the number names nothing, or not one thing.
 */
export const OUTCOMES = ['kept', 'carried', 'choose', 'withdrawn', 'unknown'] as const;
export type OutcomeKind = (typeof OUTCOMES)[number];

/** The one rule that decided an outcome, for counting and filtering; `why` says it in words. */
export const CAUSES = [
  'same-number',
  'sole-heir',
  'several-heirs',
  'inferred',
  'doubtful',
  'duty',
  'part-withdrawn',
  'shared-number',
  'no-number',
  'title',
  'other-type',
  'range',
  'several-numbers',
  'withdrawn',
  'unaccounted',
  'no-such-number',
  'spreadsheet',
  'total',
  'other-edition',
  'reading',
  'decided',
] as const;
export type Cause = (typeof CAUSES)[number];

export interface Outcome {
  readonly kind: OutcomeKind;
  readonly cause: Cause;
  /** The item of the old edition, where the number names exactly one. */
  readonly from?: ItemId;
  /** Its heirs in the new edition that apply to the type asked for. */
  readonly heirs: readonly { readonly id: ItemId; readonly number: string; readonly title: string }[];
  /** One sentence. */
  readonly why: string;
  /** One sentence that says what a person has to do; absent where nothing is to be done. */
  readonly toDo?: string;
  readonly type?: TypeId;
}
