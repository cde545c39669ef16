import { base } from './meaning.ts';
import type { Stretch } from './sentences.ts';
import type { Token } from './tokens.ts';

/** A kind of place or thing that texts are written for, with its name. */
export interface NamedType {
  readonly id: string;
  readonly name: string;
}

/** "in villas", "on a house lot or terrace row": for which types the words beside it hold. */
export interface Mention extends Stretch {
  readonly types: ReadonlySet<string>;
  /** "except in villas": the others are named by those that are left out. */
  readonly excepts?: true;
}

interface Name {
  readonly type: string;
  readonly stems: readonly string[];
  /** The whole name, and not its first word or its id. */
  readonly whole: boolean;
}

/** Finds where a text says for which of some types something holds. */
export function mentionsOf(types: readonly NamedType[]): (tokens: readonly Token[]) => Mention[] {
  const names = namesOf(types);
  const ids = types.map(t => t.id);
  return tokens => {
    const found: Mention[] = [];
    for (let at = 0; at < tokens.length; at++) {
      const mention = mentionAt(tokens, at, names, ids) ?? elsewhere(tokens, at, found, ids);
      if (!mention) continue;
      found.push(mention);
      at = mention.next - 1;
    }
    return found;
  };
}

const wordsOf = (text: string) => (text.toLowerCase().match(/\p{L}+/gu) ?? []).map(base);

/** What texts may call each type, the longest names first. */
export function namesOf(types: readonly NamedType[]): Name[] {
  const names = types.flatMap(({ id, name }): Name[] => {
    const whole = wordsOf(name);
    const others = new Set(types.filter(t => t.id !== id).flatMap(t => wordsOf(`${t.id} ${t.name}`)));
    const short = [wordsOf(id), whole.slice(0, 1)].filter(
      stems => stems.length > 0 && stems.join('').length > 3 && !stems.some(s => others.has(s)),
    );
    return [{ type: id, stems: whole, whole: true }, ...short.map(stems => ({ type: id, stems, whole: false }))];
  });
  return names.filter(n => n.stems.length > 0).sort((a, b) => b.stems.length - a.stems.length);
}

/** "1.8 m on house lots and 1.5 m elsewhere" */
function elsewhere(
  tokens: readonly Token[],
  at: number,
  before: readonly Mention[],
  ids: readonly string[],
): Mention | undefined {
  if (tokens[at]!.low !== 'elsewhere') return undefined;
  const near = before.filter(m => at - m.next < NEAR);
  const types = ids.filter(id => !near.some(m => m.types.has(id)));
  return near.length > 0 ? { first: at, next: at + 1, types: new Set(types) } : undefined;
}

const NEAR = 40;
const LEADING = new Set(['in', 'on', 'for', 'at', 'along']);
const ARTICLES = new Set('a an the all any each every'.split(' '));
const DENYING = new Set('except excepting not than excluding unless save'.split(' '));

function mentionAt(
  tokens: readonly Token[],
  at: number,
  names: readonly Name[],
  ids: readonly string[],
): Mention | undefined {
  if (!LEADING.has(tokens[at]!.low)) return undefined;
  let next = at + 1;
  if (low(tokens, next) === 'the' && low(tokens, next + 1) === 'case' && low(tokens, next + 2) === 'of') next += 3;
  const named = nameAt(tokens, next, names);
  if (!named) return undefined;
  const types = new Set([named.type]);
  next = named.next;
  for (;;) {
    let more = next;
    while (/^(?:,|and|or)$/.test(low(tokens, more))) more++;
    if (more === next) break;
    const isAnew = LEADING.has(low(tokens, more));
    // "in a courtyard block or street frontage": the article is said once.
    const other = nameAt(tokens, isAnew ? more + 1 : more, names, !isAnew);
    if (!other) break;
    types.add(other.type);
    next = other.next;
  }
  // "except in villas": for all others.
  const denied =
    DENYING.has(low(tokens, at - 1)) || (low(tokens, at - 1) === 'that' && DENYING.has(low(tokens, at - 2)));
  if (!denied) return { first: at, next, types };
  const first = /^(?:other|but)$/.test(low(tokens, at - 2)) ? at - 2 : at - 1;
  return { first, next, types: new Set(ids.filter(id => !types.has(id))), excepts: true };
}

const low = (tokens: readonly Token[], at: number) => tokens[at]?.low ?? '';

const SMALL =
  /^(?:and|or|but|shall|must|should|may|can|will|is|are|it|they|the|a|an|all|each|every|any|at|of|with|to|by|as|if|where|when|only|no|not)$/;

function nameAt(
  tokens: readonly Token[],
  from: number,
  names: readonly Name[],
  isListed = false,
): { type: string; next: number } | undefined {
  const article = ARTICLES.has(low(tokens, from)) ? low(tokens, from) : '';
  const first = article === '' ? from : from + 1;
  for (const { type, stems, whole } of names) {
    let at = first;
    const isNamed = stems.every(stem => {
      if (low(tokens, at) === '-' && at > first) at++;
      return tokens[at]?.kind === 'word' && base(tokens[at++]!.low) === stem;
    });
    if (!isNamed) continue;
    const last = low(tokens, at - 1);
    const [isMany, behind] = [last.endsWith('s'), tokens[at]];
    // "on house walls", "in the street": a word of the name, and not the type.
    if (!isMany && article === '' && !(isListed && whole)) continue;
    if (article === 'the' && (!whole || !isMany)) continue;
    if (!isMany && behind?.kind === 'word' && !whole && !SMALL.test(behind.low)) continue;
    return { type, next: at };
  }
  return undefined;
}
