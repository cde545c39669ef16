import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type MatchReview, openMatchReview } from '../../src/commands/matching/match-review.ts';
import { matchTables, readBareEditions } from '../../src/commands/matching/match-tables.ts';
import { testPorts } from '../demo-catalog.ts';
import { countedRows } from './counted-rows.ts';

/** Two trades in one office's words; the last two rows of each table print no number. */
const OLD = `number,parent,title,text
1,,Gutters,
1.1,1,Brackets,The gutter shall be fixed with brackets at 600 mm centres.
1.2,1,Downpipes,Downpipes shall be clipped to the wall at every joint.
2,,Conduct,
2.1,2,Greeting,The inspector shall be greeted politely on arrival.
3,,Overflow of house tanks,Overflow pipes of house tanks shall discharge away from the foundation.
4,,Overflow of terrace tanks,Overflow pipes of terrace tanks shall discharge away from the foundation wall.
,,Sieve,A sieve shall be fitted ahead of each tank.
,,Vent,Every tank needs a vent with a mesh.
`;
const NEW = `number,parent,title,text
1,,Roof drainage,
1.1,1,Pipe clips,Clip downpipes to the wall at each joint.
1.2,1,Gutter brackets,Fix gutters with brackets at centres of 600 mm.
2,,Overflow,Discharge every tank overflow away from the foundation.
3,,Labels,Label each valve with its number.
,,Leaf sieve,Fit a sieve before the tank inlet.
,,Tank vent,Vent each tank and cover the vent with mesh.
`;

let dir: string;
let file: string;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'fishplate-review-'));
  file = join(dir, 'answers.csv');
  writeFileSync(join(dir, 'old.csv'), OLD);
  writeFileSync(join(dir, 'new.csv'), NEW);
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const tables = () => ({ from: [join(dir, 'old.csv')], to: [join(dir, 'new.csv')] });
const BY = 'A. Reviewer <a@example.org>';

async function open(earlier: readonly string[] = []): Promise<MatchReview> {
  const ports = testPorts();
  return openMatchReview(ports, { ...(await readBareEditions(ports, tables())), known: [], earlier, file });
}

/** What the ordinary command makes of the answers. */
async function matched() {
  const report = await matchTables(testPorts(), { ...tables(), answers: [file] });
  const name = (row: { number: string; title: string } | undefined) => row && (row.number || row.title);
  return {
    findings: report.findings.filter(f => f.rule === 'answer'),
    links: report.lines.filter(l => l.basis === 'confirmed').map(l => `${name(l.from) ?? ''}>${name(l.to) ?? ''}`),
    by: report.answers.map(a => a.by),
  };
}

/** Every question in the order of asking. */
async function questions(review: MatchReview) {
  const all = [];
  for (let code = await review.nextOpen(); code; ) {
    const q = (await review.question(code))!;
    all.push(q);
    code = q.next!;
  }
  return all;
}

