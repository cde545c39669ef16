import type { Citation } from '../../model/citation.ts';
import type { Passage } from '../../model/document.ts';

/** Why a citation is not rewritten whatever became of its number, and what a person has to do; a sentence each. */
export interface Doubt {
  readonly why: string;
  readonly toDo: string;
}

/** A citation as the head of its table column has it. */
export interface ByColumn {
  readonly citation: Citation;
  readonly doubt?: Doubt;
}

const OLD_OR_NEW = new Set(
  'old older former formerly previous previously was new newer now present current today'.split(' '),
);
const NUMBERS = new Set(
  'the a in of no nos nr number numbers numbered numbering item items ref refs reference references requirement requirements rule rules clause clauses section sections code codes edition catalog catalogue book'.split(
    ' ',
  ),
);

/**
 * Reads "2014 | 2018" and "old no. | new no." at the heads of columns. Citing knows the editions whose numbers it was
 * given; here any that is known by name counts, for a number of another edition must not be rewritten. What is old and
 * what is new nobody can say: a lesson of 2018 may list the numbers of 2014 with its own, or its own with those to come.
 *
 * @param editions names of all editions of the catalog
 */
export function columnReader(editions: readonly string[]): (passage: Passage, citation: Citation) => ByColumn {
  const known = [...new Set(editions)].sort((a, b) => b.length - a.length);
  const escaped = known.map(name => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const name = new RegExp(`(?<![\\p{L}\\p{N}.])(?:${escaped.join('|') || '(?!)'})(?![\\p{L}\\p{N}]|\\.\\p{N})`, 'gu');
  return ({ columnHead }, citation) => {
    if (columnHead === undefined || citation.evidence === 'said') return { citation };
    const said = [...new Set(columnHead.match(name) ?? [])];
    if (said.length === 1) return { citation: { ...citation, edition: said[0]!, evidence: 'said' } };
    if (!isOldOrNew(columnHead)) return { citation };
    const why = `The head of its column, “${columnHead}”, does not say which edition it is of.`;
    return { citation, doubt: { why, toDo: 'Say which edition it is of, and change the number by hand if need be.' } };
  };
}

/** "Old no.", "Item (new)", "was": nothing but the word and what is numbered. "Before covering" is a head of another kind. */
function isOldOrNew(head: string): boolean {
  if (head.length > 60) return false;
  const telling = (head.toLowerCase().match(/\p{L}+/gu) ?? []).filter(word => !NUMBERS.has(word));
  return telling.length === 1 && OLD_OR_NEW.has(telling[0]!);
}
