import { expect, test } from 'vitest';
import { idsOneSlipAway, isMistypedId, namesInQuery, pointedNumber } from '../../src/search/names.ts';
import { looksLikeNumber, numberPrefixes, searchTerms } from '../../src/search/terms.ts';

test('a number stays whole', () => {
  expect(searchTerms('See 3.2.1.4 and A.1, at 1:80.')).toEqual(['see', '3.2.1.4', 'a.1', 'at', '1:80']);
});

test('a number with a hyphen is found whole and by its first piece', () => {
  expect(searchTerms('3.2.14-c')).toEqual(expect.arrayContaining(['3.2.14-c', '3.2.14']));
});

test('a dash of any kind is a hyphen', () => {
  expect(searchTerms('3.2.14\u2013c')).toContain('3.2.14-c');
});

test('words that turn a requirement into another one are kept', () => {
  const kept = ['not', 'must', 'should', 'may', 'all', 'only', 'shall', 'no', 'least', 'most'];
  expect(searchTerms(kept.join(' '))).toEqual(kept);
});

test('the beginnings of a number end at its segments', () => {
  expect(numberPrefixes('3.2.14-c')).toEqual(['3', '3.2', '3.2.14']);
  expect(numberPrefixes('7')).toEqual([]);
});

test('a word is no number, a number with letters is one', () => {
  expect(['overflow', 'a', 'not-verifiable'].filter(looksLikeNumber)).toEqual([]);
  expect(['4', '4.2', 'a.1', '22.1.3.3', '3.2.14-c'].filter(looksLikeNumber)).toHaveLength(5);
});

test('signs around a number are dropped', () => {
  expect(namesInQuery('§ 4.2.3.')).toContain('4.2.3');
  expect(namesInQuery('(4.2.3)')).toEqual(['4.2.3']);
  expect(namesInQuery('4.2.3 terrace')).toEqual(['4.2.3 terrace', '4.2.3']);
});

test('commas, hyphens and blanks between the segments of a number are read as points, other texts are left alone', () => {
  const typed = ['4,1,3,3', '4 1 3 3', '4-1-3-3', '4.1,3', 'A,1'];
  expect(typed.map(pointedNumber)).toEqual(['4.1.3.3', '4.1.3.3', '4.1.3.3', '4.1.3', 'a.1']);
  const others = ['4.1.3.3', '4', '4.2, 5.1', '4.2 5.1', 'gutter 3', '3.2.14-c', '2 m'];
  expect(others.map(pointedNumber)).toEqual(others.map(() => undefined));
});

test('an id with a wrong character is seen as mistyped, a word is not', () => {
  expect(isMistypedId('v6m2hm1g')).toBe(true);
  expect(isMistypedId('v6m2hm1f')).toBe(false);
  expect(isMistypedId('terraces')).toBe(false);
  expect(isMistypedId('20240701')).toBe(false);
});

test('the id that was meant is one slip away', () => {
  expect(idsOneSlipAway('v6m2hm1g', ['v6m2hm1f', 'xxxxxxxx'])).toEqual(['v6m2hm1f']);
  expect(idsOneSlipAway('6vm2hm1f', ['v6m2hm1f'])).toEqual(['v6m2hm1f']);
});
