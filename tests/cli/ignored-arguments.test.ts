import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogWithDraft } from '../release/small-catalog.ts';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateHere, fishplateIn } from './run-here.ts';

describe('an argument that would be passed over in silence', () => {
  it.each([
    [['check', '2030', '--texts', 't.csv'], /^fishplate: --texts reads a table and no edition; leave out 2030/],
    [['check', '--texts', 't.csv', '--drafting'], /leave out --drafting\./],
    [['check', '--texts', 't.csv', '--jobs', 't.csv'], /--jobs goes with --drafting/],
    [['check', '2030', '--terms', 't.csv'], /--terms goes with --drafting or --texts/],
    [['check', '2030', '--out', 'x.csv'], /--out goes with --drafting or --texts/],
    [['check', '2030', '--all'], /--all goes with --drafting/],
    [['check', '2030', '--drafting', '--release'], /give one of the two\./],
    [['governs', '1.1', '--all'], /--all reads every local rule; leave out 1\.1, or leave out --all\./],
    [['governs', '--all', '--place', 'hollin'], /leave out --place hollin\./],
    [['governs', '--all', '--edition', '2018'], /named with --to 2018/],
    [['governs', '1.1', '--to', '2018'], /named with --edition 2018/],
    [['audit', '2018', '2030', '--sample', '5', '--out', 'k.pdf'], /Excel workbook; name it so: --out k\.xlsx/],
  ])('is refused in a sentence: %j', async (args, sentence) => {
    const { dir } = await catalogWithDraft();
    const { status, stdout, stderr } = await fishplateHere('--catalog', dir, ...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(sentence);
  });
});

describe('ids of a table that are empty or stand twice', () => {
  it.each([
    ['check', '--texts', 'id,text\n1,Lay the slab.\n,Rake it.\n1,Mow it.\n , Dig.\n'],
    ['compare', '--pairs', 'id,from_text,to_text\n1,a,b\n,c,d\n1,e,f\n ,g,h\n'],
  ])('are told with their lines, and every row is read: %s', async (command, option, content) => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 't.csv'), content);
    const { status, stdout, stderr } = await fishplateIn(dir, command, option, 't.csv', '--out', 'out.csv');
    expect([status, stdout]).toEqual([1, expect.stringMatching(/^4 (?:texts read|pairs compared)/)]);
    expect(stderr).toContain('t.csv:2: warning: The id 1 stands on the lines 2, 4;');
    expect(stderr).toContain('t.csv:3: warning: 2 rows have no id (lines 3, 5);');
  });
});
