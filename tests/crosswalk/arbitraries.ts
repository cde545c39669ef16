import fc from 'fast-check';
import type { Crosswalk, LineageRecord, Link } from '../../src/model/crosswalk.ts';
import type { EditionIndex, Entry } from '../../src/model/edition.ts';
import { deepFreeze } from '../freeze.ts';

const TYPES = ['house', 'terrace', 'court'];

/** Flat editions of up to seven items with ids from a small pool, so that ids meet, vanish and come back. */
export function edition(name: string): fc.Arbitrary<EditionIndex> {
  return fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'), { maxLength: 7 }).chain(ids =>
    fc.array(fc.subarray(TYPES, { minLength: 1 }), { minLength: ids.length, maxLength: ids.length }).map(types =>
      deepFreeze({
        header: { name, erratum: 0, replaces: null, dates: {}, state: 'published' as const },
        settings: {
          title: 'T',
          language: 'en',
          levels: [{ name: 'Requirement' }],
          fileLevel: 1,
          numbering: { levels: [{ style: 'decimal' as const }], numbersUnique: true },
          installationTypes: TYPES.map(id => ({ id, name: id })),
          withdrawalReasons: [],
        },
        entries: ids.map(
          (id, at): Entry => ({
            id,
            number: String(at + 1),
            parent: null,
            level: 1,
            title: id,
            hash: id,
            obliges: true,
            appliesTo: types[at]!,
          }),
        ),
      }),
    ),
  );
}

const extent = fc.constantFrom('all' as const, 'part' as const, 'unknown' as const);
const certainty = fc.record({
  basis: fc.constantFrom('declared' as const, 'confirmed' as const, 'inferred' as const),
  confidence: fc.constantFrom(0.25, 0.5, 1),
});

const reason = fc.constantFrom('obsolete', 'too-narrow', 'law-governs');
const types = fc.option(fc.subarray(TYPES), { nil: undefined });

/** Any crosswalk between two editions' ids: heirs, withdrawals (each with a reason) and arrivals, none of them joined. */
export function crosswalk(
  from: readonly string[],
  to: readonly string[],
  names: [string, string],
): fc.Arbitrary<Crosswalk> {
  const pairs = from.flatMap(f => to.map(t => [f, t] as const));
  const ends: (readonly [string | null, string | null])[] = [
    ...pairs,
    ...from.map(f => [f, null] as const),
    ...to.map(t => [null, t] as const),
  ];
  return fc.subarray(ends).chain(chosen =>
    fc.tuple(...chosen.map(() => fc.tuple(extent, extent, certainty, types, reason))).map(details =>
      deepFreeze({
        from: names[0],
        to: names[1],
        links: chosen.map(([f, t], at): Link => {
          const [fromExtent, toExtent, sure, types, reason] = details[at]!;
          const link = { from: f, to: t, fromExtent, toExtent, ...sure, ...(types ? { types } : {}) };
          return t === null ? { ...link, reason } : link;
        }),
      }),
    ),
  );
}

/** Lineage of one step as people declare it: heirs in the newer edition, ends for some types beside them, or a reason. */
export function lineage(from: EditionIndex, to: EditionIndex): fc.Arbitrary<readonly LineageRecord[]> {
  const next = to.entries.map(e => e.id);
  return fc.subarray(from.entries.map(e => e.id)).chain(ids =>
    fc
      .tuple(
        ...ids.map(() =>
          fc.record({
            heirs: fc.subarray(next, { maxLength: Math.min(3, next.length) }),
            notSame: fc.boolean(),
            withdrawnFor: fc.subarray(TYPES),
            reason,
            other: fc.option(reason),
          }),
        ),
      )
      .map(said =>
        deepFreeze(
          ids.map((id, at): LineageRecord => {
            const { heirs, notSame, withdrawnFor, reason, other } = said[at]!;
            const had = from.entries.find(e => e.id === id)!.appliesTo!;
            const named = withdrawnFor.filter(t => had.includes(t));
            // An item that goes on nowhere may end for each of its types with another reason.
            const ends = heirs.length > 0 ? named : other ? had : [];
            const [first, ...more] = other ? ends : [];
            const also = more.length > 0 ? { alsoEnds: [{ types: more, reason: other! }] } : {};
            return {
              from: id,
              heirs: heirs.map(to => ({ to, fromExtent: 'unknown', toExtent: 'unknown' })),
              ...(notSame ? { notSame: true as const } : {}),
              ...(heirs.length === 0 || ends.length > 0 ? { reason } : {}),
              ...(ends.length > 0 ? { withdrawnFor: first === undefined ? ends : [first], ...also } : {}),
              basis: 'declared',
            };
          }),
        ),
      ),
  );
}
