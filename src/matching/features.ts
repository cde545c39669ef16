import { assignPairs } from './assignment.ts';
import { type Bag, gainOf, overlapOf } from './bags.ts';
import { lexiconOf } from './lexicon.ts';
import { isKnownMeaning, likenessOfMeanings, type Meaning } from './meaning.ts';
import { numberEvidence } from './number-evidence.ts';
import type { Pairs } from './pairs.ts';
import { relatedShares } from './related.ts';
import { segmentEvidence } from './segment-evidence.ts';
import type { Sides } from './sides.ts';
import { surroundingsOf } from './structure.ts';

/**
 * What is said about a pair, one named number each; NaN where nothing can be said (no title, no siblings). The second
 * entry tells how belief must move when the number grows (1 up, -1 down, 0 either way), the third groups the features
 * for people who ask why.
 */
export const FEATURES = [
  ['cosine', 1, 'words'],
  ['cosineTitle', 1, 'title'],
  ['cosineText', 1, 'words'],
  ['cosinePhrases', 1, 'words'],
  ['oldInNew', 1, 'containment'],
  ['newInOld', 1, 'containment'],
  ['oldAsPieces', 1, 'containment'],
  ['newAsPieces', 1, 'containment'],
  ['pieceLeadOfOld', 1, 'containment'],
  ['pieceLeadOfNew', 1, 'containment'],
  ['oldTitleInNew', 1, 'title'],
  ['newTitleInOld', 1, 'title'],
  ['letters', 1, 'title'],
  ['meaning', 1, 'meaning'],
  ['meaningTitle', 1, 'meaning'],
  ['oldPiecesMeant', 1, 'meaning'],
  ['newPiecesMeant', 1, 'meaning'],
  ['sameTitle', 1, 'title'],
  ['sameHead', 1, 'title'],
  ['sameText', 1, 'words'],
  ['rarest', 1, 'words'],
  ['quantities', 1, 'quantities'],
  ['headings', 1, 'headings'],
  ['below', 1, 'below'],
  ['rankForOld', -1, 'rivals'],
  ['rankForNew', -1, 'rivals'],
  ['leadForOld', 1, 'rivals'],
  ['leadForNew', 1, 'rivals'],
  ['depth', 0, 'level'],
  ['leaf', 0, 'level'],
  ['length', 0, 'length'],
  ['mass', 0, 'length'],
  ['number', 1, 'number'],
  ['numberTrust', 1, 'number'],
  ['numberElsewhere', -1, 'number'],
  ['parents', 1, 'parents'],
  ['siblingsGo', 1, 'siblings'],
  ['siblingsCome', 1, 'siblings'],
  ['parts', 1, 'part'],
  ['children', 1, 'below'],
  ['foldsUp', 0, 'folding'],
  ['foldsDown', 0, 'folding'],
  ['joined', 0, 'folding'],
  ['shared', 0, 'folding'],
  ['neighbours', 1, 'neighbours'],
  ['rivalOfOld', -1, 'rivals'],
  ['rivalOfNew', -1, 'rivals'],
  ['gainForOld', 1, 'gain'],
  ['gainForNew', 1, 'gain'],
  ['renamedOld', 1, 'renamed words'],
  ['renamedNew', 1, 'renamed words'],
  ['relatedOld', 1, 'related words'],
  ['relatedNew', 1, 'related words'],
  ['core', 1, 'one-to-one'],
] as const satisfies readonly (readonly [string, -1 | 0 | 1, string])[];

export type Feature = (typeof FEATURES)[number][0];
export type Reason = (typeof FEATURES)[number][2];

/** One list of numbers for each feature, by pair. */
export type Evidence = Readonly<Record<Feature, Float32Array>>;

const WORD_FEATURES = FEATURES.slice(0, 32).map(([name]) => name);

