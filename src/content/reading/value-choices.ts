import type { Quantity } from '../quantities/quantities.ts';
import { bracketed, type Cut, JOINT, MODALS, type Named, phraseOf, SEPARATING, wordsOf } from './cuts.ts';
import type { Stretch } from './sentences.ts';
import type { Mention } from './type-names.ts';

/** A value, or values that are said together (20 L at 15 °C), with those that stand for it elsewhere: 100 mm, or 150 mm in shops. */
export interface Choice {
  readonly values: readonly Quantity[];
  readonly own?: Mention;
  readonly others: { readonly values: readonly Quantity[]; readonly mention: Mention; readonly chunk: Stretch }[];
}

/** Puts a value to what it stands for; gives its words back where it stands for nothing but itself. */
export function choose(
  named: Named,
  choices: Choice[],
  q: Quantity,
  mention: Mention,
  from: number,
): Stretch | undefined {
  const { tokens, quantities, sentence } = named;
  const values = together(named, q, from);
  const head = values[0]!;
  let first = head.spanFirst;
  while (first > sentence.first && head.spanFirst - first < 4 && SEPARATING.test(tokens[first - 1]!.low)) first--;
  const parted = tokens.slice(first, head.spanFirst).some(t => /^(?:,|or|and|\()$/.test(t.low));
  const last = choices.at(-1);
  const isOfLast = last !== undefined && placeIn(last.values, values) !== undefined;
  const plain = quantities.findLast(
    o =>
      o.first >= sentence.first && o.spanNext <= first && o.dimension === head.dimension && !last?.values.includes(o),
  );
  const chunk =
    tokens[first]?.low === '(' ? bracketed(tokens, first, mention.next, sentence.next) : { first, next: mention.next };
  // "and at least 300 mm against walls in shops" is one more value, and no other one.
  const isTight = tokens
    .slice(q.spanNext, mention.first)
    .every(t => !/^(?:against|at|on|in|to|of|under|over|above|below|beside)$/.test(t.low));
  if (parted && !isTight && (isOfLast || plain)) return chunk;
  if (parted && isOfLast) last.others.push({ values, mention, chunk });
  else if (parted && plain) {
    choices.push({ values: valuesFrom(named, plain, first), others: [{ values, mention, chunk }] });
  } else choices.push({ values, own: mention, others: [] });
  return undefined;
}

/** "20 L at 15 °C": the values that stand before the last one and are said with it. */
function together(named: Named, last: Quantity, from: number): Quantity[] {
  const values = [last];
  for (;;) {
    const before = named.quantities.findLast(o => o.spanNext <= values[0]!.spanFirst);
    if (!before || before.spanFirst < from || !areJoined(named, before, values[0]!)) return values;
    values.unshift(before);
  }
}

/** The values that are said with the first one, behind it. */
export function valuesFrom(named: Named, first: Quantity, until: number): Quantity[] {
  const values = [first];
  for (const q of named.quantities) {
    if (q.spanFirst < values.at(-1)!.spanNext || q.spanNext > until) continue;
    if (!areJoined(named, values.at(-1)!, q)) break;
    values.push(q);
  }
  return values;
}

/** Nothing but a few words between them, and no joint: they belong to one member of a list. */
function areJoined({ tokens }: Named, a: Quantity, b: Quantity): boolean {
  const between = tokens.slice(a.spanNext, b.spanFirst);
  return between.length < 4 && between.every(t => t.kind === 'word' && !JOINT.test(t.low) && !MODALS.has(t.low));
}

/** Which of the values others stand for: those of the same dimensions, the last ones where several are. */
function placeIn(values: readonly Quantity[], others: readonly Quantity[]): { at: number; length: number } | undefined {
  for (let at = values.length - others.length; at >= 0; at--)
    if (others.every((o, i) => o.dimension === values[at + i]!.dimension)) return { at, length: others.length };
  const at = values.findLastIndex(q => q.dimension === others[0]!.dimension);
  return at < 0 ? undefined : { at, length: 1 };
}

export function cutsOfChoice(named: Named, { values, own, others }: Choice, type: string): Cut[] {
  const { text, tokens, sentence } = named;
  const gone = others.map(o => wordsOf(named, o.chunk));
  const phrase = own ? [wordsOf(named, phraseOf(named, own))] : [];
  const other = own?.types.has(type) ? undefined : others.find(o => o.mention.types.has(type));
  const place = other && placeIn(values, other.values);
  if (other && place) {
    const [q, last] = [values[place.at]!, values[place.at + place.length - 1]!];
    const [o, end] = [other.values[0]!, other.values.at(-1)!];
    const isBare = o.comparator === 'exact' && q.comparator !== 'exact';
    const instead = tokens.slice(isBare ? o.first : o.spanFirst, end.spanNext);
    const replaced = tokens.slice(isBare ? q.first : q.spanFirst, isBare && q === last ? last.next : last.spanNext);
    return [
      ...others.map(x => ({ ...wordsOf(named, x.chunk), kind: x === other ? ('own' as const) : ('words' as const) })),
      ...phrase,
      {
        start: replaced[0]!.start,
        end: replaced.at(-1)!.end,
        instead: text.slice(instead[0]!.start, isBare && o === end ? tokens[o.next - 1]!.end : instead.at(-1)!.end),
        kind: 'value',
      },
    ];
  }
  if (!own || own.types.has(type)) return [...gone, ...phrase];
  // Said of others only: from the comma before it, else the sentence.
  const comma = tokens.slice(sentence.first, values[0]!.spanFirst).findLastIndex(t => t.low === ',' || t.low === ':');
  const first = comma < 0 ? sentence.first : sentence.first + comma;
  const last = others.at(-1)?.chunk.next ?? own.next;
  // Nothing of the sentence stays but its full stop.
  const isAll = first === sentence.first && tokens.slice(last, sentence.next).every(t => t.kind === 'mark');
  return [wordsOf(named, { first, next: isAll ? sentence.next : last })];
}

/** From the comma or joint before it to the end of what the value is said of: the next mark, joint or verb. */
export function shortOf({ tokens, sentence }: Named, lead: Mention, q: Quantity): Stretch {
  let { first } = lead;
  while (first > sentence.first && JOINT.test(tokens[first - 1]!.low)) first--;
  let next = q.spanNext;
  while (
    next < sentence.next &&
    tokens[next]!.kind !== 'mark' &&
    !JOINT.test(tokens[next]!.low) &&
    !MODALS.has(tokens[next]!.low)
  )
    next++;
  return { first, next };
}
