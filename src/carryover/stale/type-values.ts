import type { Quantity } from '../../content/quantities/quantities.ts';
import type { TypeId } from '../../model/item.ts';
import type { InstallationType } from '../../model/settings.ts';
import { lightReading, quantitiesIn } from './light-reading.ts';

/** A value with the installation types that it is for. */
export interface TypeValue {
  readonly types: readonly TypeId[];
  /** In the words of the text, comparator included. */
  readonly to: string;
}

/**
 * The values that a sentence states by installation type, one of them the given one: "at least 500 mm of soil, or 450 mm
 * on a house lot" has 450 mm for house lots and at least 500 mm for all others. A type belongs to the value that it
 * follows; a value that no type follows is for the types that no other value claims, and ends the row unless it stands in
 * brackets.
 *
 * @param applies the types that the text applies to
 * @returns nothing where the sentence makes no difference between types
 */
export function valuesByType(
  text: string,
  value: string,
  names: readonly InstallationType[],
  applies: readonly TypeId[],
): readonly TypeValue[] {
  const reading = lightReading(text);
  for (const sentence of reading.sentences) {
    const all = quantitiesIn(reading, sentence);
    const own = all.findIndex(q => q.text === value);
    if (own < 0) continue;
    const ends = reading.tokens[sentence.next - 1]!.end;
    const siblings = all.filter(q => q.dimension === all[own]!.dimension && q.kind === all[own]!.kind);
    const claims = siblings.map((q, at) => ({
      q,
      types: typesIn(text.slice(q.end, siblings[at + 1]?.start ?? ends), names).filter(t => applies.includes(t)),
    }));
    return rowOf(text, claims, siblings.indexOf(all[own]!), applies);
  }
  return [];
}

interface Claim {
  readonly q: Quantity;
  readonly types: readonly TypeId[];
}

function rowOf(text: string, claims: readonly Claim[], own: number, applies: readonly TypeId[]): readonly TypeValue[] {
  const row = [claims[own]!];
  const before = ({ q }: Claim) => text.slice(Math.max(0, q.start - 40), q.start);
  const goesOn = (claim: Claim) => /(?:[,([]|\b(?:or|and))\s*$/i.test(before(claim));
  const isAside = (claim: Claim) => /[([]\s*$/.test(before(claim));
  for (let at = own; at > 0 && claims[at]!.types.length > 0 && goesOn(claims[at]!); at--) row.unshift(claims[at - 1]!);
  for (let at = own + 1; at < claims.length; at++) {
    if (claims[at]!.types.length > 0 && goesOn(claims[at]!)) row.push(claims[at]!);
    else if (!isAside(claims[at]!)) break;
  }
  const claimed = row.flatMap(c => c.types);
  if (claimed.length === 0) return [];
  const rest = applies.filter(t => !claimed.includes(t));
  const told = row.map(({ q, types }) => ({ types: types.length > 0 ? types : rest, to: q.text }));
  return told.filter(t => t.types.length > 0);
}

/** The installation types that words name, in singular or plural. */
export function typesIn(text: string, names: readonly InstallationType[]): readonly TypeId[] {
  const found = names.filter(({ name }) => {
    const written = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');
    return new RegExp(`(?<![\\p{L}\\p{N}])${written}(?:e?s)?(?![\\p{L}\\p{N}])`, 'iu').test(text);
  });
  return [...new Set(found.map(t => t.id))];
}
