import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import mammoth from 'mammoth';
import { describe, expect, it } from 'vitest';
import { fishplateIn } from '../cli/run-here.ts';
import { catalogWithDraft } from './small-catalog.ts';

describe('a committee round on the command line', () => {
  it('goes from the draft that is sent out to the form that is given back, with exit codes that say how it went', async () => {
    const { dir } = await catalogWithDraft();
    const folder = join(dir, '..');
    const run = (...args: string[]) =>
      fishplateIn(folder, '--catalog', dir, '--author', 'Sec <sec@example.org>', ...args);
    expect((await run('comments', 'pack', '2030', '--out', 'round-1')).stdout).toContain('Round 1 is on record.');
    const rows = ['MB/NC,Clause,Type,Comments,Observations', 'UVA,1.1,te,Set it.,', 'UVA,7.7,te,Lay it.,'];
    writeFileSync(join(folder, 'form.csv'), rows.join('\n'));
    const read = await run('comments', 'read', 'form.csv', '--edition', '2030');
    expect([read.status, read.stdout]).toEqual([1, '2 comments on 2030 read: UVA-001, UVA-002.\n']);
    expect(read.stderr).toContain('form.csv: warning: Row 3 (UVA): 2030 has no clause 7.7');
    expect((await run('comments', 'answer', 'UVA-001', '--disposition', 'maybe')).stderr).toContain(
      'use one of: accepted,',
    );
    const answer = await run('comments', 'answer', 'UVA-001', '--disposition', 'noted', '--because', 'Later.');
    expect([answer.status, answer.stdout]).toEqual([0, '[UVA-001] Noted. Later.\n']);
    expect((await run('comments', 'list', '--open')).stdout).toBe(
      'UVA-002  te  7.7 → not placed  open  "Lay it."\n2 comments on 2030 by 1 (1 shown): open 1, noted 1.\n',
    );
    expect((await run('comments', 'write', 'form.csv', '--out', 'out.csv')).status).toBe(0);
    expect(readFileSync(join(folder, 'out.csv'), 'utf8')).toBe(
      [rows[0], `${rows[1]}[UVA-001] Noted. Later.`, `${rows[2]}[UVA-002]`].join('\n'),
    );
    const reply = await run('comments', 'reply', '--out', 'replies');
    expect(reply.stdout).toContain('1 reply in replies.');
    expect(reply.stdout).toContain(
      'UVA-002 names a clause that was not found; say what is meant with: comments answer',
    );
    expect((await run('comments', 'read', 'none.csv', '--edition', '2030')).status).toBe(2);
    const late = await run('schedule', '2030', '--set', 'finalised=2029-01-01', '--date', '2029-01-03');
    expect([late.status, late.stdout]).toEqual([1, expect.stringContaining('late by 2 days; needs: 1 comment is not')]);
    const report = [
      'intake',
      'add',
      '1.1',
      '--edition',
      '2018',
      '--cause',
      'unclear',
      '--from',
      'crew',
      '--text',
      'What?',
    ];
    expect((await run(...report)).stdout).toBe('1 report on 2018 kept.\n');
    expect((await run(...report)).stdout).toBe('0 reports on 2018 kept; 1 was on record already.\n');
    expect((await run('intake', 'count', '--edition', '2030')).stdout).toContain('  1  1.1 First: unclear 1');
  });

  it('is not begun for an edition that is published unless that is meant, and calls no edition a draft', async () => {
    const { dir } = await catalogWithDraft();
    const folder = join(dir, '..');
    const table = join(folder, 'next.csv');
    writeFileSync(table, 'number,title,text\n1,Walls,Walls shall stand.\n');
    expect((await fishplateIn(folder, '--catalog', dir, 'import', table, '--edition', '2020')).status).toBe(0);
    const pack = (...more: string[]) =>
      fishplateIn(folder, '--catalog', dir, 'comments', 'pack', '2020', '--out', 'sent', ...more);
    const refused = await pack();
    expect([refused.status, refused.stderr]).toEqual([
      2,
      expect.stringMatching(/name a draft \(2030\), or add --published/),
    ]);
    expect((await pack('--published')).stdout).toContain('Round 1 is on record.');
    const document = readFileSync(join(folder, 'sent', '2020.docx'));
    const { value } = await mammoth.extractRawText({ buffer: document });
    expect(value).toMatch(/Edition 2020 for comment, beside 2018, which it replaced/);
    expect(value).not.toMatch(/draft/i);
  });

  it('says once that types are missing, and what the sign in the list means', async () => {
    const { dir } = await catalogWithDraft();
    const folder = join(dir, '..');
    const run = (...args: string[]) => fishplateIn(folder, '--catalog', dir, ...args);
    await run('comments', 'pack', '2030', '--out', 'sent');
    writeFileSync(
      join(folder, 'form.csv'),
      'MB/NC;Clause;Comments;Proposed change\nRita;1.1;Why?;300\nRita;line 2;typo;\n',
    );
    const { stderr } = await run('comments', 'read', 'form.csv', '--edition', '2030');
    expect(stderr.trim()).toBe(
      'form.csv: warning: 2 comments give no type (row 2; row 3); write ge (general), te (technical) or ed (editorial) and read the form again. [type-missing]',
    );
    const { stdout } = await run('comments', 'list', '--edition', '2030');
    expect(stdout).toContain('?: 2 comments give no type (ge, te or ed).');
    // A line that stands where the clause goes is a line.
    expect(stdout).toMatch(/RITA-002 {2}\? {2}line 2 → \d/);
  });
});
