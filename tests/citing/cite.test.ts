import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { citeFiles } from '../../src/commands/documents/cite-files.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import type { Catalog } from '../../src/store/open.ts';
import { newCatalog } from '../outside/new-catalog.ts';

describe('what documents cite', () => {
  const kept = newCatalog();
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-cite-'));
  const ports = { files: realFiles, progress: () => {} };
  let catalog: Catalog;
  const file = (name: string, text: string) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  beforeAll(async () => {
    const numbers = ['4', '4.1', '4.1.1', '4.1.2', '4.1.3', '4.1.4'];
    await kept.add(
      '2018',
      numbers.map(number => ({ id: `old-${number}`, number, title: `Old ${number}` })),
    );
    await kept.add(
      '2024',
      [...numbers, '4.1.5'].map(number => ({ id: `new-${number}`, number, title: `New ${number}` })),
    );
    catalog = await kept.open();
  });
  afterAll(() => {
    kept.remove();
    rmSync(folder, { recursive: true, force: true });
  });

  it('is listed with places, offsets and all numbers that are meant', async () => {
    const text = 'Read 4.1.1 to 4.1.3.\n\nThen items 2 and 4 of 4.1, and 4.1.5 of the 2024 edition.\n';
    const lines = await citeFiles(ports, catalog, { inputs: [file('a.md', text)], edition: '2018' });
    expect(lines.map(l => [l.place, text.slice(l.start, l.end), l.numbers.join(' '), l.edition, l.certain])).toEqual([
      ['line 1', '4.1.1 to 4.1.3', '4.1.1 4.1.2 4.1.3', '2018', true],
      ['line 3', '2 and 4 of 4.1', '4.1.2 4.1.4', '2018', true],
      ['line 3', '4.1.5', '4.1.5', '2024', true],
    ]);
  });

  it('means the edition that the document says its numbers follow', async () => {
    const said = file('b.txt', 'All numbers in this lesson are those of the 2024 edition.\n\nSee 4.1.5.\n');
    const lines = await citeFiles(ports, catalog, { inputs: [said], edition: '2018' });
    expect(lines).toMatchObject([{ numbers: ['4.1.5'], edition: '2024', certain: true }]);
  });

  it('leaves out the numbers that the document gives to its own headings', async () => {
    const own = '# Our way\n\n## 4.1.1 Before lunch\n\nSee 4.1.2.\n\n## 4.1.2 After lunch\n\nDo item 4.1.3 first.\n';
    const lines = await citeFiles(ports, catalog, { inputs: [file('own.md', own)], edition: '2018' });
    // "See 4.1.2" means the document's own; "item 4.1.3" may.
    expect(lines.map(l => [own.slice(l.start - 4, l.end), l.certain])).toEqual([['tem 4.1.3', false]]);
  });

  it('is written as csv, and never over one of the documents', async () => {
    const input = file('c.txt', 'item 4.1.1');
    const out = join(folder, 'cited.csv');
    await citeFiles(ports, catalog, { inputs: [input], edition: '2018', out });
    expect(readFileSync(out, 'utf8')).toBe(
      `file,place,start,end,text,numbers,edition,certain,why\r\n${input},line 1,5,10,4.1.1,4.1.1,2018,yes,it stands behind “item”\r\n`,
    );
    await expect(citeFiles(ports, catalog, { inputs: [input], edition: '2018', out: input })).rejects.toThrow(
      /is one of the documents; give --out another name\.$/,
    );
  });
});
