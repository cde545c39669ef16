import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { RawFs } from '../../src/store/durable-fs.ts';
import { listEditions, locate } from '../../src/store/names.ts';
import { openCatalog, openForWriting, openOrCreate } from '../../src/store/open.ts';
import { publishEdition, publishErratum, publishFromDraft } from '../../src/store/publish.ts';
import { readEdition, readLineage } from '../../src/store/read.ts';
import { writeBeside } from '../../src/store/write-beside.ts';
import { saveDraft, saveDraftSteps } from '../../src/store/write-draft.ts';
import { AUTHOR, smallEdition, withdrawn } from './temp-catalog.ts';

const first = smallEdition('2018', null, 'Old', {}, ['w1']);
const second = smallEdition('2024', '2018', 'New', { lineage: [withdrawn('w1b')] }, ['w1']);

/** Something that the store writes, and what has to be there before it. */
export interface Operation {
  readonly name: string;
  readonly before: (dir: string) => Promise<void>;
  readonly run: (dir: string, fs: RawFs) => Promise<unknown>;
}

const begin = async (dir: string) => publishEdition(await openOrCreate(dir), first, AUTHOR, 'Edition 2018');
const withDraft = async (dir: string) => {
  await begin(dir);
  await saveDraft(await openForWriting(dir), second, AUTHOR, 'Draft 2024');
};
const withBoth = async (dir: string) => {
  await begin(dir);
  await publishEdition(await openForWriting(dir), second, AUTHOR, 'Edition 2024');
};

export const OPERATIONS: readonly Operation[] = [
  {
    name: 'making a catalog and its first edition',
    before: async () => {},
    run: async (dir, fs) => publishEdition(await openOrCreate(dir, fs), first, AUTHOR, 'Edition 2018'),
  },
  {
    name: 'publishing the next edition',
    before: begin,
    run: async (dir, fs) => publishEdition(await openForWriting(dir, fs), second, AUTHOR, 'Edition 2024'),
  },
  {
    name: 'opening a draft',
    before: begin,
    run: async (dir, fs) => saveDraft(await openForWriting(dir, fs), second, AUTHOR, 'Draft 2024'),
  },
  {
    name: 'two steps of work on a draft',
    before: withDraft,
    run: async (dir, fs) => {
      const catalog = await openForWriting(dir, fs);
      const { ref, commit } = await locate(catalog, '2024');
      const steps = ['One', 'Two'].map(title => ({
        edition: smallEdition('2024', '2018', title, { lineage: [withdrawn('w1b')] }, ['w1']),
        message: title,
      }));
      await saveDraftSteps(catalog, { ref: ref!, tip: commit }, steps, AUTHOR);
    },
  },
  {
    name: 'publishing a draft',
    before: withDraft,
    run: async (dir, fs) => {
      const catalog = await openForWriting(dir, fs);
      const at = await locate(catalog, '2024');
      if (at.state === 'published') return;
      await publishFromDraft(catalog, second, at.commit, AUTHOR, 'Edition 2024');
    },
  },
  {
    name: 'publishing an erratum',
    before: withBoth,
    run: async (dir, fs) =>
      publishErratum(
        await openForWriting(dir, fs),
        '2024',
        [withdrawn('w1a')],
        id => id.slice(0, 2),
        AUTHOR,
        'Erratum',
      ),
  },
  {
    name: 'writing a local rule',
    before: begin,
    run: async (dir, fs) =>
      writeBeside(await openForWriting(dir, fs), new Map([['local/here/r1.json', '{}\n']]), AUTHOR, 'Rule'),
  },
];

/**
 * Everything a reader can see: the refs, read from their files. Dates and authors are fixed, so equal content has equal
 * names. Main counts only where the operation is about main; elsewhere it merely follows the tags.
 */
export function visible(dir: string, withMain: boolean): string {
  if (!existsSync(join(dir, 'HEAD')) || !existsSync(join(dir, 'config'))) return 'no catalog';
  const names = readdirSync(join(dir, 'refs'), { recursive: true, withFileTypes: true })
    .filter(f => f.isFile() && !f.name.endsWith('.lock'))
    .map(f => join(f.parentPath, f.name))
    .filter(path => withMain || !path.endsWith(join('heads', 'main')));
  return names
    .map(path => `${relative(dir, path)} ${readFileSync(path, 'utf8').trim()}`)
    .sort()
    .join('\n');
}

/** Our own reader reads all of it. */
export async function readAll(dir: string): Promise<void> {
  const catalog = await openCatalog(dir);
  for (const { name } of await listEditions(catalog)) {
    await readEdition(catalog, name);
    await readLineage(catalog, name);
  }
}

/**
 * States that are neither before nor after, and whole all the same: a repository without an edition, and an edition that
 * is published while the branch of its draft is still there (the tag decides; the next writer removes the branch).
 */
export function between(was: string, became: string): string[] {
  if (was === 'no catalog') return [''];
  const draft = was.split('\n').filter(line => line.includes('draft'));
  return [[...draft, became].sort().join('\n')];
}
