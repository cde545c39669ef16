import type { Signal } from './duty-signals.ts';
import { type Clause, type Reading, said } from './reading.ts';
import { runSignals } from './run-signals.ts';

export interface ClausePair {
  readonly from: Clause;
  readonly to: Clause;
}

/** Duties added, dropped, and changed in force or content, clause by clause. */
export function clauseSignals(from: Reading, to: Reading): Signal[] {
  const pairs = pairClauses(from, to);
  const [metFrom, metTo] = [new Set(pairs.map(p => p.from)), new Set(pairs.map(p => p.to))];
  return [
    ...pairs.flatMap(pair => [...forceSignals(from, to, pair), ...runSignals(from, to, pair)]),
    ...from.clauses.filter(c => !metFrom.has(c)).flatMap(c => loneClause(from, c, to, 'dropped')),
    ...to.clauses.filter(c => !metTo.has(c)).flatMap(c => loneClause(to, c, from, 'added')),
  ];
}

/** Clauses that share most of their words, best first. Two texts of one clause each are always compared. */
function pairClauses(from: Reading, to: Reading): ClausePair[] {
  if (from.clauses.length === 1 && to.clauses.length === 1) return [{ from: from.clauses[0]!, to: to.clauses[0]! }];
  const scored = from.clauses.flatMap((a, i) =>
    to.clauses.flatMap((b, j) => {
      let shared = 0;
      for (const m of a.meanings) if (b.meanings.has(m)) shared++;
      const score = (2 * shared) / Math.max(1, a.meanings.size + b.meanings.size);
      return score >= 0.34 ? [{ a, b, score, order: Math.abs(i - j) }] : [];
    }),
  );
  scored.sort((x, y) => y.score - x.score || x.order - y.order || x.a.first - y.a.first);
  const [usedFrom, usedTo, pairs] = [new Set<Clause>(), new Set<Clause>(), [] as ClausePair[]];
  for (const { a, b } of scored) {
    if (usedFrom.has(a) || usedTo.has(b)) continue;
    usedFrom.add(a);
    usedTo.add(b);
    pairs.push({ from: a, to: b });
  }
  return pairs;
}

const RANK = { must: 3, should: 2, may: 1, exempt: 0 } as const;

function forceSignals(from: Reading, to: Reading, { from: a, to: b }: ClausePair): Signal[] {
  const [x, y] = [a.force, b.force];
  const told = { about: 'force', from: forceWords(from, a), to: forceWords(to, b) };
  if (x.kind === 'state' || y.kind === 'state') {
    return x.kind === y.kind && x.negated === y.negated ? [] : [{ direction: 'unclear', weak: true, ...told }];
  }
  if (x.negated !== y.negated) {
    // "shall not be less than 50 mm" and "shall be at least 50 mm": the negation is part of the bound.
    if (boundByDenial(from, a) || boundByDenial(to, b)) return [];
    if (x.kind === 'may' || x.kind === 'exempt') return [{ direction: 'stricter', ...told }];
    if (y.kind === 'may' || y.kind === 'exempt') return [{ direction: 'relaxed', ...told }];
    return [{ direction: 'unclear', ...told }];
  }
  const [before, after] = [RANK[x.kind], RANK[y.kind]];
  if (before === after) return [];
  return [{ direction: after > before ? 'stricter' : 'relaxed', ...told }];
}

function boundByDenial(reading: Reading, clause: Clause): boolean {
  if (!clause.force.negated) return false;
  return reading.quantities.some(
    q =>
      q.first >= clause.first &&
      q.next <= clause.next &&
      (q.comparator === 'min' || q.comparator === 'max') &&
      /\b(?:exceed|less|more|fewer|greater|below|above|over|under|than|within)\b/i.test(q.text),
  );
}

function forceWords(reading: Reading, clause: Clause): string {
  const at = clause.force.at ?? clause.main[0] ?? clause.first;
  return said(reading, { first: at, next: Math.min(clause.next, at + 4) });
}

function loneClause(reading: Reading, clause: Clause, other: Reading, side: 'added' | 'dropped'): Signal[] {
  const there = new Set(other.meanings);
  const words = [...clause.meanings];
  const missing = words.filter(m => !there.has(m));
  if (missing.length <= words.length * 0.3) return [];
  const phrase = said(reading, clause);
  const told = { about: `duty ${side}`, ...(side === 'added' ? { from: '', to: phrase } : { from: phrase, to: '' }) };
  const { kind } = clause.force;
  if (kind === 'state') return [{ direction: 'unclear', weak: true, ...told }];
  const binds = kind === 'must' || kind === 'should';
  return [{ direction: binds === (side === 'added') ? 'stricter' : 'relaxed', ...told }];
}
