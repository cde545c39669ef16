import { describe, expect, it } from 'vitest';
import { readTable } from '../../src/tables/read-table.ts';

const read = (text: string) => readTable('t.csv', new TextEncoder().encode(text));

describe('lines above the head of a csv table', () => {
  it.each([
    ['with separators', 'Rules of 2019;;;\nAs of March, 1st;;;\n;;;\nNo;Title;Text;Type\n1;Walls;Walls stand.;\n'],
    ['without', 'Rules of 2019\n\nNo;Title;Text;Type\n1;Walls;Walls stand.;\n'],
  ])('%s are left out and told, and lines are counted as in the file', (_, text) => {
    const { columns, rows, findings } = read(text);
    expect(columns).toEqual(['No', 'Title', 'Text', 'Type']);
    expect(rows.map(r => [r.line, r.cells.get('Title')])).toEqual([[text.split('\n').length - 1, 'Walls']]);
    expect(findings.map(f => f.message)).toEqual([expect.stringMatching(/^[23] lines stand above the head of t\.csv/)]);
  });

  it('are none where the first line is the head, however short', () => {
    expect(read('No\n1\n2\n').columns).toEqual(['No']);
    expect(read('No,Title\n1,Walls\n').findings).toEqual([]);
  });

  it('change nothing in what is refused: a row with more cells than the head', () => {
    expect(() => read('No,Title\n1,Walls,stand\n')).toThrow(
      /line 2, column 3: the row has more cells than the header line/,
    );
    expect(read('No,Title\n1,Walls,\n').rows).toHaveLength(1);
  });
});
