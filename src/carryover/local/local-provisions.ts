import { compareTexts } from '../../content/compare-texts.ts';
import { changedValues } from '../../content/lost/changed-values.ts';
import type { Quantity } from '../../content/quantities/quantities.ts';
import { sameValue } from '../../content/quantities/same-value.ts';
import { type Reading, readText, said } from '../../content/reading/reading.ts';
import type { Duty } from '../../model/crosswalk.ts';

/**
 * One thing that is asked, as the catalog and the local text ask it; `` where one of them is silent. `local` tells how
 * the local text stands to the catalog: it asks more, less, the same, something of its own, nothing, or it cannot be
 * told.
 */
export interface Provision {
  readonly catalog: string;
  readonly place: string;
  readonly local: 'stricter' | 'relaxed' | 'same' | 'adds' | 'silent' | 'unclear';
  /** Both values are bounds, and no value keeps to both. */
  readonly contradicts?: true;
}

/**
 * Sets a requirement beside a local text, provision by provision. Values of the same thing are compared by putting the
 * local value into the requirement's own sentence and comparing both: a local rule is never worded like the catalog, and
 * its words as a whole would always be unclear.
 */
export function localProvisions(requirement: string, local: string): readonly Provision[] {
  const catalog = readText(requirement);
  const place = readText(withoutReplaced(local));
  const paired = pairValues(catalog, place);
  const used = new Set(paired.flatMap(p => (p.to ? [p.to] : [])));
  const found: Provision[] = paired.map(({ q, to }) =>
    to
      ? { catalog: around(catalog, q), place: around(place, to), ...compareValues(catalog, q, place, to) }
      : { catalog: around(catalog, q), place: '', local: 'silent' as const },
  );
  const open = paired.filter(p => !p.to).map(p => p.q);
  for (const q of measuredIn(place)) {
    if (used.has(q)) continue;
    // A value of a dimension that the catalog bounds too, perhaps of the same thing in other words: nobody can tell.
    const perhaps = open.some(o => o.dimension === q.dimension);
    found.push({ catalog: '', place: around(place, q), local: perhaps ? 'unclear' : 'adds' });
  }
  found.push(...wordedOnly(catalog, place));
  return found;
}

/** Equal values of the same next word first: what changed is then sought among the others only. */
function pairValues(catalog: Reading, place: Reading): { readonly q: Quantity; readonly to?: Quantity }[] {
  const left = new Set(measuredIn(place));
  const equal = new Map<Quantity, Quantity>();
  for (const q of measuredIn(catalog)) {
    const to = [...left].find(o => sameValue(q, o) && wordBehind(catalog, q) === wordBehind(place, o));
    if (!to) continue;
    equal.set(q, to);
    left.delete(to);
  }
  const others = measuredIn(catalog).filter(q => !equal.has(q));
  const changed = changedValues(
    catalog,
    others,
    [...left].map(q => ({ heir: place, q })),
  );
  return [...[...equal].map(([q, to]) => ({ q, to })), ...changed].sort((a, b) => a.q.start - b.q.start);
}

const wordBehind = ({ meanings }: Reading, { spanNext }: Quantity) =>
  meanings.slice(spanNext, spanNext + 4).find(Boolean);

/** "9 in the morning" is a time of day, not nine inches. */
function isTimeOfDay({ text }: Reading, { end }: Quantity): boolean {
  return /^\s*(?:in\s+)?(?:the\s+)?(?:morning|afternoon|evening|night|o'clock)\b/i.test(text.slice(end));
}

const measuredIn = (reading: Reading) => reading.quantities.filter(q => !isTimeOfDay(reading, q));

/** "820 mm instead of 900 mm" asks for 820 mm; what it replaces is the catalog's. */
function withoutReplaced(text: string): string {
  return text.replace(/\s+(?:instead of|rather than|in place of)\s+[^,.;]*?\d[\d.,]*\s*\S*?(?=[,.;]|\s|$)/gi, '');
}

function compareValues(catalog: Reading, a: Quantity, place: Reading, b: Quantity) {
  if (sameValue(a, b) && a.open === b.open) return { local: 'same' as const };
  const bare = b.comparator === 'exact' && b.low === b.high;
  const [start, end] = bare ? stretchOf(catalog, a.first, a.next) : [a.start, a.end];
  const [from, to] = bare ? stretchOf(place, b.first, b.next) : [b.start, b.end];
  const put = `${catalog.text.slice(0, start)}${place.text.slice(from, to)}${catalog.text.slice(end)}`;
  const [put1] = readText(put).quantities.filter(q => q.start >= Math.min(start, a.start));
  const duty: Duty = put1 && sameValue(a, put1) ? 'same' : compareTexts(catalog.text, put).duty;
  const apart = !bare && a.comparator !== 'exact' && (b.low > a.high || b.high < a.low);
  if (apart) return { local: 'unclear' as const, contradicts: true as const };
  return { local: duty === 'mixed' || duty === 'unclear' ? ratingDirection(a, b) : duty };
}

/** Ratings such as R-8 are made to be compared: without a word that bounds them, the rating is the least that is asked. */
function ratingDirection(a: Quantity, b: Quantity): 'stricter' | 'relaxed' | 'unclear' {
  if (a.kind !== 'rating' || b.kind !== 'rating' || a.dimension !== 'R-value') return 'unclear';
  return b.low > a.low ? 'stricter' : 'relaxed';
}

function stretchOf({ tokens }: Reading, first: number, next: number): [number, number] {
  return [tokens[first]!.start, tokens[next - 1]!.end];
}

/** Sentences in which nothing is measured: said by the other text as well, or not to be compared by a program. */
function wordedOnly(catalog: Reading, place: Reading): Provision[] {
  const found: Provision[] = [];
  const stem = (reading: Reading, first: number, next: number) => reading.meanings.slice(first, next).filter(Boolean);
  const all = new Set(stem(catalog, 0, catalog.tokens.length));
  const addressed = new Set(stem(place, 0, place.tokens.length));
  for (const sentence of place.sentences) {
    if (measuredIn(place).some(q => q.first >= sentence.first && q.first < sentence.next)) continue;
    const words = stem(place, sentence.first, sentence.next);
    if (words.length === 0) continue;
    const timed = place.quantities.some(q => q.first >= sentence.first && q.first < sentence.next);
    const covered = !timed && words.every(w => all.has(w));
    found.push({ catalog: '', place: said(place, sentence), local: covered ? 'same' : 'unclear' });
  }
  for (const sentence of catalog.sentences) {
    if (measuredIn(catalog).some(q => q.first >= sentence.first && q.first < sentence.next)) continue;
    const words = stem(catalog, sentence.first, sentence.next);
    if (words.length === 0) continue;
    const shared = words.filter(w => addressed.has(w)).length / words.length;
    found.push({ catalog: said(catalog, sentence), place: '', local: shared >= 0.5 ? 'unclear' : 'silent' });
  }
  return found;
}

const WORDS_AROUND = 6;

/** A value with a few words to each side, enough to see what it is of. */
function around(reading: Reading, q: Quantity): string {
  const sentence = reading.sentences.find(s => s.next > q.first) ?? { first: 0, next: reading.tokens.length };
  const first = Math.max(sentence.first, q.spanFirst - WORDS_AROUND);
  const next = Math.min(sentence.next, q.spanNext + WORDS_AROUND);
  return `${first > sentence.first ? '… ' : ''}${said(reading, { first, next })}${next < sentence.next ? ' …' : ''}`;
}
