import { describe, expect, it } from 'vitest';
import { citedBook } from '../../src/citing/cited-book.ts';
import { findCitations } from '../../src/citing/find-citations.ts';
import type { Citation } from '../../src/model/citation.ts';
import { fixture } from '../carryover/fixture.ts';

const { joint } = fixture();
const book = citedBook(joint.from, joint.old);
const find = (text: string, more: { fileEdition?: string } = {}) =>
  findCitations(book, { start: 0, end: text.length, text, line: 1 }, { editions: ['2014', '2018', '2024'], ...more });

const shown = (c: Citation) =>
  c.number +
  (c.through ? `>${c.through.number}` : '') +
  (c.evidence === 'said' ? `@${c.edition}` : '') +
  (c.short ? '~' : '') +
  (c.certain ? '' : '?') +
  (c.title ? ` "${c.title}"` : '');

describe('citations that are found', () => {
  it.each([
    ['See 3.2.1 first.', ['3.2.1']],
    ['See 3.2.1, 3.2.2 and 3.2.3.', ['3.2.1', '3.2.2', '3.2.3']],
    ['3.2.1,3.2.2', ['3.2.1', '3.2.2']],
    ['3.2.1/3.2.2', ['3.2.1', '3.2.2']],
    ['3.2.1 to 3.2.3', ['3.2.1>3.2.3']],
    ['3.1.1-3.1.3', ['3.1.1>3.1.3']],
    ['3.1.1–3.1.3', ['3.1.1>3.1.3']],
    ['3.1.1-3', ['3.1.1>3.1.3']],
    ['items 3.1.1 and 3.1.3 through 3.1.5', ['3.1.1', '3.1.3>3.1.5']],
    ['Items 3.1 and 3.2', ['3.1', '3.2']],
    ['Work item 3.1', ['3.1']],
    ['work items 3.1 to 3.3', ['3.1>3.3']],
    ['section 3.2', ['3.2']],
    ['§ 3.2', ['3.2']],
    ['§3.2', ['3.2']],
    ['clause 3.2.1', ['3.2.1']],
    ['no. 3.2.1', ['3.2.1']],
    ['(see 3.2.1)', ['3.2.1']],
    ['[3.2.1]', ['3.2.1']],
    ['**3.2.1**', ['3.2.1']],
    ['Part 3', ['3']],
    ['in part 3 and elsewhere', ['3']],
    ['3.2.1 Overflow capacity', ['3.2.1 "Overflow capacity"']],
    ['3.2.1: Overflow capacity.', ['3.2.1 "Overflow capacity"']],
    ['Overflow capacity (3.2.1) is checked', ['3.2.1 "Overflow capacity"']],
    ['3.2 Overflow, house lot', ['3.2 "Overflow, house lot"']],
    ['3.2.1 Lid', ['3.2.1 "Lid"']],
    ['7.7.7 Overflow capacity', ['7.7.7? "Overflow capacity"']],
    ['3.1.2 Lid leaks', ['3.1.2']],
    ['3.2.1 (2014)', ['3.2.1@2014']],
    ['3.2.1 Overflow capacity (2018)', ['3.2.1@2018 "Overflow capacity"']],
    ['3.2.1 of the 2014 edition', ['3.2.1@2014']],
    ['3.2.1 and 3.2.2 of the 2014 edition', ['3.2.1@2014', '3.2.2@2014']],
    ['2018 edition, 3.2.1', ['3.2.1@2018']],
    ['In edition 2014, requirement 3.2.1 asked', ['3.2.1@2014']],
    ['3.2.1 (2011 edition)', ['3.2.1@2011']],
    ['done under 3.2.1 in 2014', ['3.2.1']],
    ['item 3.9.9 is wrong', ['3.9.9?']],
    ['3.4.10 and 3.4.1', ['3.4.10', '3.4.1']],
    ['3.2.1 and 4.5 m of pipe', ['3.2.1']],
    ['At 3.2.1, 300 mm is enough', ['3.2.1']],
    ['3.2.1 in the Workmanship Requirements for Rainwater Retrofits', ['3.2.1']],
    ['Item 3.2.1.', ['3.2.1']],
    ['3\u00ad.2.1 and 3.2\u00a0', ['3.2.1']],
    ['Figure 2 shows 3.2.1', ['3.2.1']],
    ['SEE 3.2.1', ['3.2.1']],
    ['items 1 and 3 of 3.1', ['3.1.1~', '3.1.3~']],
    ['item 2 of work item 3.1', ['3.1.2~']],
    ['items 1 to 3 of 3.1', ['3.1.1>3.1.3~']],
    ['3.1, items 1 and 3', ['3.1.1~', '3.1.3~']],
    ['3.1.1, .3 and .4', ['3.1.1', '3.1.3~', '3.1.4~']],
    ['Part III', ['3']],
    ['part three', ['3']],
    ['req. 3.2.1(b)', ['3.2.1']],
    ['WI 3.2', ['3.2']],
    ['see 3.2.', ['3.2']],
    ['(see also 3.2)', ['3.2']],
    ['according to 3.2 and 3.1', ['3.2', '3.1']],
    ['see 3.9.9', ['3.9.9?']],
    ['Spare jet: 3.2.1', ['3.2.1?']],
    ['see 3.2 .1', ['3.2.1?']],
    ['in a terrace row (3.2.1)', ['3.2.1']],
    ['in the present book 3.2.1', ['3.2.1']],
  ])('%j', (text, expected) => {
    expect(find(text).map(shown)).toEqual(expected);
  });
});

