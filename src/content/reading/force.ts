import type { Tag } from './parts-of-speech.ts';
import type { Token } from './tokens.ts';

/** What a clause does: oblige, recommend, permit, free from a duty, or merely state. */
export interface Force {
  readonly kind: 'must' | 'should' | 'may' | 'exempt' | 'state';
  readonly negated: boolean;
  /** The words that say so; absent for an imperative or a statement. */
  readonly at?: number;
  readonly imperative?: true;
}

const MODAL: Readonly<Record<string, Force['kind']>> = {
  shall: 'must',
  must: 'must',
  will: 'must',
  should: 'should',
  ought: 'should',
  may: 'may',
  can: 'may',
  might: 'may',
  could: 'may',
};
const STATED: Readonly<Record<string, Force['kind']>> = {
  required: 'must',
  mandatory: 'must',
  obligatory: 'must',
  compulsory: 'must',
  obliged: 'must',
  prohibited: 'must',
  forbidden: 'must',
  banned: 'must',
  unacceptable: 'must',
  recommended: 'should',
  advisable: 'should',
  preferable: 'should',
  encouraged: 'should',
  advised: 'should',
  permitted: 'may',
  allowed: 'may',
  permissible: 'may',
  acceptable: 'may',
  optional: 'may',
  exempt: 'exempt',
  exempted: 'exempt',
};
/** Words of force, which say how a clause binds and not what it is about. */
export const isForceWord = (word: string) => Object.hasOwn(STATED, word);

const DENYING = new Set(['prohibited', 'forbidden', 'banned', 'unacceptable']);

/**
 * The force of a clause.
 *
 * @param clause places of its tokens outside conditions, exceptions and purposes, in order
 */
export function forceOf(tokens: readonly Token[], tags: readonly Tag[], clause: readonly number[]): Force {
  const low = (i: number) => tokens[clause[i] ?? -1]?.low ?? '';
  const subjectDenied = /^(no|none|neither|never|nothing|nobody)$/.test(low(0)) || low(0) === 'under';
  for (let i = 0; i < clause.length; i++) {
    const word = low(i);
    const kind =
      Object.hasOwn(MODAL, word) && !(word === 'can' && tags[clause[i]!] === 'NOUN') ? MODAL[word] : undefined;
    if (kind) return modalForce(low, clause, i, kind, deniedBefore(low, i));
    if (/^needs?$/.test(word) && (low(i + 1) === 'not' || low(i + 1) === 'no'))
      return { kind: 'exempt', negated: false, at: clause[i]! };
    if (/^(has|have|had|need|needs|is|are)$/.test(word) && low(i + 1) === 'to' && tags[clause[i + 2] ?? -1] !== 'DET')
      return { kind: 'must', negated: false, at: clause[i]! };
    if ((word === 'do' || word === 'does') && low(i + 1) === 'not') {
      if (low(i + 2) === 'apply' || low(i + 2) === 'need' || low(i + 2) === 'have')
        return { kind: 'exempt', negated: false, at: clause[i]! };
      return {
        kind: word === 'do' && i <= 1 ? 'must' : 'state',
        negated: true,
        at: clause[i]!,
        ...(i <= 1 ? { imperative: true as const } : {}),
      };
    }
    if (word.endsWith("n't")) return { kind: i === 0 ? 'must' : 'state', negated: true, at: clause[i]! };
    const stated = Object.hasOwn(STATED, word) && isPredicate(tokens, clause, i) ? STATED[word] : undefined;
    if (stated) {
      const not = low(i - 1) === 'not' || low(i - 2) === 'not' || subjectDenied;
      if (stated === 'must' && not && !DENYING.has(word)) return { kind: 'exempt', negated: false, at: clause[i]! };
      if (stated === 'may' && not) return { kind: 'must', negated: true, at: clause[i]! };
      return { kind: stated, negated: not !== DENYING.has(word) && (not || DENYING.has(word)), at: clause[i]! };
    }
  }
  const first = firstVerb(low, tags, clause);
  if (low(0) === 'never') return { kind: 'must', negated: true, at: clause[0]!, imperative: true };
  if (/^(avoid|refrain)$/.test(low(0))) return { kind: 'must', negated: true, at: clause[0]!, imperative: true };
  if (first) return { kind: 'must', negated: false, imperative: true };
  return { kind: 'state', negated: subjectDenied && low(0) !== 'under' };
}

