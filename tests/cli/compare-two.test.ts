import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../store/temp-catalog.ts';
import { fishplateHere, fishplateIn } from './run-here.ts';

const OLD = 'Lap sheets at least 100 mm, with tape.';
const NEW = 'Lap sheets at least 150 mm.';

describe('compare of two texts', () => {
  it('prints wording, duty with the words of both, and what is lost', async () => {
    const { status, stdout } = await fishplateHere('compare', OLD, NEW);
    expect(status).toBe(0);
    expect(stdout).toMatch(/^wording {3}substantive\nduty {6}mixed\n/);
    expect(stdout).toContain('value changed: "at least 100 mm" → "at least 150 mm" (stricter)');
    expect(stdout).toMatch(/\nlost {6}"tape"\n/);
    expect((await fishplateHere('compare', OLD, OLD)).stdout).toBe(
      'wording   same\nduty      same\nlost      nothing that was found\n',
    );
  });

  it('denies no loss that stands among the words of the duty', async () => {
    const { stdout } = await fishplateHere(
      'compare',
      'The bark shall be 300 mm deep, with edging.',
      'The bark shall be 300 mm deep.',
    );
    if (/dropped/.test(stdout)) expect(stdout).not.toContain('lost      nothing that was found');
  });

  it('reads two text files, and gives the same as JSON', async () => {
    const dir = temporaryFolder();
    writeFileSync(join(dir, 'old.txt'), `${OLD}\n`);
    writeFileSync(join(dir, 'new.txt'), `${NEW}\n`);
    const { stdout } = await fishplateIn(dir, 'compare', 'old.txt', 'new.txt', '--json');
    expect(JSON.parse(stdout)).toMatchObject({
      from: OLD,
      to: NEW,
      wording: 'substantive',
      duty: 'mixed',
      foreign: false,
    });
  });

  it('says that another language is not read', async () => {
    const { stdout } = await fishplateHere(
      'compare',
      'Die Rinde muss mindestens 50 mm tief sein.',
      'Die Rinde soll 40 mm tief sein.',
    );
    expect(stdout).toContain('Neither text looks like English');
  });

  it.each([
    [['only one'], /Give the old text and the new one/],
    [['nothere.txt', NEW], /There is no file nothere\.txt/],
    [['old.docx', NEW], /old\.docx is no plain text; .*--pairs/],
    [[OLD, NEW, '--out', 'x.csv'], /--out goes with --pairs/],
    [[OLD, NEW, '--pairs', 'x.csv'], /Give two texts or --pairs/],
  ])('refuses %j in one sentence', async (args, sentence) => {
    const { status, stderr } = await fishplateHere('compare', ...args);
    expect([status, stderr]).toEqual([2, expect.stringMatching(sentence)]);
  });
});
