import fc from 'fast-check';
import { expect, test } from 'vitest';
import { diffWords } from '../../src/text/word-diff.ts';

const side = (from: string, to: string, kept: 'removed' | 'added') =>
  diffWords(from, to)
    .filter(c => c.kind === 'same' || c.kind === kept)
    .map(c => c.text)
    .join('');

test('what is the same and what is removed make the old text, what is the same and added the new one', () => {
  const word = fc.constantFrom('at', 'least', '100', '1:80', 'mm', ',', ' ', '.', 'not', 'é', '\n');
  const text = fc.array(word, { maxLength: 40 }).map(words => words.join(' '));
  fc.assert(
    fc.property(text, text, (from, to) => {
      expect(side(from, to, 'removed')).toBe(from);
      expect(side(from, to, 'added')).toBe(to);
    }),
  );
});

test('a changed quantity is shown whole', () => {
  expect(diffWords('at least 2.5 m deep', 'at least 3.0 m deep')).toEqual([
    { kind: 'same', text: 'at least ' },
    { kind: 'removed', text: '2.5' },
    { kind: 'added', text: '3.0' },
    { kind: 'same', text: ' m deep' },
  ]);
});

test('a lone space between two changed words is drawn into the change', () => {
  expect(diffWords('shall be set', 'put it in').filter(c => c.kind === 'same')).toEqual([]);
});

test('equal texts have one stretch, empty ones none', () => {
  expect(diffWords('same', 'same')).toEqual([{ kind: 'same', text: 'same' }]);
  expect(diffWords('', '')).toEqual([]);
});

test('very long texts that differ everywhere are shown as removed and added whole', () => {
  const long = (word: string) => Array.from({ length: 3000 }, () => word).join(' ');
  expect(diffWords(long('old'), long('new'))).toHaveLength(2);
});

const moved = (from: string, to: string, kind: 'removed' | 'added') =>
  diffWords(from, to)
    .filter(c => c.kind === kind && c.moved)
    .map(c => c.text);

test('a phrase that stands elsewhere is marked as moved on both sides, whatever its capitals', () => {
  const from = 'Before the slab is poured, the clerk of works shall inspect the reinforcement and sign the sheet.';
  const to = 'The clerk of works shall inspect the reinforcement and sign the sheet before the slab is poured.';
  expect(moved(from, to, 'removed')).toEqual(['Before the slab is poured']);
  expect(moved(from, to, 'added')).toEqual(['before the slab is poured']);
});

test('what is exchanged on the spot, and two words, are no move', () => {
  expect(moved('Seal ALL THE JOINTS with tape.', 'Seal all the joints with tape.', 'removed')).toEqual([]);
  expect(moved('At night lock the gate.', 'Lock the gate at night.', 'removed')).toEqual([]);
});
