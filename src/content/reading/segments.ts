import type { Tag } from './parts-of-speech.ts';
import type { Stretch } from './sentences.ts';
import type { Token } from './tokens.ts';

/**
 * A part of a sentence that says when, where or why the rest holds. `condition` limits where a duty holds, `exception`
 * takes something out of it, `timing` is part of the duty itself (test before covering), `soft` leaves it to judgement
 * (where practicable), `purpose` obliges to nothing.
 */
export interface Segment extends Stretch {
  readonly kind: 'condition' | 'exception' | 'timing' | 'soft' | 'purpose';
  /** Tokens of the opening words. */
  readonly opener: number;
  /** "only if", "only where". */
  readonly only: boolean;
}

type Opener = readonly [words: string, kind: Segment['kind']];
const OPENERS: readonly Opener[] = [
  ['unless', 'exception'],
  ['except', 'exception'],
  ['except for', 'exception'],
  ['except that', 'exception'],
  ['except where', 'exception'],
  ['except when', 'exception'],
  ['except if', 'exception'],
  ['except as', 'exception'],
  ['except in', 'exception'],
  ['exception :', 'exception'],
  ['with the exception of', 'exception'],
  ['other than', 'exception'],
  ['excluding', 'exception'],
  ['apart from', 'exception'],
  ['aside from', 'exception'],
  ['save for', 'exception'],
  ['save that', 'exception'],
  ['save where', 'exception'],
  ['but not', 'exception'],
  ['if', 'condition'],
  ['when', 'condition'],
  ['whenever', 'condition'],
  ['where', 'condition'],
  ['wherever', 'condition'],
  ['while', 'condition'],
  ['whilst', 'condition'],
  ['provided that', 'condition'],
  ['provided the', 'condition'],
  ['providing that', 'condition'],
  ['on condition that', 'condition'],
  ['in case', 'condition'],
  ['in case of', 'condition'],
  ['in the case of', 'condition'],
  ['in cases where', 'condition'],
  ['in the event of', 'condition'],
  ['in the event that', 'condition'],
  ['as long as', 'condition'],
  ['so long as', 'condition'],
  ['subject to', 'condition'],
  ['depending on', 'condition'],
  ['upon', 'condition'],
  ['during', 'condition'],
  ['once', 'timing'],
  ['as soon as', 'timing'],
  ['before', 'timing'],
  ['prior to', 'timing'],
  ['in advance of', 'timing'],
  ['after', 'timing'],
  ['until', 'timing'],
  ['till', 'timing'],
  ['so that', 'purpose'],
  ['in order to', 'purpose'],
  ['in order that', 'purpose'],
  ['so as to', 'purpose'],
  ['because', 'purpose'],
  ['for the purpose of', 'purpose'],
];
const BY_FIRST = new Map<string, { words: readonly string[]; kind: Segment['kind'] }[]>();
for (const [phrase, kind] of OPENERS) {
  const words = phrase.split(' ');
  BY_FIRST.set(
    words[0]!,
    [...(BY_FIRST.get(words[0]!) ?? []), { words, kind }].sort((a, b) => b.words.length - a.words.length),
  );
}

/** "to prevent …", "to ensure …" behind a whole clause tell why. */
export const AIMS = new Set(
  'prevent avoid ensure allow reduce minimize minimise permit enable facilitate help limit eliminate improve preserve protect keep make provide accommodate maintain'.split(
    ' ',
  ),
);
const SOFT = new Set(
  'possible practicable practical feasible necessary needed appropriate applicable reasonable reasonably desired convenient'.split(
    ' ',
  ),
);
const TESTED = new Set('tested measured checked determined assessed weighed viewed calculated'.split(' '));
const MODALS = new Set('shall must should may can will'.split(' '));

