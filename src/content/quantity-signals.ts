import { opposite, type Signal } from './duty-signals.ts';
import { matchQuantities, near, type QuantityPair, sameSet } from './match-quantities.ts';
import type { Quantity } from './quantities.ts';
import type { Clause, Reading } from './reading.ts';

/**
 * What changed values ask: the set of allowed values shrank (stricter) or grew (relaxed) - never whether a number is
 * bigger. In a condition it is the other way round: a duty that begins at 3 m instead of 5 m holds more often.
 */
export function quantitySignals(from: Reading, to: Reading): Signal[] {
  const pairs = matchQuantities(from, to);
  const met = new Set(pairs.map(p => p.to));
  return [
    ...pairs.flatMap(pair => pairSignals(from, to, pair)),
    ...to.quantities.filter(q => !met.has(q)).flatMap(q => loneSignal(to, q, 'added')),
  ];
}

function pairSignals(from: Reading, to: Reading, pair: QuantityPair): Signal[] {
  const { from: a, to: b } = pair;
  if (!b) return loneSignal(from, a, 'dropped');
  if (sameSet(a, b)) {
    return pair.likeness < 0.12
      ? [{ direction: 'unclear', weak: true, about: 'what a value measures', from: a.text, to: b.text }]
      : [];
  }
  const change = setChange(a, b, from);
  const told = { about: 'value', from: a.text, to: b.text };
  if (change === 'other') return [{ direction: 'unclear', ...told }];
  const places = [actsAs(from, a), actsAs(to, b)];
  if (places[0] !== places[1]) return [{ direction: 'unclear', ...told }];
  const direction = change === 'narrower' ? 'stricter' : 'relaxed';
  return [{ direction: places[0] === 'scope' ? opposite(direction) : direction, ...told }];
}

/** A value that stands on one side only: a limit more, or one less. Scopes come with their condition. */
function loneSignal(reading: Reading, quantity: Quantity, side: 'added' | 'dropped'): Signal[] {
  if (segmentOf(reading, quantity) !== undefined || actsAs(reading, quantity) === 'scope') return [];
  const told = side === 'added' ? { from: '', to: quantity.text } : { from: quantity.text, to: '' };
  const clause = clauseOf(reading, quantity);
  if (clause?.force.kind === 'state') return [{ direction: 'unclear', weak: true, about: `value ${side}`, ...told }];
  return [{ direction: side === 'added' ? 'stricter' : 'relaxed', about: `value ${side}`, ...told }];
}

function setChange(a: Quantity, b: Quantity, from: Reading): 'narrower' | 'wider' | 'other' {
  const low = near(a, b, 'low') ? 0 : Math.sign(b.low - a.low);
  const high = near(a, b, 'high') ? 0 : Math.sign(a.high - b.high);
  if (low === 0 && high === 0) return b.open ? 'narrower' : 'wider';
  if (low >= 0 && high >= 0) return 'narrower';
  if (low <= 0 && high <= 0) return 'wider';
  if (a.low === a.high && b.low === b.high && atLeastByNature(a, from)) return b.low > a.low ? 'narrower' : 'wider';
  return 'other';
}

/** Three coats instead of two, kept for 48 hours instead of 24: an exact number that is understood as the least. */
function atLeastByNature(quantity: Quantity, reading: Reading): boolean {
  if (quantity.kind === 'count')
    return quantity.dimension === 'times' || reading.tokens[quantity.next]?.kind === 'word';
  const before = reading.tokens[quantity.first - 1]?.low;
  return quantity.dimension === 'second1' && before === 'for';
}

const ATTRIBUTES = new Set(
  'depth height width length thickness distance spacing temperature pressure diameter weight mass slope fall gap clearance cover speed rate flow level value size area volume load span strength resistance voltage current humidity radius angle concentration time period duration'.split(
    ' ',
  ),
);

/** Whether a value bounds what is to be done, or for what it is to be done (rooms larger than 20 m²). */
function actsAs(reading: Reading, quantity: Quantity): 'demand' | 'scope' {
  const segment = segmentOf(reading, quantity);
  const clause = clauseOf(reading, quantity);
  const frees = clause?.force.kind === 'may' || clause?.force.kind === 'exempt';
  if (segment) {
    if (segment.kind === 'timing' || segment.kind === 'purpose') return 'demand';
    if (segment.only) return 'demand';
    const scope = segment.kind === 'exception' ? 'demand' : 'scope';
    return frees ? (scope === 'scope' ? 'demand' : 'scope') : scope;
  }
  if (frees || !clause) return 'demand';
  const after = /\bor (?:more|greater|larger|longer|higher|over|above|less|fewer|smaller)$/.test(
    quantity.text.toLowerCase(),
  );
  const bounding = quantity.comparator === 'over' || quantity.comparator === 'under' || after;
  if (!bounding) return 'demand';
  if (clause.force.at !== undefined && quantity.first < clause.predicate) return 'scope';
  const before = reading.tokens[quantity.spanFirst - 1];
  const tag = reading.tags[quantity.spanFirst - 1];
  if (before?.low === 'that' || before?.low === 'which') return 'scope';
  return tag === 'NOUN' && before && !ATTRIBUTES.has(before.low) && !after ? 'scope' : 'demand';
}

const clauseOf = (reading: Reading, q: Quantity): Clause | undefined =>
  reading.clauses.find(c => q.first >= c.first && q.first < c.next);
const segmentOf = (reading: Reading, q: Quantity) => reading.segments.find(s => q.first >= s.first && q.first < s.next);
