import { describe, expect, it } from 'vitest';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();

async function carry(start: Record<string, string | Uint8Array>, inputs = Object.keys(start)) {
  const memory = memoryFiles(start);
  const run = (again = inputs, outDir = '/out') =>
    carryDocs({ files: memory.files, progress: () => {} }, joint, marks, { inputs: again, outDir, editions: ['2014'] });
  return { ...memory, run, report: await run() };
}

const one = async (text: string, name = '/in/a.md') =>
  (await carry({ [name]: text })).text(`/out/${name.split('/').pop()}`);

describe('carrying documents', () => {
  it.each([
    ['See 3.1.1.', 'See 3.1.2.'],
    ['3.1.1 Base for the butt', '3.1.2 Base for the butt'],
    ['item **3.1.1** and `3.1.1`', 'item **3.1.2** and `3.1.1`'],
    ['3.2.2 stays', '3.2.2 stays'],
    ['3.1.3 changed', '3.1.3 changed'],
    ['3.1.1 (2014)', '3.1.1 (2014)'],
    ['3.1.1 Lid', '3.1.1 Lid'],
    ['3.2.2 to 3.2.3', '3.2.2 to 3.2.3'],
    ['3.1.1 to 3.1.2', '3.1.1 to 3.1.2'],
    ['3.1.1 to 3.1.4', '3.1.1 to 3.1.4'],
    ['\ufeffsee\r\n3.1.1\r\n\r\n', '\ufeffsee\r\n3.1.2\r\n\r\n'],
    ['See 3.\u00ad1.1\u00a0x', 'See 3.1.2\u00a0x'],
    ['See 3.1.1\u00ad x', 'See 3.1.2\u00ad x'],
  ])('%j becomes %j', async (text, expected) => {
    expect(await one(text)).toBe(expected);
    // A plain text knows no code.
    if (!text.includes('`')) expect(await one(text, '/in/a.txt')).toBe(expected);
  });

  it('carries a range only where its heirs stand in one row again', async () => {
    expect(await one('see 3.4.1 to 3.4.10, 3.4.1-10')).toBe('see 3.3.1 to 3.3.2, 3.3.1-2');
    const { report } = await carry({ '/in/a.txt': '3.1.1 to 3.1.2' });
    // Base and lid have changed places: 3.1.2 to 3.1.1 would be no row.
    expect(report.review).toMatchObject([{ outcome: 'choose', cause: 'range', number: '3.1.1 to 3.1.2' }]);
  });

  it('keeps no range of which one member has changed, although the row is the same', async () => {
    const { report } = await carry({ '/in/a.txt': '3.2.1 to 3.2.2' });
    expect(report.review).toMatchObject([{ outcome: 'choose', cause: 'range' }]);
    expect(report.review[0]!.why).toContain('3.2.1 is 3.2.1 Capacity of the overflow in 2024');
  });

  it('lists what it leaves, with heirs, reason and what to do', async () => {
    const { text, report } = await carry({ '/in/a.md': '# Lesson\n\nCover: 3.4.5, paint: 3.1.4, ask 3.1.1 (2014).\n' });
    expect(JSON.parse(text('/out/review.json')!).citations).toEqual(report.review);
    expect(text('/out/review.md')).toMatchInlineSnapshot(`
      "# To look at, from 2018 to 2024

      3 citations.

      ## a.md

      - Line 3, **3.4.5**, choose: In 2024, 3.4.5 has gone to 3.3.3 Cover and 3.3.4 Lock.
        - To do: Say which of 3.3.3 and 3.3.4 this citation means; it may be all of them.
        - Text: Cover: 3.4.5, paint: 3.1.4, ask 3.1.1 (2014).
        - Heir: 3.3.3 Cover
        - Heir: 3.3.4 Lock
      - Line 3, **3.1.4**, withdrawn: 3.1.4 is withdrawn in 2024: the product is no longer used. Lead paint is not sold any more.
        - To do: Read 3.1.4 Strap of 2024 and decide whether it takes the place of 3.1.4.
        - Text: Cover: 3.4.5, paint: 3.1.4, ask 3.1.1 (2014).
      - Line 3, **3.1.1**, unknown: 3.1.1 means edition 2014.
        - To do: Run again with --from 2014.
        - Text: Cover: 3.4.5, paint: 3.1.4, ask 3.1.1 (2014).
      "
    `);
    expect(report.documents[0]!.outcomes).toEqual({ kept: 0, carried: 0, choose: 1, withdrawn: 1, unknown: 1 });
    expect(report.findings.map(f => f.place)).toEqual(Array(3).fill({ file: 'a.md', line: 3 }));
  });

  it('takes the edition from the front matter, and refuses to guess across editions', async () => {
    expect(await one('---\nedition: 2018\n---\n\nSee 3.1.1')).toContain('3.1.2');
    const { text, report } = await carry({ '/in/a.md': '---\nedition: 2014\n---\n\n3.1.1. See 3.1.2 (2018)' });
    expect(text('/out/a.md')).toContain('3.1.1. See 3.1.1 (2024)');
    expect(report.review).toMatchObject([
      { number: '3.1.1', cause: 'other-edition', toDo: 'Run again with --from 2014.' },
    ]);
  });

  it('copies a signed record byte for byte and lists all of its citations', async () => {
    const record = '\ufeffInspection of items 3.1.1, 3.2.2\r\n\r\nSigned: A. Person\r\n';
    const { text, report } = await carry({ '/in/r.txt': record });
    expect(text('/out/r.txt')).toBe(record);
    expect(report.documents[0]).toMatchObject({ record: 'Signed: A. Person', rewritten: 0 });
    expect(report.review.map(r => r.number)).toEqual(['3.1.1', '3.2.2']);
  });

  it('keeps equal names from two folders apart', async () => {
    const { text } = await carry({ '/in/a/x.md': 'See 3.1.1', '/in/b/x.md': 'See 3.1.2' });
    expect([text('/out/a/x.md'), text('/out/b/x.md')]).toEqual(['See 3.1.2', 'See 3.1.1']);
  });

  it('refuses what it cannot carry, before anything is written', async () => {
    const bad = { '/in/a.md': '3.1.1', '/in/b.md': Buffer.from([0x33, 0xff]) };
    const memory = memoryFiles(bad);
    const run = (inputs: string[], outDir: string) =>
      carryDocs({ files: memory.files, progress: () => {} }, joint, marks, { inputs, outDir });
    await expect(run(Object.keys(bad), '/out')).rejects.toThrow(/not UTF-8/);
    await expect(run(['/in/a.md'], '/in')).rejects.toMatchObject({ code: 'OutputIsInput' });
    await expect(run(['/in/a.rtf'], '/out')).rejects.toMatchObject({ code: 'BadArgument' });
    expect([...memory.held.keys()]).toEqual(Object.keys(bad));
  });
});

describe('running again', () => {
  it('on the originals gives the same bytes, on an output leaves it alone, on an edited one is refused', async () => {
    const { run, held, text } = await carry({ '/in/a.md': 'See 3.1.1.' });
    const first = [...held].map(([path, bytes]) => [path, bytes.toString()]);
    await run();
    expect([...held].map(([path, bytes]) => [path, bytes.toString()])).toEqual(first);

    const report = await run(['/out/a.md'], '/again');
    expect(report.documents).toMatchObject([{ leftAlone: true }]);
    expect(text('/again/a.md')).toBeUndefined();

    held.set('/out/a.md', Buffer.from('See 3.1.2. My remark.'));
    await expect(run(['/out/a.md'], '/again')).rejects.toMatchObject({ code: 'AlreadyCarried' });
    await expect(run()).rejects.toMatchObject({ code: 'AlreadyCarried' });
    expect(text('/out/a.md')).toBe('See 3.1.2. My remark.');
  });
});