/** What the texts of each pair say, and the first belief drawn from them. Computed once. */
export interface WordEvidence {
  readonly fields: Readonly<Partial<Record<Feature, Float32Array>>>;
  readonly likeness: Float32Array;
  readonly first: Float32Array;
}

export function wordEvidence(sides: Sides, pairs: Pairs): WordEvidence {
  const { from, to } = sides;
  const { rarity } = sides.words;
  const fields = Object.fromEntries(
    WORD_FEATURES.map(name => [name, new Float32Array(pairs.size).fill(Number.NaN)]),
  ) as Record<Feature, Float32Array>;
  const likeness = new Float32Array(pairs.size);
  const mostRare = Math.log(1 + sides.words.texts);
  const titleBearers = bearers(from.foldedTitle, to.foldedTitle);
  const headBearers = bearers(from.titleHead, to.titleHead);
  for (let p = 0; p < pairs.size; p++) {
    const i = pairs.from[p]!;
    const j = pairs.to[p]!;
    const [a, b] = [from.all[i]!, to.all[j]!];
    const whole = overlapOf(a, b, rarity);
    fields.cosine[p] = whole.cosine;
    fields.rarest[p] = whole.rarest / mostRare;
    if (a.mass > 0) fields.oldInNew[p] = whole.mass / a.mass;
    if (b.mass > 0) fields.newInOld[p] = whole.mass / b.mass;
    const titles = both(from.title[i]!, to.title[j]!);
    if (titles) {
      fields.cosineTitle[p] = overlapOf(titles[0], titles[1], rarity).cosine;
      fields.sameTitle[p] = from.foldedTitle[i] === to.foldedTitle[j] ? 1 / titleBearers(to.foldedTitle[j]!) : 0;
      fields.sameHead[p] = from.titleHead[i] === to.titleHead[j] ? 1 / headBearers(to.titleHead[j]!) : 0;
    }
    const texts = both(from.body[i]!, to.body[j]!);
    if (texts) {
      fields.cosineText[p] = overlapOf(texts[0], texts[1], rarity).cosine;
      fields.sameText[p] = from.foldedText[i] === to.foldedText[j] ? 1 : 0;
    }
    if (from.title[i]!.mass > 0) {
      fields.oldTitleInNew[p] = overlapOf(from.title[i]!, b, rarity).mass / from.title[i]!.mass;
    }
    if (to.title[j]!.mass > 0) fields.newTitleInOld[p] = overlapOf(to.title[j]!, a, rarity).mass / to.title[j]!.mass;
    fields.cosinePhrases[p] = overlapOf(from.phrases[i]!, to.phrases[j]!, sides.phrases.rarity).cosine;
    fields.letters[p] = overlapOf(from.letters[i]!, to.letters[j]!, sides.letters.rarity).cosine;
    const amounts = both(from.quantities[i]!, to.quantities[j]!);
    if (amounts) {
      const { mass } = overlapOf(amounts[0], amounts[1], sides.quantities.rarity);
      fields.quantities[p] = mass / Math.min(amounts[0].mass, amounts[1].mass);
    }
    const headings = both(from.headings[i]!, to.headings[j]!);
    if (headings) fields.headings[p] = overlapOf(headings[0], headings[1], rarity).cosine;
    const below = both(from.below[i]!, to.below[j]!);
    if (below) fields.below[p] = overlapOf(below[0], below[1], rarity).cosine;
    fields.depth[p] = to.depth[j]! - from.depth[i]!;
    fields.leaf[p] = (from.children[i]!.length > 0 ? 2 : 0) + (to.children[j]!.length > 0 ? 1 : 0);
    fields.length[p] = Math.log((1 + b.ids.length) / (1 + a.ids.length));
    fields.mass[p] = Math.log(1 + Math.min(a.ids.length, b.ids.length));
    meanings(sides, i, j, p, fields);
    likeness[p] = likenessOf(fields, p);
  }
  rankings(pairs, likeness, fields);
  const related = relatedShares(sides, pairs);
  fields.relatedOld = related.old;
  fields.relatedNew = related.new;
  Object.assign(fields, segmentEvidence(sides, pairs));
  return { fields, likeness, first: firstBeliefs(pairs, likeness) };
}

