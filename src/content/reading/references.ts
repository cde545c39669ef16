import { NAMING } from '../quantities/not-quantities.ts';
import type { Stretch } from './sentences.ts';
import type { Token } from './tokens.ts';

/** A clause, table, standard or code that a text names: Section 4.2, Table 3, NFPA 70-2017, EN ISO 9001, Type 4X. */
export interface Reference extends Stretch {
  /** Folded, without spaces and points of abbreviation: `section4.2`, `nfpa70`. */
  readonly key: string;
  readonly kind: 'place' | 'standard' | 'class';
}

const CLASSES = new Set(
  'type types class classes grade grades schedule group category cat level tier zone series model size'.split(' '),
);
const NO_PLACE = new Set(
  'no number nos # room unit note option test detail step phase stage item items detail v form code part'.split(' '),
);

export function referencesOf(tokens: readonly Token[]): Reference[] {
  const found: Reference[] = [];
  for (let at = 0; at < tokens.length; ) {
    const reference = placeAt(tokens, at) ?? standardAt(tokens, at);
    if (reference) found.push(reference);
    at = reference ? reference.next : at + 1;
  }
  return found;
}

/** A naming word and what it names: a number, a capital letter, or both (4X, A.2, B). */
function placeAt(tokens: readonly Token[], at: number): Reference | undefined {
  const word = tokens[at]!;
  if (word.low === '§' || (word.kind === 'word' && NAMING.has(word.low))) {
    let next = at + 1;
    if (tokens[next]?.low === '.' && tokens[next]!.glued) next++;
    const name = nameAt(tokens, next);
    const isClass = CLASSES.has(word.low);
    if (!name || (NO_PLACE.has(word.low) && !/\d/.test(name.key))) return undefined;
    return { first: at, next: name.next, key: singular(word.low) + name.key, kind: isClass ? 'class' : 'place' };
  }
  return undefined;
}

const singular = (word: string) =>
  word === '§' ? 'section' : word === 'fig' ? 'figure' : word === 'classes' ? 'class' : word.replace(/s$/, '');

function nameAt(tokens: readonly Token[], at: number): { key: string; next: number } | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const isName = token.kind === 'number' || (token.kind === 'word' && /^\p{Lu}{1,3}$|^[IVX]{1,5}$/u.test(token.text));
  if (!isName) return undefined;
  let [key, next] = [token.low, at + 1];
  while (next < tokens.length && tokens[next]!.glued) {
    const more = tokens[next]!;
    const joins = /^[-.(/)]$/.test(more.low) && tokens[next + 1]?.glued && tokens[next + 1]!.kind !== 'mark';
    if (more.kind === 'mark' && !joins && !(more.low === ')' && key.includes('('))) break;
    key += more.low;
    next++;
  }
  return { key, next };
}

/** Capitals followed by a number: ISO 9001, EN 1992-1-1, BS EN 60529:2013, NFPA 70, AS/NZS 3000, ASTM C90, RFC 2119. */
function standardAt(tokens: readonly Token[], at: number): Reference | undefined {
  const first = tokens[at]!;
  if (first.kind !== 'word' || !/^\p{Lu}{2,}$/u.test(first.text)) return undefined;
  let [key, next] = [first.low, at + 1];
  while (next < tokens.length && next < at + 6) {
    const token = tokens[next]!;
    if (token.low === '/' || (token.low === '-' && token.glued)) next++;
    else if (token.kind === 'word' && /^\p{Lu}{1,}$/u.test(token.text)) {
      key += token.low;
      next++;
    } else break;
  }
  const number = tokens[next];
  if (number?.kind !== 'number') return undefined;
  const name = nameAt(tokens, next)!;
  // A unit behind the number makes it a size: PVC 50 mm.
  const after = tokens[name.next];
  if (after?.kind === 'word' && /^(mm|cm|m|in|ft|inch|inches|kg|v|a|w|kw|psi|bar|l)$/.test(after.low)) return undefined;
  return { first: at, next: name.next, key: `${key}${name.key}`.replace(/[:-](19|20)\d\d$/, ''), kind: 'standard' };
}