describe('numbers that are no citations', () => {
  it.each([
    'on 2018.03.04',
    'on 3.2.2018',
    'dated 3.2.1',
    'delivered 12/3',
    'v3.2.1 of the app',
    'version 3.2.1',
    'firmware 3.2.1',
    'pump-3.2.1',
    'tool@3.2.1',
    '3.2.1-beta',
    'plan-3.2.1.pdf',
    '3.2.1.pdf',
    'costs € 3.20',
    'costs 3.20 €',
    'costs EUR 3.2',
    '192.168.3.1',
    '3.2.1.192',
    'host 3.2.1.2',
    'item 3.2 m long',
    'a fall of 3.1 %',
    'flows at 3.2 L/s',
    'item 3.2 mm',
    'at 3.30 pm',
    'a fall of 1:80',
    'tel. 3.2.1',
    'call 0555 3.2.1',
    'Figure 3.2.1',
    'Figures 3.1 and 3.2.1',
    'Table 3.1',
    'section 3.2 of the Valley Drainage Code',
    '3.2.1 of the Valley Drainage Code',
    'Valley Drainage Code, section 3.2.1',
    'STM 4, 3.2.1',
    'VDC 12:2015, clause 3.2.1',
    '3.2.1 of VDC 12',
    'Part 3 of this course',
    'Part 3 of the Stonefield Test Methods',
    '3 butts',
    'item 3 on the list',
    'between 3.1 and 3.2',
    'about 3.2 of them',
    'https://example.org/3.2.1',
    '3.2.1a',
    'A3.2.1',
    '9.9.9 on its own',
    '3.2.1.9 on its own',
    '03.02.01',
    'page 3.2',
    'see 3.2 litres',
    'sections 3.2.1 and 3.2.2 of the Valley Drainage Code',
    "the plumbing code's 3.2.1",
    'the maker’s manual, clause 3.2.1',
    'contract clause 3.2.1',
    'the drainage code says in section 3.2.1 that',
    'HydroPlan 3.2.1',
    'on 3.2.24',
    'part no. 3.2.1',
    'ticket 3.2.1',
    'berth 3.2.1',
    'section 3.2.1 of this manual',
    '3.2.1 below',
  ])('%j', text => {
    expect(find(text).map(shown)).toEqual([]);
  });
});

it('gives offsets and lines of the document, also around soft hyphens', () => {
  const text = 'one\nsee 3.\u00ad2.1 three';
  const [found] = findCitations(book, { start: 100, end: 100 + text.length, text, line: 7 }, { editions: ['2018'] });
  expect(found).toMatchObject({ start: 108, end: 114, line: 8, number: '3.2.1' });
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
