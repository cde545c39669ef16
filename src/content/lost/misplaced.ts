import { about, aboutValue, apart, common, standsBesideAnother } from '../duty/subjects.ts';
import type { Quantity } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';
import type { Reading } from '../reading/reading.ts';
import type { FreshValue } from './changed-values.ts';
import { MATERIALS } from './named-things.ts';
import { statedIn } from './stated-words.ts';

/** Something that the heirs say of another thing than the old text did, and what they say in its place, if anything. */
export interface Misplaced {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly to?: string;
}

/** So many values around one are asked whether it is theirs now; a table written as one sentence has hundreds. */
const NEAR = 6;

/**
 * A value that stands beside another thing now, and the value that stands in its place.
 *
 * @param said where the heirs state the value
 */
export function misplacedValue(
  from: Reading,
  q: Quantity,
  said: readonly FreshValue[],
  heirs: readonly Reading[],
  stated: ReadonlySet<string>,
): Misplaced | undefined {
  const at = from.quantities.indexOf(q);
  const others = from.quantities
    .slice(Math.max(0, at - NEAR), at + NEAR + 1)
    .filter(o => o.dimension === q.dimension && !sameValue(o, q));
  if (others.length === 0 || isSide(from, q)) return undefined;
  const own = aboutValue(from, q);
  const rivals = others.map(o => aboutValue(from, o));
  const now = said.map(s => wordsBeside(s, q));
  if (!standsBesideAnother(own, rivals, now, stated)) return undefined;
  const mine = apart(own, new Set(rivals.flatMap(r => [...r])))[0];
  const instead = heirs
    .flatMap(heir => heir.quantities.map(z => ({ heir, z })))
    .find(({ heir, z }) => z.dimension === q.dimension && !sameValue(z, q) && common(mine, aboutValue(heir, z)) > 0);
  const { text, start, end } = q;
  return { text, start, end, ...(instead && { to: instead.z.text }) };
}

/** The phrase of a value, or its sentence where no other value is told of that kind. */
function wordsBeside({ heir, q }: FreshValue, old: Quantity): Set<string> {
  const sentence = heir.sentences.find(s => s.next > q.first);
  const isAlone = !heir.quantities.some(
    o =>
      o.dimension === q.dimension &&
      !sameValue(o, old) &&
      o.first >= (sentence?.first ?? 0) &&
      o.first < (sentence?.next ?? 0),
  );
  return isAlone && sentence
    ? new Set(heir.meanings.slice(sentence.first, sentence.next).filter(Boolean))
    : aboutValue(heir, q);
}

/** "600 by 300 mm": both sides of one thing. */
const isSide = ({ tokens }: Reading, { spanFirst, spanNext }: Quantity) =>
  [spanFirst - 1, spanNext].some(at => /^(?:by|x|×)$/.test(tokens[at]?.low ?? ''));

/** Materials that stand beside another thing now: doors of oak and windows of pine, exchanged. */
export function misplacedMaterials(from: Reading, heirs: readonly Reading[]): Misplaced[] {
  if (new Set(from.meanings.filter(m => MATERIALS.has(m))).size < 2) return [];
  const [places, stated] = [materialsIn(from), statedIn(heirs)];
  const now = heirs.flatMap(heir => materialsIn(heir));
  return places.flatMap(({ key, at, words }): Misplaced[] => {
    const rivals = places.filter(p => p.key !== key).map(p => p.words);
    if (places.some(p => p.key === key && p.at !== at)) return [];
    const said = now.filter(p => p.key === key).map(p => p.words);
    if (!standsBesideAnother(words, rivals, said, stated)) return [];
    const mine = apart(words, new Set(rivals.flatMap(r => [...r])))[0];
    // Only where the other's material stands beside it in turn: single words wander more than values.
    const instead = now.find(
      p =>
        p.key !== key && common(mine, p.words) > 0 && places.some(o => o.key === p.key && common(mine, o.words) === 0),
    );
    const { text, start, end } = from.tokens[at]!;
    return instead ? [{ text, start, end, to: instead.text }] : [];
  });
}

function materialsIn(reading: Reading) {
  const { tokens, meanings } = reading;
  const places = meanings.flatMap((key, at) => (MATERIALS.has(key) ? [{ key, at }] : []));
  const isPlace = new Set(places.map(p => p.at));
  return places.map(({ key, at }) => {
    const words = about(reading, { first: at, next: at + 1 }, other => other !== at && isPlace.has(other));
    words.delete(key);
    return { key, at, text: tokens[at]!.text, words };
  });
}

/** The words of each sentence outside a stretch: what a condition holds for. */
export function wordsOutside({ meanings, sentences }: Reading, first: number, next: number): Set<string> {
  const sentence = sentences.find(s => s.next > first);
  return new Set(
    meanings
      .slice(sentence?.first ?? 0, first)
      .concat(meanings.slice(next, sentence?.next ?? next))
      .filter(Boolean),
  );
}