/** The segments of one sentence in order. They do not nest: what stands inside one belongs to it. */
export function segmentsOf(tokens: readonly Token[], tags: readonly Tag[], sentence: Stretch): Segment[] {
  const found: Segment[] = [];
  for (let at = sentence.first; at < sentence.next; ) {
    const opened = openerAt(tokens, tags, at, sentence);
    const behind = opened ? undefined : exceptedAt(tokens, at, sentence);
    const leave = opened || behind !== undefined ? undefined : permittingAt(tokens, at, sentence);
    if (leave !== undefined) {
      found.push({ kind: 'soft', first: at, next: leave, opener: 0, only: false });
      at = leave;
    } else if (behind !== undefined) {
      found.push({ kind: 'exception', first: at, next: behind, opener: 0, only: false });
      at = behind;
    } else if (!opened) {
      at++;
    }
    if (!opened) continue;
    const next = endOf(tokens, tags, at, opened.length, sentence);
    const body = tokens.slice(at + opened.length, next);
    const soft = opened.kind === 'condition' && body.length <= 4 && body.some(t => SOFT.has(t.low));
    const only = tokens[at - 1]?.low === 'only' && at > sentence.first;
    found.push({
      kind: soft ? 'soft' : opened.kind,
      first: only ? at - 1 : at,
      next,
      opener: opened.length,
      only,
    });
    at = next;
  }
  return found;
}

/** "…, weather permitting", "Weather permitting, …": whoever does it judges. */
function permittingAt(tokens: readonly Token[], at: number, { first, next }: Stretch): number | undefined {
  if (at !== first && !/^[,(]$/.test(tokens[at - 1]!.low)) return undefined;
  for (let i = at + 1; i < Math.min(next, at + 4); i++) {
    if (tokens[i]!.low === 'permitting' && (i + 1 === next || tokens[i + 1]!.kind === 'mark')) return i + 1;
    if (tokens[i]!.kind !== 'word') return undefined;
  }
  return undefined;
}

/** "…, small parts excepted": from behind the comma to the word itself. */
function exceptedAt(tokens: readonly Token[], at: number, { next }: Stretch): number | undefined {
  if (tokens[at - 1]?.low !== ',') return undefined;
  for (let i = at + 1; i < Math.min(next, at + 12); i++) {
    if (/^(excepted|excluded|exempted|aside)$/.test(tokens[i]!.low)) return i + 1;
    if (tokens[i]!.kind !== 'word' && tokens[i]!.low !== '-') return undefined;
  }
  return undefined;
}

function openerAt(tokens: readonly Token[], tags: readonly Tag[], at: number, sentence: Stretch) {
  const low = tokens[at]!.low;
  for (const { words, kind } of BY_FIRST.get(low) ?? []) {
    if (at + words.length >= sentence.next || /^[.,;)]$/.test(tokens[at + words.length]!.low)) continue;
    if (!words.every((word, i) => tokens[at + i]?.low === word)) continue;
    // "immediately before", "the day after" and "once a year" stay what they are; a clause or noun has to follow.
    if (low === 'once' && /^(a|an|per|every|each|in)$/.test(tokens[at + 1]?.low ?? '')) continue;
    // "the point where it enters" tells of a place, not of a case.
    if (
      low === 'where' &&
      /^(points?|places?|spots?|locations?|positions?|areas?|sides?|parts?)$/.test(tokens[at - 1]?.low ?? '')
    )
      continue;
    if (low === 'upon' && tags[at - 1] === 'VERB') continue;
    // "when tested to sheet 7": how it is found out, and part of what is asked.
    const isTest = low === 'when' && TESTED.has(tokens[at + 1]?.low ?? '');
    return { kind: isTest ? ('timing' as const) : kind, length: words.length };
  }
  // "Should a leaf be missing, …"
  if (low === 'should' && at === sentence.first) return { kind: 'condition' as const, length: 1 };
  if (low === 'as' && (tokens[at + 1]?.low === 'far' || SOFT.has(tokens[at + 1]?.low ?? '')))
    return { kind: 'condition' as const, length: 1 };
  if (
    low === 'to' &&
    at > sentence.first + 2 &&
    AIMS.has(tokens[at + 1]?.low ?? '') &&
    !/^(required|needed|necessary|is|are|has|have|shall|able|used|sized|likely|order|as)$/.test(tokens[at - 1]!.low)
  )
    return { kind: 'purpose' as const, length: 1 };
  return undefined;
}

