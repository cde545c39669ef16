import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { checkDrafting } from '../../src/commands/texts/check-drafting.ts';
import { checkTexts } from '../../src/commands/texts/check-texts.ts';
import { openCatalog } from '../../src/store/open.ts';
import { readTable } from '../../src/tables/read-table.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-texts-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, content: string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe('check --texts', () => {
  it('writes a line for each finding, with the place in the cell as it stands', async () => {
    const cell = '  \u201cMarked\u201d \u{1F6E0} areas need adequate light.';
    const texts = file('texts.csv', `text,note,id\r\n"${cell}",n,r1\r\nLay the slab at a fall of 1:80.,n,r2\r\n`);
    const out = join(folder, 'out.csv');
    const report = await checkTexts(testPorts(), { texts, out });
    expect(report.texts).toBe(2);
    const table = readTable(out, readFileSync(out));
    expect(table.columns).toEqual(['id', 'rule', 'place', 'message']);
    const lines = table.rows.map(r => r.cells);
    expect(lines.map(c => [c.get('id'), c.get('rule')])).toEqual([['r1', 'vague-word']]);
    const [, start, end, words] = /^(\d+)-(\d+) (.*)$/s.exec(lines[0]!.get('place')!)!;
    expect(cell.slice(Number(start), Number(end))).toBe(words);
    expect(words).toBe('adequate');
  });

  it('refuses a table without the columns, and an output that is the input', async () => {
    const bare = file('bare.csv', 'nr,words\n1,x\n');
    await expect(checkTexts(testPorts(), { texts: bare })).rejects.toThrow(
      /needs the columns id and text.*name the columns/,
    );
    const good = file('good.csv', 'id,text\n1,x\n');
    await expect(checkTexts(testPorts(), { texts: good, out: good })).rejects.toThrow(/is an input/);
  });

  it('asks for terms where a glossary is given', async () => {
    const texts = file('terms-texts.csv', 'id,text\n1,Rake the weep slots.\n2,Call the Night Warden.\n');
    const terms = file('terms.csv', 'term,deprecated,use\nweep slot,yes,drain slot\n');
    const { remarks } = await checkTexts(testPorts(), { texts, terms });
    expect(remarks.map(r => [r.id, r.rule, r.words])).toEqual([
      ['1', 'deprecated-term', 'weep slots'],
      ['2', 'undefined-term', 'Night Warden'],
    ]);
  });
});

describe('check --drafting', () => {
  it('reads an edition as notes, with jobs as evidence of what applies only sometimes', async () => {
    const catalog = await openCatalog(await demoCatalog());
    const lines = Array.from({ length: 20 }, (_, at) => `4.1.1.1,${at < 8 ? 'n/a' : 'done'}`);
    const jobs = file('jobs.csv', `number,state\n${lines.join('\n')}\n`);
    const { findings, texts } = await checkDrafting(testPorts(), catalog, { edition: '2024', jobs });
    expect(texts).toBeGreaterThan(200);
    expect(new Set(findings.map(f => f.severity))).toEqual(new Set(['note']));
    expect(findings.some(f => f.rule === 'applies-sometimes' && f.message.includes('8 of 20 job lines'))).toBe(true);
  });

  it('finds more to say of the edition of 2018 than of its rewritten successor, text for text', async () => {
    const catalog = await openCatalog(await demoCatalog());
    const per = async (edition: string) => {
      const { remarks, texts } = await checkDrafting(testPorts(), catalog, { edition });
      return remarks.length / texts;
    };
    expect(await per('2018')).toBeGreaterThan(await per('2024'));
  });
});
