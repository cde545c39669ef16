import { describe, expect, it } from 'vitest';
import { spreadsheetDamage } from '../../src/matching/spreadsheet-damage.ts';

const told = (...numbers: string[]) =>
  spreadsheetDamage(numbers.map((number, at) => ({ number, file: 'old.csv', line: at + 2 }))).map(
    f => `${f.rule} ${f.place!.line}`,
  );
const sentences = (...numbers: string[]) =>
  spreadsheetDamage(numbers.map((number, at) => ({ number, file: 'old.csv', line: at + 2 }))).map(f => f.message);

describe('a number that a spreadsheet made a date', () => {
  it.each([
    '4-May',
    '3-Jan',
    'May-04',
    'Mar-2010',
    '04. Mai',
    '4. März 2024',
    'Mrz 10',
    '3-Okt',
    '05-déc',
    '4-juil.',
    '12-août',
    'sept-05',
    '2024-02-03',
    '2024-02-03 00:00:00',
    '01/05/24',
    '03.04.2024',
  ])('is told: %s', number => {
    expect(told(number)).toEqual(['number-is-date 2']);
  });

  it.each([
    'SOP-1',
    'REQ-12',
    'ECO-5',
    'AC-1',
    'NAC-1',
    'MAR-1',
    'SEP-12',
    'Mai-4',
    'Part 12',
    'Annex 10',
    '1-2',
    '3/4',
    '03.13.08',
    '3.4.10',
    '45.40.2024',
    '11111',
    '45292',
  ])('is no code and no number of an office: %s', number => {
    expect(told(number)).toEqual([]);
  });
});

describe('a number that a spreadsheet cut', () => {
  it('is told where it stands once, in place of the one that is due', () => {
    expect(told('3.9', '3.1', '3.11')).toEqual(['number-cut 3']);
    expect(sentences('3.9', '3.1', '3.11')[0]).toBe(
      '3.1 stands behind 3.9, where 3.10 is due; a spreadsheet may have cut it - export the column as text.',
    );
    expect(told('2.99', '2.1', '2.101')).toEqual(['number-cut 3']);
    expect(told('3.9', '3.10', '3.18', '3.19', '3.2', '3.21')).toEqual(['number-cut 6']);
  });

  it('is told with rows of its own below it, and at the end of a part', () => {
    expect(told('3.9', '3.9.1', '3.1', '3.1.1', '3.11')).toEqual(['number-cut 4']);
    expect(told('3.7', '3.8', '3.9', '3.1', '4')).toEqual(['number-cut 5']);
  });

  it('is told once where it stands twice', () => {
    expect(told('3.1', '3.2', '3.9', '3.1', '3.11')).toEqual(['number-twice 5']);
    expect(sentences('3.1', '3.9', '3.1', '3.11')[0]).toContain('may have cut 3.10');
    expect(sentences('3.1', '3.2', '3.1')[0]).toContain('each by its words');
  });

  it('is none where the rows are in another order, or of another table', () => {
    expect(told('3.9', '3.1', '3.4')).toEqual([]);
    expect(told('3.9', '3.10', '3.11')).toEqual([]);
    expect(told('3.2', '3.9', '3.1', '3.5')).toEqual([]);
    expect(told('1', '2', '9', '1.1')).toEqual([]);
    const other = ['3.9', '3.1', '3.11'].map((number, at) => ({ number, file: `${at % 2}.csv`, line: 2 }));
    expect(spreadsheetDamage(other)).toEqual([]);
  });

  it('is none in a decimal classification, whose rows stand in the order of their digits', () => {
    expect(told('616.08', '616.09', '616.1', '616.11', '616.12')).toEqual([]);
    expect(told('616.19', '616.2', '616.21', '616.29', '616.3', '616.31')).toEqual([]);
    expect(told('1.111419', '1.11142', '1.111421')).toEqual([]);
    expect(told('616.18', '616.19', '616.2', '616.15')).toEqual([]);
  });

  it('is none where the next rows stand below it, in whatever order the others are', () => {
    const rows = ['5.9', '5.10', '5.19', '5.2', '5.21'].map((number, at) => ({
      number,
      file: 'old.csv',
      line: at + 2,
    }));
    expect(spreadsheetDamage(rows).map(f => f.place!.line)).toEqual([5]);
    expect(spreadsheetDamage(rows.map((row, at) => ({ ...row, parent: at === 4 ? 3 : -1 })))).toEqual([]);
  });

  it('is none where text makes it no number that a spreadsheet reads', () => {
    expect(told('A.9', 'A.1', 'A.11')).toEqual([]);
  });
});