/** How many rows of the side with more of them bear a title: one that five rows bear says little about which is meant. */
function bearers(old: readonly string[], next: readonly string[]): (title: string) => number {
  const counts = [old, next].map(titles => {
    const count = new Map<string, number>();
    for (const title of titles) count.set(title, (count.get(title) ?? 0) + 1);
    return count;
  });
  return title => Math.max(...counts.map(count => count.get(title) ?? 0));
}

/** How near two rows are in what they are about: as wholes, by their titles, and each one's sentences to the other's. */
function meanings({ from, to }: Sides, i: number, j: number, p: number, f: Record<Feature, Float32Array>): void {
  const near = (a: Meaning, b: Meaning) =>
    isKnownMeaning(a) && isKnownMeaning(b) ? likenessOfMeanings(a, b) : Number.NaN;
  f.meaning[p] = near(from.meaning[i]!, to.meaning[j]!);
  f.meaningTitle[p] = near(from.titleMeaning[i]!, to.titleMeaning[j]!);
  const [old, next] = [from.segmentMeanings[i]!, to.segmentMeanings[j]!];
  const nearest = (own: readonly Meaning[], other: readonly Meaning[]) =>
    own.reduce((sum, a) => sum + Math.max(...other.map(b => likenessOfMeanings(a, b))), 0) / own.length;
  if (old.length === 0 || next.length === 0) return;
  f.oldPiecesMeant[p] = nearest(old, next);
  f.newPiecesMeant[p] = nearest(next, old);
}

function both(a: Bag, b: Bag): readonly [Bag, Bag] | undefined {
  return a.mass > 0 && b.mass > 0 ? [a, b] : undefined;
}

/** One number for how alike two texts are, before anything was learned about these two editions. */
function likenessOf(f: Record<Feature, Float32Array>, p: number): number {
  const or = (value: number, otherwise: number) => (Number.isNaN(value) ? otherwise : value);
  const contained = Math.max(or(f.oldInNew[p]!, 0), or(f.newInOld[p]!, 0));
  const words = 0.55 * f.cosine[p]! + 0.25 * contained + 0.1 * f.cosinePhrases[p]! + 0.1 * f.letters[p]!;
  const title = or(f.cosineTitle[p]!, words);
  return 0.75 * words + 0.25 * title;
}

/** Rank of each pair among those of its old and of its new row, and its lead over the best other one. */
function rankings(pairs: Pairs, likeness: Float32Array, f: Record<Feature, Float32Array>): void {
  const rank = (list: readonly number[], ranks: Float32Array, leads: Float32Array) => {
    const sorted = [...list].sort((a, b) => likeness[b]! - likeness[a]! || a - b);
    const [first, second] = [likeness[sorted[0] ?? 0] ?? 0, sorted[1] === undefined ? 0 : likeness[sorted[1]]!];
    sorted.forEach((p, at) => {
      ranks[p] = Math.min(at, 12);
      leads[p] = likeness[p]! - (at === 0 ? second : first);
    });
  };
  for (let i = 0; i + 1 < pairs.starts.length; i++) {
    const [start, end] = [pairs.starts[i]!, pairs.starts[i + 1]!];
    rank(
      Array.from({ length: end - start }, (_, at) => start + at),
      f.rankForOld,
      f.leadForOld,
    );
  }
  for (const list of pairs.ofNew) rank([...list], f.rankForNew, f.leadForNew);
}

