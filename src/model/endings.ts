import type { Ending, LineageRecord } from './crosswalk.ts';
import type { ItemId, TypeId } from './item.ts';

/** What an ending says besides whom it ends for. */
export const ENDING_WORDS = ['reason', 'governs', 'governsChecked', 'pointsTo', 'decision'] as const;

/** What a record says of ends, an ending a reason. Empty where the old item goes on for all of its types. */
export function endingsOf(record: LineageRecord): readonly Ending[] {
  if (record.withdrawnFor === undefined) {
    return record.heirs.length > 0 || record.reason === undefined ? [] : [wordsOf(record)];
  }
  return [{ types: record.withdrawnFor, ...wordsOf(record) }, ...(record.alsoEnds ?? [])];
}

/**
 * The record with these endings in place of its own. Endings that say the same are one; of several each needs its types.
 * Law: `withEndings(r, endingsOf(r))` says what `r` says.
 */
export function withEndings(record: LineageRecord, endings: readonly Ending[]): LineageRecord {
  const { withdrawnFor: _, alsoEnds: __, ...rest } = record;
  const bare = Object.fromEntries(Object.entries(rest).filter(([key]) => !isWord(key))) as unknown as LineageRecord;
  const [first, ...more] = united(endings);
  if (!first) return bare;
  const { types, ...words } = first;
  return {
    ...bare,
    ...(types ? { withdrawnFor: types } : {}),
    ...(more.length > 0 ? { alsoEnds: more.map(e => ({ ...e, types: e.types ?? [] })) } : {}),
    ...words,
  };
}

/** Endings without these types; one that ended for them alone is left out. */
export function withoutTypes(endings: readonly Ending[], types: readonly TypeId[]): readonly Ending[] {
  return endings.flatMap(({ types: had, ...words }): Ending[] => {
    if (had === undefined) return [words];
    const still = had.filter(t => !types.includes(t));
    return still.length > 0 ? [{ types: still, ...words }] : [];
  });
}

/** The record with what it points to led elsewhere, or (undefined) nowhere. */
export function withPointers(
  { alsoEnds, ...record }: LineageRecord,
  lead: (id: ItemId) => ItemId | undefined,
): LineageRecord {
  const led = <T extends Pick<Ending, 'pointsTo'>>({ pointsTo, ...said }: T) => {
    const to = pointsTo === undefined ? undefined : lead(pointsTo);
    return (to === undefined ? said : { ...said, pointsTo: to }) as T;
  };
  return { ...led(record), ...(alsoEnds ? { alsoEnds: alsoEnds.map(led) } : {}) };
}

function united(endings: readonly Ending[]): readonly Ending[] {
  const bySaying = new Map<string, Ending>();
  for (const ending of endings) {
    const words = wordsOf(ending);
    const said = JSON.stringify(words);
    const known = bySaying.get(said);
    const types = known?.types && ending.types ? [...new Set([...known.types, ...ending.types])] : ending.types;
    bySaying.set(said, types ? { types, ...words } : words);
  }
  return [...bySaying.values()];
}

/** What an ending says, without whom it ends for. */
export function wordsOf(said: Ending | LineageRecord): Omit<Ending, 'types'> {
  return Object.fromEntries(ENDING_WORDS.filter(w => said[w] !== undefined).map(w => [w, said[w]]));
}

const isWord = (key: string) => (ENDING_WORDS as readonly string[]).includes(key);
