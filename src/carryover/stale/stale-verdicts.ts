import type { Quantity } from '../../content/quantities/quantities.ts';
import type { Stretch } from '../../content/reading/sentences.ts';
import type { ItemId } from '../../model/item.ts';
import { type LightReading, quantitiesIn, sizesOf, stemsIn } from './light-reading.ts';
import type { OldSaying } from './old-sayings.ts';
import type { Quote } from './stale-quotes.ts';
import type { Teaching } from './taught.ts';
import type { TypeValue } from './type-values.ts';

/** That something is out of date, with what stands in its place where that is known. */
export interface Stale {
  readonly old: OldSaying;
  readonly valueNow?: string;
  /** Where the newer edition states values by installation type instead. */
  readonly valuesNow?: readonly TypeValue[];
  /** Quoted, and the newer edition asks the same in other words. */
  readonly onlyWords?: true;
}

/** A sentence of a passage. */
export interface Said {
  readonly reading: LightReading;
  readonly sentence: Stretch;
}

type Saying = (id: ItemId) => OldSaying | undefined;

/** A teaching that is weaker tells of the same things without telling the same. */
const TELLS_VALUE = { score: 0.38, shared: 3 };
const TELLS_WHOLE = { score: 0.5, told: 0.45, shared: 4 };
/** What the newer edition teaches nearly as well is not out of date. */
const AS_WELL = 0.8;
/** Teachings this near to the best may be meant instead of it. */
const RIVAL = 0.85;
/** Share of the words of a quotation that must be missing in the newer texts before its sense has gone. */
const SENSE_GONE = 0.34;

/**
 * Whether a value that an old requirement states is out of date: nothing that follows it states a value of this size. A
 * sentence that states a newer value as well tells of the change.
 */
export function staleValue({ reading, sentence }: Said, q: Quantity, old: OldSaying): Stale | undefined {
  if (old.heirs.length === 0) return undefined;
  const gone = goneFrom(old, reading, q);
  const tellsChange = quantitiesIn(reading, sentence).some(
    other =>
      other.dimension === q.dimension &&
      sizesOf(reading, other).some(size => old.sizesNow.has(size) && !old.sizes.has(size)),
  );
  return gone.length === 0 || tellsChange ? undefined : withValueNow(old, gone[0]!);
}

/** The same of a sentence that cites nothing: the requirement that it tells best must state the value, and all its twins. */
export function staleRetoldValue(
  said: Said,
  q: Quantity,
  saying: Saying,
  teachings: readonly Teaching[],
  teachingsNow: readonly Teaching[],
): Stale | undefined {
  const sizes = sizesOf(said.reading, q);
  const tells = (t: Teaching) => sizes.some(size => t.sizes.has(size));
  const strong = teachings.filter(t => t.score >= TELLS_VALUE.score && t.shared >= TELLS_VALUE.shared && tells(t));
  const best = strong[0]?.score ?? Number.POSITIVE_INFINITY;
  if (teachingsNow.some(t => tells(t) && t.score >= AS_WELL * best)) return undefined;
  const twins = strong.filter(t => t.score >= RIVAL * best).map(t => saying(t.id)!);
  return firstIfAll(twins.map(old => (old.withdrawal ? { old } : staleValue(said, q, old))));
}

/** A withdrawn requirement that a sentence tells as a whole, though it cites nothing. */
export function staleRetold(
  saying: Saying,
  teachings: readonly Teaching[],
  teachingsNow: readonly Teaching[],
): Stale | undefined {
  const best = teachings[0];
  if (!best || best.score < TELLS_WHOLE.score || best.told < TELLS_WHOLE.told) return undefined;
  if (best.shared < TELLS_WHOLE.shared || teachingsNow.some(t => t.score >= AS_WELL * best.score)) return undefined;
  const old = saying(best.id)!;
  return old.withdrawal ? { old } : undefined;
}

/**
 * Words of an old text that no newer text has in a row. Outside quotation marks they are out of date only with their
 * sense: a speaker who happens to use the old words for what is still asked makes no mistake.
 */
export function staleQuote(
  reading: LightReading,
  quote: Quote,
  saying: Saying,
  cited: ReadonlySet<ItemId>,
): Stale | undefined {
  const meant = quote.ids.some(id => cited.has(id)) ? quote.ids.filter(id => cited.has(id)) : quote.ids;
  const stems = [...stemsIn(reading, quote)];
  const values = quantitiesIn(reading, quote);
  const verdicts = meant.map((id): Stale | undefined => {
    const old = saying(id)!;
    // A withdrawn requirement that is cited is on the list of citations already.
    if (old.withdrawal) return cited.has(id) ? undefined : { old };
    if (old.heirs.length === 0) return undefined;
    const gone = values.flatMap(q => goneFrom(old, reading, q));
    if (gone.length > 0) return withValueNow(old, gone[0]!);
    const lost = stems.filter(stem => !old.stemsNow.has(stem)).length;
    if (lost >= SENSE_GONE * stems.length) return { old };
    return quote.marked ? { old, onlyWords: true } : undefined;
  });
  return firstIfAll(verdicts);
}

/** Twins say the same: while one of them still holds, the passage may mean that one. */
function firstIfAll(verdicts: readonly (Stale | undefined)[]): Stale | undefined {
  return verdicts.every(v => v !== undefined) ? verdicts[0] : undefined;
}

/** The sizes of a value that the old text states and nothing that follows it does. */
function goneFrom(old: OldSaying, reading: LightReading, q: Quantity): readonly string[] {
  // "Grit 2/6" is read as a share in one sentence and as a name in another.
  const words = reading.tokens.slice(q.first, q.next).map(t => t.low);
  if (old.saysNow(words.join(' '))) return [];
  return sizesOf(reading, q).filter(size => old.sizes.has(size) && !old.sizesNow.has(size));
}

function withValueNow(old: OldSaying, size: string): Stale {
  const { to: valueNow, byType: valuesNow } = old.valueNow(size) ?? {};
  return { old, ...(valueNow === undefined ? {} : { valueNow }), ...(valuesNow ? { valuesNow } : {}) };
}
