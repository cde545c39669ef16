import { spawnSync } from 'node:child_process';
import { closeSync, copyFileSync, openSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MAIN } from './cli/run-cli.ts';
import { fsck, temporaryFolder } from './store/temp-catalog.ts';

const ROOT = join(import.meta.dirname, '..');
const SOURCE = join(ROOT, 'catalog');

interface Told {
  readonly command: string;
  /** What the README says is printed, a line each; `…` alone = lines left out. */
  readonly lines: readonly string[];
}

/** The commands of the README's story, with what is printed below each. */
function story(): Told[] {
  const text = readFileSync(join(ROOT, 'README.md'), 'utf8');
  const section = text.split('\n## ').find(part => part.startsWith('A story\n')) ?? '';
  const blocks = section.split('\n```').filter((_, at) => at % 2 === 1);
  return blocks.flatMap(block =>
    block
      .split('\n$ fishplate ')
      .slice(1)
      .map(part => {
        const [command = '', ...lines] = part.split('\n');
        return { command, lines };
      }),
  );
}

/** The story's files, each put together from the demo's tables, or the demo's own. */
function storyFolder(): string {
  const dir = temporaryFolder();
  const put = (name: string, ...folder: string[]) => {
    const from = join(SOURCE, ...folder);
    const tables = readdirSync(from).filter(file => file.endsWith('.csv'));
    const texts = tables.sort().map(file => readFileSync(join(from, file), 'utf8').replace(/\n*$/, '\n'));
    writeFileSync(join(dir, name), texts.map((t, at) => (at === 0 ? t : t.slice(t.indexOf('\n') + 1))).join(''));
  };
  put('2018.csv', '2018');
  put('2024.csv', '2024');
  put('became.csv', '2024', 'from-2018');
  copyFileSync(join(SOURCE, '2024', 'decisions', 'worker-safety.json'), join(dir, 'worker-safety.json'));
  copyFileSync(join(SOURCE, 'jobs', 'upper-vale.csv'), join(dir, 'jobs.csv'));
  copyFileSync(join(SOURCE, 'course', '1-storage.md'), join(dir, 'lesson.md'));
  copyFileSync(join(SOURCE, 'course', 'quiz.md'), join(dir, 'quiz.md'));
  return dir;
}

/** Both streams into one file, in the order in which a terminal shows them. */
function run(dir: string, command: string): { status: number | null; printed: string } {
  const path = join(dir, 'printed');
  const file = openSync(path, 'w');
  const args = [MAIN, ...command.trim().split(' ')];
  const { status } = spawnSync(process.execPath, args, { cwd: dir, stdio: ['ignore', file, file] });
  closeSync(file);
  return { status, printed: readFileSync(path, 'utf8') };
}

/** A README folds long lines where a terminal does not, so blanks and line ends count as one blank. */
const folded = (text: string) => text.replace(/\s+/g, ' ').trim();

/** What is shown as one pattern: `…` alone on a line stands for any lines. */
function patternOf(lines: readonly string[]): RegExp {
  const pieces = lines.join('\n').split(/^…$/m).map(folded);
  const escaped = pieces.map(p => p.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`^${escaped.join(' ?.*')}$`, 's');
}

describe("the README's story", () => {
  it('prints what it shows, command by command', () => {
    const dir = storyFolder();
    const told = story();
    expect(told.map(t => t.command.split(' ')[0])).toEqual([
      'import',
      'import',
      'crosswalk',
      'trace',
      'carry',
      'carry',
      'match',
    ]);
    for (const { command, lines } of told) {
      const { status, printed } = run(dir, command);
      expect(folded(printed), `fishplate ${command}`).toMatch(patternOf(lines));
      const findings = /^(?:\S+: )?(?:error|warning): /m.test(printed);
      expect(status, `fishplate ${command}`).toBe(findings ? 1 : 0);
    }
    expect(readdirSync(join(dir, 'carried')).sort()).toContain('review.md');
    const [given, back] = ['jobs.csv', 'jobs-2024.csv'].map(f => readFileSync(join(dir, f), 'utf8').split(/\r?\n/));
    const theirs = back!.filter(line => given!.some(g => g !== '' && line.startsWith(`${g},`)));
    expect(theirs.length).toBe(given!.filter(Boolean).length);
    fsck(join(dir, 'works.git'));
  });

  it('is compared to the letter: one other figure and it would not match', () => {
    expect('526 items, 396 requirements').not.toMatch(patternOf(['526 items, 397 requirements']));
    expect('first second third').toMatch(patternOf(['first', '…', 'third']));
    expect('first second third').not.toMatch(patternOf(['second', '…']));
  });
});
