import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { writeCsv } from '../../src/tables/write-csv.ts';

describe('csv as it is written', () => {
  it('is read back cell by cell by another library, line ends of every kind included', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', ' ', ',', '"', '\n', '\r', '\r\n', ';', 'é') });
    // A tab or CR at the beginning is taken for a formula; see the test below.
    const rows = fc.array(
      fc.array(
        cell.map(c => `x${c}`),
        { minLength: 3, maxLength: 3 },
      ),
      { minLength: 1 },
    );
    fc.assert(
      fc.property(rows, table => {
        expect(parse(writeCsv(table), { record_delimiter: '\r\n' })).toEqual(table);
      }),
    );
  });

  it('keeps a record with a lone line feed in a cell one record', () => {
    expect(writeCsv([['a\nb', 'c']])).toBe('"a\nb",c\r\n');
    expect(parse(writeCsv([['a\nb', 'c']]))).toEqual([['a\nb', 'c']]);
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['@x', "'@x"],
    ['-5', '-5'],
    ['-5.5', '-5.5'],
    ['-a', "'-a"],
  ])('writes %s as %s, so that no spreadsheet runs it', (cell, written) => {
    expect(writeCsv([[cell]])).toBe(`${written}\r\n`);
  });
});