describe('a review of matched links', () => {
  it('asks each link in doubt once and knows how many are left', async () => {
    const review = await open();
    const all = await questions(review);
    expect(all.length).toBe((await review.progress()).left);
    expect(new Set(all.map(q => q.code)).size).toBe(all.length);
    expect(all.map(q => q.kind)).toEqual(expect.arrayContaining(['pair', 'new']));
    expect(existsSync(file)).toBe(false);
  });

  it('has every answer on the disk at once, as match --answers reads it', async () => {
    const review = await open();
    for (const q of await questions(review)) {
      await review.answer(q.code, { kind: q.old?.number === '4' ? 'withdrawn' : 'yes' }, 'seen', BY);
      expect(readFileSync(file, 'utf8')).toContain(q.code);
    }
    expect(await review.nextOpen()).toBeUndefined();
    const { findings, links, by } = await matched();
    expect(findings).toEqual([]);
    expect(links).toEqual(expect.arrayContaining(['2>', '3>2', '4>', '>3']));
    expect(new Set(by)).toEqual(new Set([BY]));
  });

  it('goes on where it was left, without a word lost', async () => {
    const first = await open();
    const [a, b] = await questions(first);
    await first.answer(a!.code, { kind: 'yes' }, '', BY);
    const second = await open();
    const left = await questions(second);
    expect(left.map(q => q.code)).not.toContain(a!.code);
    expect(left.map(q => q.code)).toContain(b!.code);
    expect((await second.progress()).answered).toBe(1);
    expect((await second.question(a!.code))!.answered).toHaveLength(1);
  });

  it('gives its answers, with who gave them, to whoever takes the crosswalk away', async () => {
    const review = await open();
    const [q] = await questions(review);
    await review.answer(q!.code, { kind: q!.new ? 'no' : 'withdrawn' }, 'seen on site', BY);
    const rows = (await review.crosswalk()).split('\r\n').filter(line => line.includes('seen on site'));
    expect(rows).toHaveLength(1);
    expect(rows[0]).toContain(`,${BY},`);
    writeFileSync(join(dir, 'taken.csv'), await review.crosswalk());
    const again = await matchTables(testPorts(), { ...tables(), answers: [join(dir, 'taken.csv')] });
    expect(again.answers).toMatchObject([{ because: 'seen on site', by: BY }]);
  });

  it('takes another row instead, also one that prints no number', async () => {
    const review = await open();
    const q = (await questions(review)).find(x => x.old?.number === '3')!;
    await review.answer(q.code, { kind: 'instead', row: 6 }, '', BY);
    const { findings, links } = await matched();
    expect(findings).toEqual([]);
    expect(links).toContain('3>Tank vent');
  });

  it('takes a second heir beside the one that was asked about, and takes both back together', async () => {
    const review = await open();
    const q = (await questions(review)).find(x => x.kind === 'pair')!;
    const row = q.new!.row === 4 ? 3 : 4;
    await review.answer(q.code, { kind: 'also', row }, '', BY);
    expect((await review.question(q.code))!.answered).toHaveLength(2);
    expect((await matched()).links).toHaveLength(2);
    expect(await review.undo(BY)).toBe(q.code);
    expect((await matched()).links).toEqual([]);
    expect((await review.progress()).answered).toBe(0);
  });

  it('asks a new row where it comes from, and keeps that as the pair', async () => {
    const review = await open();
    const q = (await questions(review)).find(x => x.kind === 'new')!;
    await review.answer(q.code, { kind: 'instead', row: 4 }, '', BY);
    expect((await matched()).links).toEqual([`2.1>${q.new!.number || q.new!.title}`]);
    const again = await open();
    expect((await again.question(q.code))!.answered).toHaveLength(1);
    expect(await again.undo(BY)).toBe(q.code);
    expect(await again.nextOpen()).toBe(q.code);
  });

  it('replaces an answer that is given anew', async () => {
    const review = await open();
    const q = (await questions(review)).find(x => x.kind === 'pair')!;
    await review.answer(q.code, { kind: 'yes' }, '', BY);
    await review.answer(q.code, { kind: 'no' }, 'on second thoughts', BY);
    expect((await review.question(q.code))!.answered.map(r => [r.answer, r.because])).toEqual([
      ['no', 'on second thoughts'],
    ]);
  });

  it('keeps both of two answers given at the same moment', async () => {
    const review = await open();
    const [a, b] = await questions(review);
    await Promise.all([a!, b!].map(q => review.answer(q.code, { kind: 'yes' }, '', BY)));
    expect((await review.progress()).answered).toBe(2);
  });

  it('keeps every answer of two servers that hold one file, and outlives a lock whose owner is gone', async () => {
    const [one, two] = [await open(), await open()];
    const codes = (await questions(one)).map(q => q.code);
    // Two reads before either writes would lose an answer without the lock.
    await Promise.all(
      codes.map((code, n) => (n % 2 === 0 ? one : two).answer(code, { kind: 'yes' }, `by ${n % 2}`, BY)),
    );
    expect((await one.progress()).answered).toBe(codes.length);
    const { pid } = spawnSync(process.execPath, ['-e', '']);
    writeFileSync(`${file}.lock`, `fishplate ${pid}.0 ${hostname()}\n`);
    await two.answer(codes[0]!, { kind: 'yes' }, 'again', BY);
    expect((await one.question(codes[0]!))!.answered[0]!.because).toBe('again');
    expect(readdirSync(dir).sort()).toEqual(['answers.csv', 'new.csv', 'old.csv']);
  });

  it('hands no question to two people at once while others are open, and each takes back their own', async () => {
    const review = await open();
    const other = 'B. Other <b@example.org>';
    const [mine, theirs] = [await review.nextOpen(undefined, BY), await review.nextOpen(undefined, other)];
    expect(mine).not.toBe(theirs);
    const { seen } = (await review.question(mine!))!;
    await review.answer(mine!, { kind: 'yes' }, '', BY, seen);
    await review.answer(theirs!, { kind: 'yes' }, '', other);
    await expect(review.answer(mine!, { kind: 'yes' }, '', other, seen)).rejects.toThrow('A. Reviewer has answered');
    expect((await review.last(BY)).map(r => r.asked)).toEqual([mine]);
    expect(await review.undo(BY, theirs)).toBeUndefined();
    expect(await review.undo(BY)).toBe(mine);
    expect((await review.progress()).answered).toBe(1);
  });

  it('matches anew with the answers as fixed points, and asks no answered question again', async () => {
    const review = await open();
    const q = (await questions(review)).find(x => x.kind === 'pair')!;
    await review.answer(q.code, { kind: 'no' }, '', BY);
    expect((await review.progress()).sinceMatching).toBe(1);
    await review.rematch();
    expect((await review.progress()).sinceMatching).toBe(0);
    expect((await questions(review)).map(x => x.code)).not.toContain(q.code);
    expect(await review.undo(BY)).toBe(q.code);
    expect([await review.nextOpen(), (await review.progress()).sinceMatching]).toEqual([q.code, 1]);
  });

  it('lets what was mended in the file meanwhile stand', async () => {
    const review = await open();
    const [a, b] = await questions(review);
    await review.answer(a!.code, { kind: 'yes' }, 'typo', BY);
    writeFileSync(file, readFileSync(file, 'utf8').replace('typo', 'mended'));
    await review.answer(b!.code, { kind: 'yes' }, '', BY);
    expect(readFileSync(file, 'utf8')).toContain('mended');
  });

  it('takes a reason that looks like a formula or holds line ends back as it was', async () => {
    const review = await open();
    const [a] = await questions(review);
    await review.answer(a!.code, { kind: 'yes' }, '=HYPERLINK("x")\nnext, "line"', BY);
    await review.answer((await review.nextOpen())!, { kind: 'yes' }, '', BY);
    expect((await review.question(a!.code))!.answered[0]!.because).toBe('\'=HYPERLINK("x")\nnext, "line"');
    expect((await matched()).findings).toEqual([]);
  });

  it('refuses an answer that does not fit, and writes nothing', async () => {
    const review = await open();
    const all = await questions(review);
    const fresh = all.find(q => q.kind === 'new')!;
    await expect(review.answer(fresh.code, { kind: 'withdrawn' }, '', BY)).rejects.toThrow('does not fit');
    await expect(review.answer(all[0]!.code, { kind: 'instead', row: 99 }, '', BY)).rejects.toThrow('does not fit');
    await expect(review.answer('p000000000000', { kind: 'yes' }, '', BY)).rejects.toThrow('There is no question');
    expect(existsSync(file)).toBe(false);
  });

  it('writes into no table that it did not begin', async () => {
    writeFileSync(file, 'pair,answer\np1,yes\n');
    await expect(open()).rejects.toThrow('was not begun by a review');
  });

  it('names the nearest numbers for one that is not there', async () => {
    const review = await open();
    expect(await review.rowsWithNumber('new', '1.2')).toEqual([2]);
    await expect(review.rowsWithNumber('new', '1.3')).rejects.toThrow(
      'The new edition has no number 1.3; the nearest are',
    );
  });
});

describe('an answer whose rows are gone', () => {
  it('is not looked for again at each request: then no row is read', async () => {
    const head = 'pair,from_number,from_title,to_number,to_title,answer\n';
    writeFileSync(join(dir, 'first.csv'), `${head}p000000000001,1.1,Brackets,9,Gone,yes\n`);
    writeFileSync(join(dir, 'second.csv'), `${head}p000000000002,,,,,yes\n`);
    const ports = testPorts();
    const { from, to } = await readBareEditions(ports, tables());
    const { rows, reads } = countedRows(from.rows);
    const earlier = [join(dir, 'first.csv'), join(dir, 'second.csv')];
    const review = await openMatchReview(ports, { from: { ...from, rows }, to, known: [], earlier, file });
    expect(review.findings.filter(f => f.rule === 'answer')).toHaveLength(2);
    const before = reads();
    for (let n = 0; n < 3; n++) await review.progress();
    await review.nextOpen();
    expect(reads() - before).toBe(0);
  });
});
