import { expect, it } from 'vitest';
import { placeRows } from '../../src/editing/place-rows.ts';
import { nameAndAddress } from '../../src/model/person.ts';

/** A pattern that shares spaces out between its parts takes longer over these than a test may. */
const SPACES = ' '.repeat(60_000);

it.each(['verified', 'references', 'applies_to'])('a cell %s of many spaces is read in time', column => {
  const cells = new Map([
    ['number', '1'],
    [column, `before-covering${SPACES}x | by-document: note`],
  ]);
  const table = { file: 't.csv', columns: ['number', column], rows: [{ file: 't.csv', line: 2, cells }] };
  expect(placeRows([table], new Map())).toBeDefined();
});

it('a name with many spaces is read in time', () => {
  expect(nameAndAddress(`${SPACES}A ${SPACES} B${SPACES}<x`)).toBeUndefined();
  expect(nameAndAddress(`  A B ${SPACES}<a@b.example> `)).toEqual({ name: 'A B', address: 'a@b.example' });
});
