import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { citedBook } from '../../src/citing/cited-book.ts';
import { findCitations } from '../../src/citing/find-citations.ts';
import type { Citation } from '../../src/model/citation.ts';
import { fixture } from '../carryover/fixture.ts';

const sentences = JSON.parse(
  readFileSync(join(import.meta.dirname, 'labelled', 'sentences', 'sentences.json'), 'utf8'),
) as { text: string; found: string[] }[];

const { joint } = fixture();
const book = citedBook(joint.from, { places: joint.old });
const find = (text: string, more: { fileEdition?: string } = {}) =>
  findCitations(book, [{ start: 0, end: text.length, text, line: 1 }], {
    editions: ['2014', '2018', '2024'],
    ...more,
  })[0]!;

const shown = (c: Citation) =>
  c.number +
  (c.through ? `>${c.through.number}` : '') +
  (c.evidence === 'said' ? `@${c.edition}` : '') +
  (c.short ? '~' : '') +
  (c.certain ? '' : '?') +
  (c.title ? ` "${c.title}"` : '');

describe('citations that are found', () => {
  it.each(sentences.filter(s => s.found.length > 0))('$text', ({ text, found }) => {
    expect(find(text).map(shown)).toEqual(found);
  });
});

describe('numbers that are no citations', () => {
  it.each(sentences.filter(s => s.found.length === 0))('$text', ({ text }) => {
    expect(find(text).map(shown)).toEqual([]);
  });
});

it('gives offsets and lines of the document, also around soft hyphens', () => {
  const text = 'one\nsee 3.\u00ad2.1 three';
  const [found] = findCitations(book, [{ start: 100, end: 100 + text.length, text, line: 7 }], { editions: ['2018'] });
  expect(found![0]).toMatchObject({ start: 108, end: 114, line: 8, number: '3.2.1' });
});

it('takes the edition from the file where the text does not say one', () => {
  expect(find('3.2.1 (2018)', { fileEdition: '2014' })).toMatchObject([{ edition: '2018', evidence: 'said' }]);
  expect(find('3.2.1', { fileEdition: '2014' })).toMatchObject([{ edition: '2014', evidence: 'file' }]);
  expect(find('3.2.1')).toMatchObject([{ edition: '2018', evidence: 'given' }]);
});

it('lets a bracket behind a list speak for the earlier members only where it stops the run', () => {
  const editions = (text: string, fileEdition?: string) =>
    find(text, fileEdition ? { fileEdition } : {}).map(c => c.edition);
  expect(editions('3.2.1 and 3.2.2 (2014)')).toEqual(['2014', '2014']);
  expect(editions('3.2.1 and 3.2.2 (2018)', '2014')).toEqual(['2014', '2018']);
  expect(editions('3.2.1 and 3.2.2 of the 2018 edition', '2014')).toEqual(['2018', '2018']);
});

it('answers a long text without letters quickly', () => {
  const start = performance.now();
  find(`${'3.'.repeat(20_000)} ${'('.repeat(20_000)} ${'a '.repeat(50_000)} ${'1 '.repeat(50_000)}`);
  expect(performance.now() - start).toBeLessThan(20_000);
});

describe('an edition whose items have numbers of two segments', () => {
  const entries = [
    ['1', 'Ground', 1],
    ['1.1', 'Bark', 2],
    ['1.2', 'Sand', 2],
    ['2', 'Swings', 1],
    ['2.1', 'Posts', 2],
    ['2.2', 'Seats', 2],
    ['2.3', 'Chains', 2],
  ] as const;
  const parents = new Map([
    ['1.1', '1'],
    ['1.2', '1'],
    ['2.1', '2'],
    ['2.2', '2'],
    ['2.3', '2'],
  ]);
  const small = citedBook({
    ...joint.from,
    settings: { ...joint.from.settings, title: 'Rules for Yards', levels: joint.from.settings.levels.slice(0, 2) },
    entries: entries.map(([number, title, level]) => ({
      ...joint.from.entries[0]!,
      id: `i${number}`,
      number,
      title,
      level,
      parent: parents.has(number) ? `i${parents.get(number)}` : null,
    })),
  } as typeof joint.from);

  it('is cited by clause and number, whatever the next paragraph says', () => {
    const passages = ['See clause 2.3.', 'Bark is replaced within two weeks, under 1.10 as before.'].map(
      (text, at) => ({
        start: 100 * at,
        end: 100 * at + text.length,
        text,
        line: at + 1,
      }),
    );
    const [first] = findCitations(small, passages, { editions: ['2018'] });
    expect(first!.map(shown)).toEqual(['2.3']);
  });
});

it.each([
  ['blank lines', `${'\n'.repeat(40_000)}3.2.1`],
  ['numbers in one line', '3.2.1 and '.repeat(4_000)],
  ['spaces', `${' '.repeat(40_000)}3.2.1`],
])('is not slowed down by %s', (_, text) => {
  find(text);
});

it('doubts a number beside which the title stands that only another edition prints there', () => {
  const text = '3.2.1 Capacity of the overflow';
  const others = [citedBook(joint.to, { places: joint.new })];
  const [found] = findCitations(book, [{ start: 0, end: text.length, text, line: 1 }], { editions: ['2018'], others });
  expect(found).toMatchObject([
    { number: '3.2.1', certain: false, why: 'the title beside it is that of edition 2024' },
  ]);
});

describe('an edition whose levels have no names', () => {
  const { settings } = joint.from;
  const unnamed = {
    ...joint.from,
    settings: { ...settings, levels: settings.levels.map((level, at) => ({ ...level, name: `Level ${at + 1}` })) },
  };
  const plain = citedBook(unnamed, { places: joint.old });

  it.each(['New crews begin with Part 3.', 'Chapter 3 is about storage.'])('is cited by its parts: %s', text => {
    const [found] = findCitations(plain, [{ start: 0, end: text.length, text, line: 1 }], { editions: ['2018'] });
    expect(found!.map(c => c.number)).toEqual(['3']);
  });
});

it('knows the book by its whole title before a number, in words or as one name', () => {
  const named = { ...joint.from, settings: { ...joint.from.settings, title: 'Rain Policy' } };
  const own = citedBook(named, { places: joint.old });
  const shownIn = (text: string) =>
    findCitations(own, [{ start: 0, end: text.length, text, line: 1 }], { editions: ['2018'] })[0]!.map(shown);
  expect(shownIn('See-Also: rain-policy 3.2.1')).toEqual(['3.2.1']);
  expect(shownIn('The overflow is in rain-policy 3.2.')).toEqual(['3.2']);
  expect(shownIn('The overflow is in Rain Policy 3.2.')).toEqual(['3.2']);
  expect(shownIn('See-Also: storm-rain-policy 3.2.1')).toEqual([]);
});
