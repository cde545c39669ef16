import { createHash } from 'node:crypto';
import { ITEMS_FOLDER } from '../format/edition-files.ts';
import { fileAt, listFiles, type Repository } from './repository.ts';

/**
 * What has to change in a tree so that it holds these files: those that differ are written, and those of ours that it
 * holds besides (an item's file that is no longer wanted) are removed. Writing all of them again costs minutes at
 * 100,000 items.
 */
export async function changesFor(
  repo: Repository,
  base: string | null,
  files: Readonly<Record<string, string>>,
  folders: readonly string[] = [ITEMS_FOLDER, ...foldersOf(files)],
): Promise<Map<string, string | null>> {
  const changes = new Map<string, string | null>();
  const held = new Map<string, string>();
  for (const folder of base === null ? [] : new Set(folders)) {
    for (const [path, oid] of await listFiles(repo, base!, folder)) held.set(path, oid);
  }
  for (const [path, text] of Object.entries(files)) {
    const known = held.get(path) ?? (base === null ? null : path.includes('/') ? null : await fileAt(repo, base, path));
    if (known !== blobName(text)) changes.set(path, text);
  }
  for (const path of held.keys()) if (!Object.hasOwn(files, path)) changes.set(path, null);
  return changes;
}

function foldersOf(files: Readonly<Record<string, string>>): string[] {
  const own = Object.keys(files).filter(path => /^(lineage|decisions)\//.test(path));
  return [...new Set(own.map(path => path.slice(0, path.lastIndexOf('/') + 1)))];
}

/** The name that git gives to a blob with this text. */
function blobName(text: string): string {
  const bytes = Buffer.from(text, 'utf8');
  return createHash('sha1').update(`blob ${bytes.length}\0`).update(bytes).digest('hex');
}