const SUBJECT_DENIAL = new Set('no none neither never nothing nobody nowhere'.split(' '));
/** A subject with what stands before it: "at no time may a door", "neither oil nor grease may". */
const SUBJECT = 8;

/** "Nothing liquid may be applied": denied in front of the modal verb; not "parts with no load shall", "No. 4 shall". */
function deniedBefore(low: (i: number) => string, modal: number): boolean {
  for (let i = Math.max(0, modal - SUBJECT); i < modal; i++) {
    if (SUBJECT_DENIAL.has(low(i)) && !/^[-.]$/.test(low(i + 1)) && !/^(?:with|of)$/.test(low(i - 1))) return true;
  }
  return false;
}

function modalForce(
  low: (i: number) => string,
  clause: readonly number[],
  i: number,
  kind: Force['kind'],
  subjectDenied: boolean,
): Force {
  const isNone =
    low(i - 1) === 'there' && low(i + 1) === 'be' && low(i + 2) === 'no' && !/(?:er|less|more)$/.test(low(i + 3));
  const not = isNone || low(i + 1) === 'not' || low(i + 1) === 'never' || low(i + 2) === 'not' || subjectDenied;
  const be = low(i + 1) === 'be' ? 2 : low(i + 2) === 'be' ? 3 : 0;
  const stated = be ? low(i + be) : '';
  if (Object.hasOwn(STATED, stated)) {
    // "shall be permitted" permits, "shall not be required" frees.
    const inner = STATED[stated]!;
    if (not && inner === 'must' && !DENYING.has(stated)) return { kind: 'exempt', negated: false, at: clause[i]! };
    if (not && inner === 'may') return { kind: 'must', negated: true, at: clause[i]! };
    return { kind: inner, negated: DENYING.has(stated), at: clause[i]! };
  }
  // "may not" and "can not" forbid; so does "no person may".
  if (kind === 'may' && not) return { kind: 'must', negated: true, at: clause[i]! };
  return { kind, negated: not, at: clause[i]! };
}

/** "is required", "are not permitted", "it is recommended that"; not "the required depth". */
function isPredicate(tokens: readonly Token[], clause: readonly number[], i: number): boolean {
  for (let back = 1; back <= 3; back++) {
    const low = tokens[clause[i - back] ?? -1]?.low ?? '';
    if (/^(is|are|was|were|be|being|become)$/.test(low)) return true;
    if (low !== 'not' && low !== 'also' && low !== 'strictly' && low !== 'hereby') return false;
  }
  return false;
}

const LEADING = new Set(['always', 'please', 'then', 'also', 'and', 'first', 'carefully', 'only', 'either', 'but']);

function firstVerb(low: (i: number) => string, tags: readonly Tag[], clause: readonly number[]): boolean {
  let i = 0;
  while (
    i < clause.length &&
    (LEADING.has(low(i)) || tags[clause[i]!] === 'PUNCT' || tags[clause[i]!] === 'NUM' || tags[clause[i]!] === 'ADV')
  )
    i++;
  if (i >= clause.length) return false;
  if (tags[clause[i]!] === 'VERB')
    return !/(?:ing|ed)$/.test(low(i)) || /^(feed|need|speed|bring|ring|embed|shed)$/.test(low(i));
  // A noun by the tagger that a determiner or preposition follows at once, in a clause without any other verb: "Fan the …".
  const rest = clause.slice(i + 1);
  return (
    (tags[clause[i]!] === 'NOUN' || tags[clause[i]!] === 'ADJ' || tags[clause[i]!] === 'PROPN') &&
    tags[clause[i + 1] ?? -1] === 'DET' &&
    !rest.some(at => tags[at] === 'AUX')
  );
}