function firstBeliefs(pairs: Pairs, likeness: Float32Array): Float32Array {
  const bestOfOld = new Float32Array(pairs.starts.length);
  const bestOfNew = new Float32Array(pairs.ofNew.length);
  for (let p = 0; p < pairs.size; p++) {
    const value = likeness[p]!;
    if (value > bestOfOld[pairs.from[p]!]!) bestOfOld[pairs.from[p]!] = value;
    if (value > bestOfNew[pairs.to[p]!]!) bestOfNew[pairs.to[p]!] = value;
  }
  return likeness.map((value, p) => {
    const best = Math.max(bestOfOld[pairs.from[p]!]!, bestOfNew[pairs.to[p]!]!, 1e-6);
    return (value / best) ** 6 / (1 + Math.exp(-14 * (value - 0.35)));
  });
}

/** All evidence on all pairs, given what is believed so far. */
export function evidenceOf(sides: Sides, pairs: Pairs, told: WordEvidence, beliefs: Float32Array): Evidence {
  const around = surroundingsOf(sides, pairs, beliefs);
  const renamed = lexiconOf(sides, pairs, beliefs);
  const number = numberEvidence(sides.from, sides.to, pairs, beliefs);
  return {
    ...(told.fields as Evidence),
    ...around,
    ...rivalsOf(sides, pairs, beliefs),
    number: number.worth,
    numberTrust: number.trust,
    numberElsewhere: number.elsewhere,
    renamedOld: renamed.old,
    renamedNew: renamed.new,
    core: coreOf(pairs, beliefs),
  };
}

/**
 * What a pair brings to the best one-to-one choice, in log-odds; 0 where it is not in it. Pairs less than one fifth
 * likely are left out. A bare yes would speak as loudly for two rows that are merely left over.
 */
function coreOf(pairs: Pairs, beliefs: Float32Array): Float32Array {
  const values = Float64Array.from(beliefs, b => Math.max(0, Math.log((b + 1e-4) / (1 - b + 1e-4)) + 1.5));
  const core = new Float32Array(pairs.size);
  for (const p of assignPairs(pairs.starts, pairs.to, values, pairs.ofNew.length)) if (p >= 0) core[p] = values[p]!;
  return core;
}

/** The strongest other belief of either row, and what this pair explains that the rival does not. */
function rivalsOf({ from, to, words }: Sides, pairs: Pairs, beliefs: Float32Array) {
  const rivalOfOld = new Float32Array(pairs.size);
  const rivalOfNew = new Float32Array(pairs.size);
  const gainForOld = new Float32Array(pairs.size).fill(Number.NaN);
  const gainForNew = new Float32Array(pairs.size).fill(Number.NaN);
  const bestTwo = (list: Iterable<number>): readonly [number, number] => {
    let first = -1;
    let second = -1;
    for (const p of list) {
      if (first < 0 || beliefs[p]! > beliefs[first]!) {
        second = first;
        first = p;
      } else if (second < 0 || beliefs[p]! > beliefs[second]!) second = p;
    }
    return [first, second];
  };
  const range = function* (start: number, end: number) {
    for (let p = start; p < end; p++) yield p;
  };
  const ofOld = Array.from({ length: from.rows.length }, (_, i) =>
    bestTwo(range(pairs.starts[i]!, pairs.starts[i + 1]!)),
  );
  const ofNew = pairs.ofNew.map(bestTwo);
  for (let p = 0; p < pairs.size; p++) {
    const i = pairs.from[p]!;
    const j = pairs.to[p]!;
    const pick = ([first, second]: readonly [number, number]) => (first === p ? second : first);
    const r = pick(ofOld[i]!);
    const s = pick(ofNew[j]!);
    rivalOfOld[p] = r < 0 ? 0 : beliefs[r]!;
    rivalOfNew[p] = s < 0 ? 0 : beliefs[s]!;
    if (r >= 0) gainForOld[p] = gainOf(from.all[i]!, to.all[j]!, to.all[pairs.to[r]!]!, words.rarity);
    if (s >= 0) gainForNew[p] = gainOf(to.all[j]!, from.all[i]!, from.all[pairs.from[s]!]!, words.rarity);
  }
  return { rivalOfOld, rivalOfNew, gainForOld, gainForNew };
}
