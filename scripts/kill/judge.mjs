// What a killed process left behind, judged by native git and by the next writer.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './operations.mjs';

export const NO_CATALOG = 'no catalog';

/**
 * What a reader sees: each draft's and edition's name with the tree that it holds, told by native git. `main` is left
 * out: it follows the tags, and whether it does is asked after the next writer.
 */
export function visible(folder) {
  const catalog = join(folder, 'catalog.git');
  if (!['HEAD', 'config', 'objects', 'refs'].every(name => existsSync(join(catalog, name)))) return NO_CATALOG;
  const format = '%(refname) %(if)%(*tree)%(then)%(*tree)%(else)%(tree)%(end)';
  const lines = git(folder, 'for-each-ref', `--format=${format}`).stdout.split('\n').filter(Boolean);
  return lines.filter(line => !line.startsWith('refs/heads/main ')).join('\n');
}

/** Judges a folder after a kill: { state, traces, lock, wrong: what should not be, in words }. */
export function judge(folder, { before, after, args }) {
  const wrong = [];
  const now = visible(folder);
  const state =
    now === before ? 'before' : now === after ? 'after' : between(before, after).includes(now) ? 'between' : 'neither';
  const left = now === NO_CATALOG ? [] : leftBehind(join(folder, 'catalog.git'));
  if (state === 'neither') wrong.push(`the catalog is neither as before nor as after:\n${now}`);
  if (now !== NO_CATALOG) wrong.push(...unsound(folder));

  const again = state === 'after' || (state === 'between' && now.includes('refs/tags/'));
  const { status, stderr } = run(folder, again ? ['draft', 'open', 'next'] : args);
  if (status !== 0) wrong.push(`the next writer ended with ${status}: ${stderr}`);
  const drop = again ? /^refs\/heads\/draft\/next .*\n?/m : /$^/;
  const then = visible(folder).replace(drop, '').trimEnd();
  if (then !== after) wrong.push(`after the next writer the catalog is not as it should be:\n${then}`);
  wrong.push(...unsound(folder));
  if (!mainFollows(folder)) wrong.push('after the next writer main does not hold the newest edition');
  const after2 = leftBehind(join(folder, 'catalog.git'));
  if (after2.length > 0) wrong.push(`the next writer left behind: ${after2.join(', ')}`);
  return { state, traces: left.length > 0, lock: left.some(name => name.endsWith('.lock')), wrong };
}

/** Whole all the same: a repository without an edition; an edition whose draft's branch is still there (the tag decides). */
function between(before, after) {
  if (before === NO_CATALOG) return [''];
  const drafts = before.split('\n').filter(line => line.startsWith('refs/heads/draft/'));
  return [[...drafts, ...after.split('\n')].join('\n')];
}

function unsound(folder) {
  const { status, stdout, stderr } = git(folder, 'fsck', '--strict', '--full');
  return status === 0 ? [] : [`git fsck: ${stdout}${stderr}`];
}

/** Half-written files and locks. */
function leftBehind(catalog) {
  const scratch = join(catalog, 'fishplate', 'tmp');
  const files = existsSync(scratch) ? readdirSync(scratch) : [];
  const locks = readdirSync(join(catalog, 'refs'), { recursive: true }).filter(name => name.endsWith('.lock'));
  return [...files, ...locks];
}

function mainFollows(folder) {
  const tags = git(folder, 'tag', '--list', 'edition/*').stdout.split('\n').filter(Boolean);
  const held = git(folder, 'ls-tree', '--name-only', 'main', 'editions/').stdout;
  return tags.every(tag => held.includes(`editions/${tag.slice('edition/'.length).replace(/\.\d+$/, '')}.json`));
}

function git(folder, ...args) {
  return spawnSync('git', ['-C', join(folder, 'catalog.git'), ...args], { encoding: 'utf8' });
}