/**
 * Where a segment ends. At the head of a sentence: at the comma before the main clause, which is the first comma whose
 * following stretch has a modal verb, or simply the first one. Set between commas: at the second. Else: at the next
 * opener, at a comma or "and" that begins a clause with a modal of its own, or with the sentence.
 */
function endOf(tokens: readonly Token[], tags: readonly Tag[], at: number, opener: number, sentence: Stretch): number {
  const head = !tokens
    .slice(sentence.first, at)
    .some(t => t.kind !== 'mark' && !/^(and|but|or|only|also|a|b|c|d|i|ii|iii)$/.test(t.low));
  const behindComma = tokens[at - 1]?.low === ',';
  const commas: number[] = [];
  for (let i = at + opener; i < sentence.next; i++) {
    if (tokens[i]!.low === ',' || (tokens[i]!.low === ':' && head)) commas.push(i);
    if (tokens[i]!.low === ')' && depthBefore(tokens, at, sentence) > 0) return i;
    if (!head && i > at + opener && openerAt(tokens, tags, i, sentence)) {
      const inner = tokens[i]!.low;
      // "if X before Y" is one condition; "before X unless Y" are two.
      if (!(inner === 'before' || inner === 'after' || inner === 'until' || inner === 'to' || inner === 'during'))
        return tokens[i - 1]?.low === 'only' ? i - 1 : i;
    }
  }
  if (head) {
    const [firstComma] = commas;
    const main = pronounSubject(tokens, at + opener, firstComma ?? sentence.next);
    if (main !== undefined) return main;
    if (firstComma === undefined) return headEnd(tokens, tags, at + opener, sentence);
    for (const [index, comma] of commas.entries()) {
      const until = commas[index + 1] ?? sentence.next;
      const stretch = tokens.slice(comma + 1, until);
      if (stretch.some(t => MODALS.has(t.low))) return comma;
    }
    const behind = commas.find(c => tags[c + 1] === 'VERB' && !/(?:ing|ed)$/.test(tokens[c + 1]!.low));
    return behind ?? firstComma;
  }
  if (behindComma && commas[0] !== undefined) return commas[0];
  // "No vehicle other than the forklift may enter"
  const modal = EXCEPTING.has(tokens[at]!.low) ? nextModal(tokens, at + opener, sentence) : undefined;
  if (modal !== undefined && nextModal(tokens, sentence.first, sentence) === modal) return modal;
  for (const comma of commas) {
    const stretch = tokens.slice(comma + 1, sentence.next);
    const begins = stretch[0]?.low ?? '';
    if (/^(and|but|or)$/.test(begins) && stretch.some(t => MODALS.has(t.low))) return comma;
    if (begins === 'whichever') return comma;
  }
  return sentence.next;
}

const EXCEPTING = new Set('other apart aside excluding except save with'.split(' '));

function nextModal(tokens: readonly Token[], from: number, { next }: Stretch): number | undefined {
  for (let at = from; at < next; at++) if (MODALS.has(tokens[at]!.low)) return at;
  return undefined;
}

/** "Where a pipe passes inside it shall be wrapped": "it" before a modal verb begins the main clause without any comma. */
function pronounSubject(tokens: readonly Token[], from: number, next: number): number | undefined {
  for (let i = from + 2; i < next - 1; i++) {
    if (/^(it|they|he|she)$/.test(tokens[i]!.low) && MODALS.has(tokens[i + 1]!.low)) return i;
  }
  return undefined;
}

/** "Before backfilling the trench shall be inspected": without a comma the main clause cannot be told from the words. */
function headEnd(tokens: readonly Token[], tags: readonly Tag[], from: number, sentence: Stretch): number {
  const modal = tokens.findIndex((t, i) => i >= from && i < sentence.next && MODALS.has(t.low));
  if (modal < 0) return sentence.next;
  for (let i = modal - 1; i > from; i--) if (tags[i] === 'DET') return i;
  return sentence.next;
}

function depthBefore(tokens: readonly Token[], at: number, sentence: Stretch): number {
  let depth = 0;
  for (let i = sentence.first; i < at; i++) {
    if (tokens[i]!.low === '(') depth++;
    if (tokens[i]!.low === ')') depth--;
  }
  return depth;
}
