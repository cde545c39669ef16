import type { Evidence } from '../../model/duty-evidence.ts';
import { isNear } from '../reading/near-words.ts';
import { type Clause, type Reading, said } from '../reading/reading.ts';
import { isBound } from './role.ts';

/** Clauses that talk about the same, best first, each once. */
export function pairedClauses(from: Reading, to: Reading): (readonly [Clause, Clause])[] {
  if (from.clauses.length === 1 && to.clauses.length === 1) return [[from.clauses[0]!, to.clauses[0]!]];
  const taken = new Set<Clause>();
  const pairs: (readonly [Clause, Clause])[] = [];
  const untaken = (clauses: readonly Clause[]) => clauses.filter(c => !taken.has(c));
  // Clauses with the same words first: of a sentence repeated a thousand times all pairs would be a million.
  for (const a of from.clauses) {
    const b = to.clauses.find(c => !taken.has(c) && overlap(a.meanings, c.meanings) === 1);
    if (!b) continue;
    taken.add(a).add(b);
    pairs.push([a, b]);
  }
  const others = untaken(to.clauses);
  const scored = untaken(from.clauses).flatMap(a =>
    others.map(b => ({ a, b, score: overlap(a.meanings, b.meanings) })).filter(p => p.score >= 0.4),
  );
  for (const { a, b } of scored.sort((x, y) => y.score - x.score)) {
    if (taken.has(a) || taken.has(b)) continue;
    taken.add(a).add(b);
    pairs.push([a, b]);
  }
  return pairs;
}

function overlap(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let both = 0;
  for (const word of a) if (b.has(word)) both++;
  return (2 * both) / Math.max(1, a.size + b.size);
}

const STRENGTH = { must: 3, state: 3, should: 2, may: 1, exempt: 0 } as const;
/** Words that deny without "not"; where one stands, two denials may make one demand. */
const DENYING =
  /^(except|unless|only|without|but|neither|nor|nobody|none|never|no|not|cannot|free|omit|prevent|avoid|refrain|until|before)$/;

/** Duties that became advice or permissions, bans that were lifted, and the other way about. */
export function forceEvidence(from: Reading, to: Reading, rewritten: boolean): Evidence[] {
  const found: Evidence[] = [];
  for (const [a, b] of pairedClauses(from, to)) {
    const [x, y] = [a.force, b.force];
    if (deedsDiffer(from, a, to, b)) continue;
    const [noX, noY] = [x.negated && !isBound(from, a), y.negated && !isBound(to, b)];
    const words = { from: forceWords(from, a), to: forceWords(to, b) };
    if (noX === noY) {
      const change = strengthOf(to, b) - strengthOf(from, a);
      if (change === 0) continue;
      found.push({
        direction: change > 0 ? 'stricter' : 'relaxed',
        what: change > 0 ? 'binds more firmly' : 'binds less firmly',
        ...words,
      });
      continue;
    }
    const allowed = (kind: keyof typeof STRENGTH) => kind === 'may' || kind === 'exempt';
    if (rewritten && denials(noY ? from : to, noY ? a : b) > 0) continue;
    if (noY && allowed(x.kind)) found.push({ direction: 'stricter', what: 'permission became a ban', ...words });
    else if (noX && allowed(y.kind)) found.push({ direction: 'relaxed', what: 'ban became a permission', ...words });
    else found.push({ direction: 'unclear', what: 'denied in one text only', ...words });
  }
  return found;
}

/** "May be used only dry", "only a rigger may": what is permitted so binds as firmly as a duty. */
function strengthOf({ tokens }: Reading, { force, main }: Clause): number {
  return force.kind === 'may' && main.some(at => tokens[at]!.low === 'only') ? STRENGTH.must : STRENGTH[force.kind];
}

/** "Parts shall be dry" and "rags may be wet" are two sentences, though they have words in common. */
function deedsDiffer(from: Reading, a: Clause, to: Reading, b: Clause): boolean {
  if (a.force.at === undefined || b.force.at === undefined) return false;
  const [x, y] = [deedOf(from, a), deedOf(to, b)];
  return x !== undefined && y !== undefined && !isNear(x, y);
}

function deedOf({ tags, meanings }: Reading, { force, main }: Clause): string | undefined {
  const at = main.find(i => i > force.at! && tags[i] === 'VERB' && meanings[i]);
  return at === undefined ? undefined : meanings[at];
}

function denials({ tokens }: Reading, clause: Clause): number {
  return tokens.slice(clause.first, clause.next).filter(t => DENYING.test(t.low)).length;
}

function forceWords(reading: Reading, clause: Clause): string {
  const at = clause.force.at;
  if (at === undefined) return said(reading, { first: clause.first, next: Math.min(clause.next, clause.first + 4) });
  return said(reading, { first: at, next: Math.min(clause.next, at + 3) });
}
