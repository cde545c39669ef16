import type { Duty } from '../../model/crosswalk.ts';
import type { Evidence } from '../../model/duty-evidence.ts';
import { type Reading, said } from '../reading/reading.ts';
import { remembered } from '../reading/remembered.ts';
import type { Segment } from '../reading/segments.ts';
import { opposite } from './evidence.ts';
import { bindingOf, clauseAt } from './role.ts';

/** Segments of the first text that the second one does not repeat: few of their words stand anywhere in it. */
export const segmentsOnlyIn = (reading: Reading, other: Reading) => onlyBeside(reading)(other);

const onlyBeside = remembered((reading: Reading) => remembered((other: Reading) => onlyIn(reading, other)));

function onlyIn(reading: Reading, other: Reading): readonly Segment[] {
  const stated = new Set(other.meanings.filter(Boolean));
  return reading.segments.filter(segment => {
    const inner = reading.quantities.filter(q => q.first >= segment.first && q.first < segment.next);
    if (inner.some(q => other.quantities.some(o => o.dimension === q.dimension))) return false;
    const own = reading.meanings.slice(segment.first, segment.next).filter(Boolean);
    const known = own.filter(w => stated.has(w)).length;
    if (own.length === 0) {
      // "when not in use"
      const body = reading.tokens.slice(segment.first + segment.opener, segment.next).map(t => t.low);
      const isBare =
        segment.kind === 'condition' && body.length > 2 && !body.every(low => other.tokens.some(t => t.low === low));
      return inner.length > 0 || segment.kind === 'soft' || isBare;
    }
    return known / own.length < 0.5 && !other.segments.some(s => s.kind === segment.kind && known > 0 && s !== segment);
  });
}

const ADDED: Readonly<Record<Segment['kind'], Duty | undefined>> = {
  condition: 'relaxed',
  exception: 'relaxed',
  soft: 'relaxed',
  timing: 'stricter',
  purpose: undefined,
};

/** Conditions, exceptions and timings that came or went. */
export function segmentEvidence(from: Reading, to: Reading): Evidence[] {
  const acts = [...actsGone(from, to, 'dropped'), ...actsGone(to, from, 'added')];
  const gone = segmentsOnlyIn(from, to).flatMap(segment => {
    if (actOf(from, segment, to) || isAnaphor(from, segment) || isInPurpose(from, segment)) return [];
    const direction = effect(from, segment);
    const what = `${segment.kind === 'soft' ? 'leave to judgement' : segment.kind} dropped`;
    return direction ? [{ direction: opposite(direction), what, from: said(from, segment), to: '' }] : [];
  });
  const come = segmentsOnlyIn(to, from).flatMap(segment => {
    if (actOf(to, segment, from) || isInPurpose(to, segment)) return [];
    const direction = effect(to, segment);
    const what = `${segment.kind === 'soft' ? 'leave to judgement' : segment.kind} added`;
    return direction ? [{ direction, what, from: '', to: said(to, segment) }] : [];
  });
  if (gone.length > 0 && come.length > 0) {
    // One condition in place of another: neither narrower nor wider by its grammar.
    return [
      {
        direction: 'unclear',
        what: 'condition replaced',
        from: gone.map(e => e.from).join(' … '),
        to: come.map(e => e.to).join(' … '),
      },
      ...acts,
    ];
  }
  return [...gone, ...come, ...acts];
}

/** "so that it stops when it is opened": the case belongs to the purpose. */
const isInPurpose = ({ segments }: Reading, { kind, first }: Segment) =>
  kind === 'condition' && segments.some(s => s.kind === 'purpose' && s.next === first);

/** "Where this is not possible, …" went with the sentence that it points to, of which something else is told. */
export const isAnaphor = ({ tokens }: Reading, { kind, first, opener }: Segment) =>
  kind === 'soft' && /^(?:this|that)$/.test(tokens[first + opener]?.low ?? '');

/**
 * "…, and the link renewed if it shows corrosion": the act that a condition belongs to, where the other text says nothing of
 * it. Then the condition went with its act, and a demand is less, not wider.
 */
function actOf(reading: Reading, segment: Segment, other: Reading): { first: number; next: number } | undefined {
  const { tokens, meanings, sentences } = reading;
  const sentence = sentences.find(s => segment.first >= s.first && segment.first < s.next);
  let first = segment.first;
  while (first > (sentence?.first ?? 0) && !/^(and|or|,|:)$/.test(tokens[first - 1]!.low)) first--;
  const joint = tokens[first - 1]?.low;
  if (joint !== 'and' && !(joint === 'or' && isComparative(tokens[first]!.low))) return undefined;
  const own = meanings.slice(first, segment.first).filter(Boolean);
  if (own.length === 0 || own.some(w => other.meanings.includes(w))) return undefined;
  return { first, next: segment.next };
}

/** "or sooner", "or more often": more of what is asked, where others would be another way to do it. */
export const isComparative = (low: string) => /^(?:more|sooner|earlier|oftener|longer|better)$/.test(low);

function actsGone(reading: Reading, other: Reading, how: 'added' | 'dropped'): Evidence[] {
  return segmentsOnlyIn(reading, other).flatMap((segment): Evidence[] => {
    const act = actOf(reading, segment, other);
    if (!act) return [];
    const permits = bindingOf(reading, clauseAt(reading, act.first)) === 'permission';
    const direction = permits ? 'relaxed' : 'stricter';
    const words = said(reading, act);
    return how === 'added'
      ? [{ direction, what: 'demand added', from: '', to: words }]
      : [{ direction: opposite(direction), what: 'demand dropped', from: words, to: '' }];
  });
}

function effect(reading: Reading, segment: Segment): Duty | undefined {
  const direction = ADDED[segment.kind];
  if (!direction) return undefined;
  const binding = bindingOf(reading, clauseAt(reading, segment.first));
  if (segment.kind === 'timing') {
    // "not until the concrete is hard": a ban that ends.
    return binding === 'ban' ? 'relaxed' : 'stricter';
  }
  if (binding === 'permission') return opposite(direction);
  return segment.only ? 'unclear' : direction;
}

/** "unless it is wet" for "if it is wet": the words stay, and the case is turned round or no case any more. */
export function turnedSegments(from: Reading, to: Reading): Evidence[] {
  return [...turned(from, to), ...turned(to, from).map(e => ({ ...e, from: e.to, to: e.from }))];
}

const DENIED = /^(only|not|no|none|never|nobody|neither|nor|without|unless|except|cannot|need|needs)$/;

function turned(reading: Reading, other: Reading): Evidence[] {
  const exceptions = reading.segments.filter(s => s.kind === 'exception');
  if (exceptions.length === 0 || other.segments.some(s => s.kind === 'exception')) return [];
  if (segmentsOnlyIn(reading, other).length > 0 || other.tokens.some(t => DENIED.test(t.low))) return [];
  const words = exceptions.map(s => said(reading, s)).join(' … ');
  return [{ direction: 'unclear', what: 'an exception in one text only', from: words, to: '' }];
}
