import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fsck, nativeGit } from '../store/temp-catalog.ts';
import { fishplateHere } from './run-here.ts';

const OLD = `number,level,parent,title,text
1,Part,,Storage,
1.1,Work item,1,Butts,
1.1.1,Requirement,1.1,Base,Set the butt on a level concrete base of at least 50 mm thickness.
1.1.2,Requirement,1.1,Overflow,The installer shall lay the overflow to a fall of at least 1:80.
1.2,Work item,1,Tanks,
1.2.1,Requirement,1.2,Base,Set the tank on a level concrete base of at least 75 mm thickness.
1.2.2,Requirement,1.2,Strap,Fix the tank as in 1.1.2 to the wall with a stainless strap.
`;

const dir = mkdtempSync(join(tmpdir(), 'fishplate-test-'));
afterAll(() => rmSync(dir, { recursive: true, force: true }));
const git = join(dir, 'catalog.git');
const as =
  (name: string) =>
  async (...args: string[]) => {
    const { status, stdout, stderr } = await fishplateHere(
      '--catalog',
      git,
      '--author',
      `${name} <${name}@example.org>`,
      ...args,
    );
    return { status, said: `${stdout}${stderr}`.trim() };
  };
const rowan = as('rowan');
const ash = as('ash');
const stops = async () => {
  const { said } = await rowan('check', '2030', '--release', '--json');
  return (JSON.parse(said) as { stops: { rule: string; message: string }[] }).stops;
};

beforeAll(async () => {
  writeFileSync(join(dir, 'old.csv'), OLD);
  await rowan('import', join(dir, 'old.csv'), '--edition', '2024');
  await rowan('draft', 'open', '2030', '--renumber');
});

describe('from a draft to a publication that nothing stops', () => {
  it('the evidence proposes to combine what says nearly the same; accepted with one action, it stays attributed', async () => {
    const { said } = await rowan('review', 'propose');
    expect(said).toMatch(
      /^[0-9a-f]{8} {2}Combine 1\.2\.1 into 1\.1\.1: they say nearly the same; they differ in .*"50 mm" and "75 mm"/,
    );
    const text = 'Set the butt or tank on a level concrete base of at least 50 mm thickness.';
    expect(await rowan('review', 'accept', said.slice(0, 8), '--text', text)).toEqual({
      status: 0,
      said: 'Combine 1.2.1 into 1.1.1.',
    });
    expect((await rowan('crosswalk', '2024', '2030')).said).toContain(
      'Proposed from the evidence (said nearly the same as 1 other requirement); accepted by rowan <rowan@example.org>.',
    );
  });

  it('the gate stops at what was lost, at a reference that leads elsewhere, and at questions, in that order', async () => {
    await rowan('draft', 'move', '1.1.2', '--under', '1.1', '--first');
    await rowan('draft', 'reword', '1.1.1', '--text', 'The installer shall lay the overflow.');
    const { status, said } = await rowan('check', '2030', '--release');
    expect(status).toBe(1);
    expect(said).toMatch(/^\d+ findings stop the publication of 2030\./);
    const rules = [...new Set((await stops()).map(f => f.rule))];
    expect(rules.slice(0, 2)).toEqual(['loss-open', 'reference-moved']);
    expect((await stops()).find(f => f.rule === 'reference-moved')?.message).toBe(
      '1.2.1 Strap refers to 1.1.2, which meant "Overflow" and is now "Base"; what it meant is now 1.1.1.',
    );
    const refused = await rowan('publish', '2030');
    expect([refused.status, refused.said]).toEqual([
      2,
      expect.stringMatching(/findings stop the publication of 2030; settle them/),
    ]);
    expect(nativeGit(git, 'tag')).toBe('edition/2024.0\n');
  });

  it('each is settled by whom it takes, a changed text asks again, and then it is published without an override', async () => {
    await rowan(
      'draft',
      'reword',
      '1.2.1',
      '--text',
      'Fix the tank to the wall with a stainless strap, laid as in 1.1.1.',
    );
    const losses = join(dir, 'losses.csv');
    await ash('audit', '2024', '2030', '--out', losses);
    const [head, ...rows] = readFileSync(losses, 'utf8').trim().split('\r\n');
    const [verdict, because] = ['verdict', 'because'].map(c => head!.split(',').indexOf(c));
    expect(rows.length).toBeGreaterThan(0);
    const filled = rows.map(row => {
      const cells = row.match(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)!.map(c => c.replace(/,$/, ''));
      if (!row.includes(',open,')) return row;
      cells[verdict!] = 'dropped';
      cells[because!] = 'decided on site';
      return cells.slice(0, head!.split(',').length).join(',');
    });
    writeFileSync(losses, [head, ...filled].join('\r\n'));
    const settled = await ash('audit', '2024', '2030', '--settle', losses, '--by', 'Ash <ash@example.org>');
    expect(settled.said).toMatch(/settled/);
    const questions = join(dir, 'questions.csv');
    expect((await rowan('review', 'list', '2030', '--out', questions)).said).toMatch(/0 of \d+ questions answered/);
    const lines = readFileSync(questions, 'utf8').trimEnd().split('\r\n');
    const table = lines.map((line, at) => (at === 0 ? line : line.replace(/,open,,,,$/, ',open,yes,read through,,')));
    writeFileSync(questions, table.join('\r\n'));
    expect(await rowan('review', 'read', questions, '--edition', '2030')).toMatchObject({ status: 0 });
    expect((await stops()).map(f => f.rule)).toEqual([]);
    // Whoever made a change does not settle its loss alone; that nobody signed a second time is told and stops nothing.
    const published = await rowan('publish', '2030', '--effective', '2030-06-01', '--notes', 'Overflows moved.');
    expect([published.status, published.said]).toEqual([
      1,
      expect.stringMatching(
        /^Edition 2030 is published: 6 items\.\n2024 → 2030: 4 requirements became 3 .*\nOpen it with: fishplate serve\nwarning: /,
      ),
    ]);
    expect(nativeGit(git, 'tag', '-n9', '-l', 'edition/2030.0')).toMatch(/Edition 2030\s+Overflows moved\.\s*$/);
    fsck(git);
  });
});
