import { describe, expect, it } from 'vitest';
import { dutyOfItems } from '../../src/content/links/duty-along.ts';
import { isPair } from '../../src/content/links/marks.ts';
import { evidenceIn, tellEvidence, tellInShort } from '../../src/model/duty-evidence.ts';
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
    const old = { title: 'Lid', text: 'Close it.', references: ['Table 1'] };
    expect(dutyOfItems([old], [{ ...old, references: ['Table 2'] }]).evidence.map(tellEvidence)).toEqual([
      'verification or references changed',
    ]);
    expect(dutyOfItems([old], [{ ...old, title: 'Gate' }]).evidence.map(tellEvidence)).toEqual([
      'the title names something else: "Lid" → "Gate"',
    ]);
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
