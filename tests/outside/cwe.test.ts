import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type ReadCrosswalk, readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { isPair } from '../../src/content/links/marks.ts';
import { fieldChanges } from '../../src/content/wording/changes.ts';
import { readEdition } from '../../src/store/read.ts';
import { asRow, loggedAfter, weaknessesOf } from './cwe.ts';
import { newCatalog } from './new-catalog.ts';

// Source: cwe-sdk 1.1.6 (CWE 4.6 of 2021-10-28) and 1.1.19 (CWE 4.15), raw/cwe-dictionary.json, whose entries carry the
// publisher's own log of what was changed when. Figures of CHECKS.md: 12 renamed, 77 moved, 495 descriptions changed.

describe("CWE 4.6 to 4.15 against the publisher's own log", () => {
  const kept = newCatalog();
  const newest = weaknessesOf('4.15');
  let crosswalk: ReadCrosswalk;
  /** Ids of the entries that both releases have and whose log, after 4.6, names one of these. */
  const logged = (...what: string[]) =>
    newest
      .filter(w => crosswalk.joint.old.get(w.attr['@_ID']) && what.some(x => loggedAfter(w, '2021-10-28').has(x)))
      .map(w => w.attr['@_ID'])
      .sort();
  let changed: (field: 'title' | 'text') => string[];

  beforeAll(async () => {
    await kept.add('4.6', weaknessesOf('4.6').map(asRow));
    await kept.add('4.15', newest.map(asRow));
    const catalog = await kept.open();
    crosswalk = await readCrosswalk(catalog, '4.6', '4.15');
    const [from, to] = [await readEdition(catalog, '4.6'), await readEdition(catalog, '4.15')];
    const after = new Map(to.items.map(i => [i.id, i]));
    const changes = new Map(from.items.map(i => [i.id, fieldChanges(i, after.get(i.id)!).map(c => c.field)]));
    changed = field => [...changes].flatMap(([id, fields]) => (fields.includes(field) ? [id] : [])).sort();
  });
  afterAll(() => kept.remove());

  it('keeps all 947 entries and adds 17', () => {
    const { joint } = crosswalk;
    expect([joint.from.entries.length, joint.to.entries.length]).toEqual([947, 964]);
    expect(joint.from.entries.filter(e => joint.fateOfOld(e.id) === 'kept')).toHaveLength(947);
    expect(joint.to.entries.filter(e => joint.fateOfNew(e.id) === 'new')).toHaveLength(17);
  });

  it('finds the 12 renamed entries that the log names, and no other', () => {
    expect(changed('title')).toHaveLength(12);
    expect(changed('title')).toEqual(logged('Name'));
  });

  it('finds 77 moved entries, and the log says of each that its relationships changed', () => {
    const moved = crosswalk.joint.crosswalk.links.filter(isPair).filter(l => crosswalk.marks(l).moved);
    const relations = new Set(logged('Relationships'));
    expect(moved).toHaveLength(77);
    expect(moved.filter(l => !relations.has(l.from))).toEqual([]);
  });

  // The log says Description also where only the extended description was changed, so it names more than these.
  it('finds 495 changed descriptions, and the log names every one of them', () => {
    const descriptions = new Set(logged('Description'));
    expect(changed('text')).toHaveLength(495);
    expect(changed('text').filter(id => !descriptions.has(id))).toEqual([]);
  });

  it('calls no entry reworded whose name and description are the same', () => {
    const different = [...new Set([...changed('title'), ...changed('text')])].sort();
    const reworded = crosswalk.joint.crosswalk.links.filter(isPair).filter(l => crosswalk.marks(l).wording !== 'same');
    expect(reworded.map(l => l.from).sort()).toEqual(different);
  });
});
