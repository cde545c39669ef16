import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { LineageRecord } from '../../src/model/crosswalk.ts';
import type { Item } from '../../src/model/item.ts';
import type { Settings } from '../../src/model/settings.ts';
import type { NewEdition } from '../../src/store/new-edition.ts';

/** A new folder that goes when the test does. */
export function temporaryFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'fishplate-test-'));
  onTestFinished(() => rmSync(dir, { recursive: true, force: true }));
  return dir;
}

export function nativeGit(dir: string, ...args: string[]): string {
  return execFileSync('git', ['-C', dir, ...args], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    env: {
      ...process.env,
      GIT_AUTHOR_NAME: 'N',
      GIT_AUTHOR_EMAIL: 'n@example.org',
      GIT_COMMITTER_NAME: 'N',
      GIT_COMMITTER_EMAIL: 'n@example.org',
    },
  });
}

/** Throws, with git's own words, where native git finds anything to complain about. */
export function fsck(dir: string): void {
  nativeGit(dir, 'fsck', '--strict', '--full');
}

/** The repositories in a folder that native git finds damaged; one shell for all, since starting git is what costs. */
export function damagedBelow(folder: string): string[] {
  const loop = 'for d in "$1"/*; do git -C "$d" fsck --strict --full >/dev/null 2>&1 || echo "$d"; done';
  return execFileSync('sh', ['-c', loop, 'sh', folder], { encoding: 'utf8' }).split('\n').filter(Boolean);
}

export const AUTHOR = { name: 'Steward', email: 'steward@example.org', date: new Date('2024-02-01T09:00:00Z') };

const settings: Settings = {
  title: 'Works',
  language: 'en',
  levels: [{ name: 'Work item' }, { name: 'Requirement' }],
  fileLevel: 1,
  numbering: { levels: [{ style: 'decimal' }, { style: 'decimal' }], numbersUnique: true },
  installationTypes: [{ id: 'house', name: 'House lot' }],
  withdrawalReasons: [],
};

/** An edition with work items of two requirements each; `words` makes their texts. */
export function smallEdition(
  name: string,
  replaces: string | null,
  words: string,
  more: Partial<NewEdition> = {},
  workItems = ['w1', 'w2', 'w3'],
): NewEdition {
  const items = workItems.flatMap((id, at): Item[] => [
    { id, number: `${at + 1}`, level: 1, parent: null, title: `Work ${id}` },
    { id: `${id}a`, number: `${at + 1}.1`, level: 2, parent: id, title: 'First', text: `${words} ${id}.` },
    { id: `${id}b`, number: `${at + 1}.2`, level: 2, parent: id, title: 'Second', text: 'As before.' },
  ]);
  return {
    name,
    replaces,
    dates: {},
    settings,
    items,
    lineage: [],
    decisions: [],
    oldFileOf: id => id.slice(0, 2),
    ...more,
  };
}

export const withdrawn = (from: string): LineageRecord => ({ from, heirs: [], reason: 'obsolete', basis: 'declared' });
