import { describe, expect, it } from 'vitest';
import { isPair, marksOf } from '../../src/content/links/marks.ts';
import { evidenceIn, tellEvidence, tellInShort } from '../../src/model/duty-evidence.ts';
import { smallEditions } from '../audit/small-editions.ts';
import { fixture } from '../carryover/fixture.ts';

const { joint, marks } = fixture();
const pairs = joint.crosswalk.links.filter(isPair);

describe('the evidence of a link', () => {
  it('is there wherever a direction is given, and nowhere that asks the same', () => {
    const found = pairs.map(marks);
    expect(
      found.filter(m => m.dutyByType.some(d => ['stricter', 'relaxed', 'mixed'].includes(d.duty))).length,
    ).toBeGreaterThan(1);
    for (const m of found) {
      for (const { type, duty } of m.dutyByType) {
        const directions = evidenceIn(m, type).map(e => e.direction);
        if (duty === 'stricter' || duty === 'relaxed') expect(directions).toContain(duty);
        if (m.wording !== 'substantive') expect(directions).toEqual([]);
      }
    }
  });

  it('is told once with all the types that it holds for', () => {
    for (const { evidence, dutyByType } of pairs.map(marks)) {
      expect(new Set(evidence.map(tellEvidence)).size).toBe(evidence.length);
      const going = dutyByType.filter(d => d.duty !== 'ends').map(d => d.type);
      for (const { types } of evidence) expect(going).toEqual(expect.arrayContaining([...types]));
    }
  });

  it('says why a text has to be read although no word of it changed', () => {
    const told = (title: string, references: readonly string[]) => {
      const { joint, texts } = smallEditions(
        [['1', 'Lid', 'Close it.', undefined, { references: ['Table 1'] }]],
        [['2', title, 'Close it.', undefined, { references }]],
        [['1', '2']],
      );
      return joint.crosswalk.links
        .filter(isPair)
        .flatMap(link => marksOf(joint, link, texts).evidence.map(tellEvidence));
    };
    expect(told('Lid', ['Table 2'])).toEqual(['other references: "Table 1" → "Table 2"']);
    expect(told('Gate', ['Table 1'])).toEqual(['the title names something else: "Lid" → "Gate"']);
  });
});

describe('evidence in a sentence', () => {
  it('is the first three pieces with their directions, long phrases cut in their middle', () => {
    const piece = { direction: 'stricter', what: 'demand added', from: '', to: 'word '.repeat(40).trim() } as const;
    const told = tellInShort([piece, { ...piece, direction: 'unclear', to: 'b' }, piece, piece, piece]);
    expect(told).toMatch(/^demand added: "word .* … .*word" \(stricter\); demand added: "b"; .*; and 2 more$/);
    expect(told.length).toBeLessThan(320);
    expect(tellInShort([])).toBe('');
  });
});
