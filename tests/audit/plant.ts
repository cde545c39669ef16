import type { RealPair } from './real-pairs.ts';

/**
 * Losses planted in heirs by rules of the surface alone: nothing of src/ is used, so that the judge does not share the
 * grammar of the judged. A phrase is taken out of the heir where the old text says it too.
 */
export interface Planted {
  readonly pair: RealPair;
  readonly kind: (typeof PLANTED_KINDS)[number];
  /** Taken out of the heir. */
  readonly phrase: string;
  /** The heir without it. */
  readonly to: string;
}

export const PLANTED_KINDS = [
  'quantity',
  'condition',
  'exception',
  'material',
  'document',
  'reference',
  'sentence',
] as const;

const NUMBER = `(?:\\d[\\d.,]*|one|two|three|four|five|six|seven|eight|nine|ten|twelve)`;
const UNITS = `(?:mm|cm|m²|m|km|kg|kN|kPa|°C|%|L|lx|hours?|minutes?|seconds?|days?|weeks?|months?|years?|times|persons?|bits?|characters|floors?|metres?|lux)`;
const MATERIALS = `steel|concrete|mortar|gravel|geotextile|copper|timber|wood|oak|plastic|rubber|glass|stone|sand|clay|brass|aluminium|zinc|paper|cloth|soap|detergent|water|oil|grease|mulch|turf|topsoil|brick|paint|sealant|felt|membrane|bitumen|ceramic|porcelain|silicone|wool|memory|stack|pointer|buffer|firmware|hardware|media|cookie|cache|certificate|password|credential|router|sensor|fan|hood|lamp|rope|door|handrail|brake`;
const DOCUMENTS = `drawings?|certificates?|records?|log|logbook|diary|plan|plans|policy|policies|procedures|report|reports|register|manual|statement|receipt|ticket|photographs?|agreement|agreements|schedule|inventory|documentation|list`;

const RULES: Record<Planted['kind'], RegExp> = {
  quantity: new RegExp(
    `(?:,? ?\\b(?:at least|at most|not less than|not more than|no more than|not exceeding|within|every|up to|more than|less than|for) )?\\b${NUMBER} ?${UNITS}(?![\\p{L}\\p{N}])`,
    'giu',
  ),
  condition: /,? ?\b(?:if|when|where|whenever|provided that|after|before|until|during|prior to) [^.,;:()]{12,140}/giu,
  exception: /,? ?\b(?:unless|except|other than|excluding|with the exception of) [^.;:()]{8,160}/giu,
  material: new RegExp(`\\b(?:[\\p{L}-]+ )?(?:${MATERIALS})s?\\b`, 'giu'),
  document: new RegExp(
    `(?:,? ?\\b(?:in|on|with|by|to|and) )?(?:\\b(?:a|an|the|its|written|signed|dated) )*\\b(?:${DOCUMENTS})\\b`,
    'giu',
  ),
  reference:
    /,? ?(?:\b(?:see|as in|in accordance with|to|by|of|under) )?(?:\b(?:table|figure|clause|section|annex|appendix|part) [\dA-Z][\d.]*\b|\b[A-Z]{2,6}-\d+(?:[.-]\d+)*(?:\(\d+\))?)/gu,
  sentence: /(?<=^|[.!?\n] ?)[A-Z][^.!?\n]{30,260}[.!?]/gu,
};

const SMALL = new Set(
  'the a an and or of at to in on is are be by for with that this which as it its not no from any all if when where before after until during prior unless except than other provided shall must'.split(
    ' ',
  ),
);
/** Words with a content, cut short so that plurals and endings meet. */
export function contentWords(text: string): Set<string> {
  const words = text.toLowerCase().match(/[\p{L}\p{N}]+(?:[.,]\d+)*/gu) ?? [];
  return new Set(words.filter(w => !SMALL.has(w)).map(w => (/^\d/.test(w) ? w : w.slice(0, 6))));
}

/** Candidates of one kind in one pair: what stands in the heir, in the old text as well, and nowhere else in the heir. */
export function candidates(pair: RealPair, kind: Planted['kind']): Planted[] {
  const old = contentWords(pair.from);
  const heir = contentWords(pair.to);
  // Heirs that otherwise restate the old text.
  if ([...old].filter(w => heir.has(w)).length < 0.5 * old.size) return [];
  const found: Planted[] = [];
  for (const match of pair.to.matchAll(RULES[kind])) {
    const phrase = match[0].trim();
    const said = [...contentWords(phrase)];
    if (said.length === 0) continue;
    const shared = said.filter(w => old.has(w)).length / said.length;
    const to = pair.to.slice(0, match.index) + pair.to.slice(match.index + match[0].length);
    const rest = contentWords(to);
    const still = said.filter(w => rest.has(w)).length / said.length;
    const whole = /^(?:quantity|material|document|reference)$/.test(kind);
    const gone = !rest.has(said.at(-1)!) || (kind === 'quantity' && still < 1);
    // One word or number has to be the same in both, and gone; of a clause, most of it.
    if (whole ? shared === 1 && gone : shared >= 0.7 && still <= 0.4) found.push({ pair, kind, phrase, to });
  }
  return found;
}

/** mulberry32: a small seeded generator of numbers from 0 up to 1. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Plants losses at random, kinds in turn, no more than two in one pair and each alone in its copy of the heir. */
export function plant(pairs: readonly RealPair[], wanted: number, seed: number): Planted[] {
  const random = seeded(seed);
  const pools = PLANTED_KINDS.map(kind =>
    shuffled(
      pairs.flatMap(p => candidates(p, kind)),
      random,
    ),
  );
  const used = new Map<RealPair, number>();
  const planted: Planted[] = [];
  for (let turn = 0; planted.length < wanted && pools.some(p => p.length > 0); turn++) {
    const pool = pools[turn % pools.length]!;
    for (let next = pool.pop(); next; next = pool.pop()) {
      const times = used.get(next.pair) ?? 0;
      if (times >= 2) continue;
      used.set(next.pair, times + 1);
      planted.push(next);
      break;
    }
  }
  return planted;
}

function shuffled<T>(list: readonly T[], random: () => number): T[] {
  const all = [...list];
  for (let i = all.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [all[i], all[j]] = [all[j]!, all[i]!];
  }
  return all;
}
