import type { Quantity } from '../quantities/quantities.ts';
import type { Clause, Reading } from '../reading/reading.ts';

/**
 * What a place in a text is for. `scope`: it says which things the duty is about (before the modal verb, behind "all" or
 * "any"); `duty`: what is to be done. The others are those of a segment.
 */
export type Role = 'duty' | 'scope' | 'condition' | 'exception' | 'timing' | 'soft' | 'purpose';

/** How a clause binds: a duty, a ban, or a permission (freedom from a duty included). */
export type Binding = 'duty' | 'ban' | 'permission';

const ACCEPTING = new Set(
  'accept accepts accepted acceptable tolerate tolerated tolerates allow allowed allows permit permitted permits exempt'.split(
    ' ',
  ),
);
const REJECTING = new Set(
  'reject rejected rejects refuse refused refuses discard discarded scrap scrapped prohibit prohibited forbid forbidden ban banned'.split(
    ' ',
  ),
);

export function clauseAt(reading: Reading, at: number): Clause | undefined {
  return reading.clauses.find(c => at >= c.first && at < c.next) ?? reading.clauses.at(-1);
}

export function bindingOf(reading: Reading, clause: Clause | undefined): Binding {
  if (!clause) return 'duty';
  const { kind } = clause.force;
  if (kind === 'may' || kind === 'exempt') return 'permission';
  const lows = clause.main.map(at => reading.tokens[at]!.low);
  if (clause.force.negated) return isBound(reading, clause) ? 'duty' : 'ban';
  const does = (set: ReadonlySet<string>) =>
    clause.main.some((at, i) => set.has(lows[i]!) && reading.tags[at] !== 'NOUN' && !isNamePart(reading, clause, at));
  if (does(ACCEPTING)) return 'permission';
  return does(REJECTING) ? 'ban' : 'duty';
}

/** "shall display their permit number": behind a modal, a word before a noun belongs to a name. */
function isNamePart({ tags }: Reading, { force, predicate }: Clause, at: number): boolean {
  return force.at !== undefined && at > predicate + 1 && /^(?:NOUN|PROPN)$/.test(tags[at + 1] ?? '');
}

/** "shall not be less than", "shall not fall below" deny no deed but set a bound. */
export function isBound(reading: Reading, clause: Clause): boolean {
  const { tokens, quantities } = reading;
  const own = quantities.filter(
    q => q.first >= clause.first && q.first < clause.next && q.comparator !== 'exact' && q.kind !== 'interval',
  );
  const holdsDenial = (q: Quantity) =>
    q.denied && clause.main.includes(q.spanFirst) && DENIAL.test(tokens[q.spanFirst]!.low);
  return (
    own.some(holdsDenial) ||
    (own.length > 0 && clause.main.some(at => /^(than|exceed|exceeds|exceeding|within)$/.test(tokens[at]!.low)))
  );
}

const DENIAL = /^(?:not|never|cannot)$|n't$/;

export function roleAt(reading: Reading, at: number): Role {
  const segment = reading.segments.find(s => at >= s.first && at < s.next);
  if (segment) return segment.kind;
  const clause = clauseAt(reading, at);
  if (!clause) return 'duty';
  if (clause.force.imperative) return 'duty';
  return at < predicateOf(reading, clause) ? 'scope' : 'duty';
}

/** The modal, or in a statement without one the first verb that is no participle of the subject. */
function predicateOf({ tags, tokens }: Reading, clause: Clause): number {
  if (clause.force.at !== undefined) return clause.force.at;
  const verb = clause.main.find(
    (at, i) => i > 0 && (tags[at] === 'AUX' || (tags[at] === 'VERB' && !/(?:ing|ed)$/.test(tokens[at]!.low))),
  );
  return verb ?? clause.first;
}

/** Verbs whose object is what to use or bring about, not what is there already: a word more about it asks for more. */
const USING = new Set(
  `use uses used install installed fit fitted provide provided apply applied make made build built supply supplied wear worn
lay laid put place placed have has get gets give gives keep kept maintain maintained hold set mount mounted leave left
need needs require requires consist erect store stores stored choose select buy write include carry be`.split(/\s+/),
);

/** Whether the last verb before a place is one whose object is to be used or brought about. */
export function usesObject(reading: Reading, at: number): boolean {
  const clause = clauseAt(reading, at);
  for (let i = at - 1; i >= (clause?.first ?? 0); i--) {
    const [tag, low] = [reading.tags[i], reading.tokens[i]!.low];
    if (/^(with|by|using|through|via)$/.test(low)) return true;
    if (USING.has(low)) return true;
    if (tag === 'VERB' || (i === clause?.first && clause.force.imperative)) return false;
  }
  return false;
}

/** "keep a gap above 3 mm" sets the gap; "brace walls above 3 m" does not set the walls. */
export function setsObject(reading: Reading, at: number): boolean {
  const before = reading.tokens.slice(Math.max(0, at - 4), at).map(t => t.low);
  return before.some(w =>
    /^(keep|keeps|kept|leave|left|maintain|maintained|hold|held|have|has|set|with|give|gives|at|to)$/.test(w),
  );
}
