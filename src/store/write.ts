import { createHash } from 'node:crypto';
import {
  ITEMS_FOLDER,
  OUTLINE_PATH,
  parseEditionFiles,
  SETTINGS_PATH,
  writeEditionFiles,
} from '../format/edition-files.ts';
import { entriesOf, headerPath, tablePath, writeHeader, writeTable } from '../format/edition-table.ts';
import { writeJson } from '../format/json.ts';
import { decisionsFolder, lineageFolder, writeDecisionFiles, writeLineageFiles } from '../format/lineage-files.ts';
import { editionName } from '../format/schemas.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { EditionDates } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { Settings } from '../model/settings.ts';
import { followMain } from './main-branch.ts';
import { DRAFT_PATH, draftRef, listEditionTags, locate, MAIN, tagOf } from './names.ts';
import type { Catalog } from './open.ts';
import { moveRef, readRef } from './refs.ts';
import {
  fileAt,
  isAncestor,
  listFiles,
  type Person,
  type Repository,
  treeOf,
  writeChanges,
  writeCommit,
  writeTagObject,
  writeTreeFrom,
} from './repository.ts';

/** An edition as it is about to be written. */
export interface NewEdition {
  readonly name: string;
  readonly replaces: string | null;
  readonly dates: EditionDates;
  readonly settings: Settings;
  readonly items: readonly Item[];
  readonly lineage: readonly LineageRecord[];
  readonly decisions: readonly Decision[];
  /** The id whose file holds an item of the edition that this one replaces. */
  readonly oldFileOf: (id: ItemId) => ItemId;
}

/**
 * Publishes a whole edition: one commit with its files, lineage and frozen table, then its tag. The tag is the moment
 * of publication; before it nothing is visible, after it the edition is there whole. Throws EditionExists.
 */
export async function publishEdition(
  catalog: Catalog,
  edition: NewEdition,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  await refuseTaken(catalog, edition.name);
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const base = main === null ? null : await treeOf(repo, main);
  const tree = await writeChanges(
    repo,
    base,
    await changesFor(repo, base, { ...editionFiles(edition), ...frozen(edition) }),
  );
  const commit = await writeCommit(repo, { tree, parents: main === null ? [] : [main], message, author });
  await tagEdition(repo, edition.name, 0, commit, message, author);
  await following(edition.name, () => followMain(repo));
}

/** Writes a new draft as the first commit on its branch. */
export async function saveDraft(catalog: Catalog, edition: NewEdition, author: Person, message: string): Promise<void> {
  const { repo } = catalog;
  await refuseTaken(catalog, edition.name);
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const commit = await commitDraft(catalog, edition, main === null ? [] : [main], author, message);
  await moveRef(repo.fs, repo.gitdir, draftRef(edition.name), null, commit);
}

/** A draft after one step of work, with what is said about the step. */
export interface DraftStep {
  readonly edition: NewEdition;
  readonly message: string;
  /** Commits that the step joins with the branch, besides the one before it. */
  readonly joins?: readonly string[];
}

/**
 * Writes steps of work on a draft, a commit each, on the branch that it was read from. The branch moves once: all of
 * them are there, or none. Throws Changed where somebody else has written to the branch since.
 */
export async function saveDraftSteps(
  catalog: Catalog,
  branch: { readonly ref: string; readonly tip: string },
  steps: readonly DraftStep[],
  author: Person,
): Promise<string> {
  const { repo } = catalog;
  let tip = branch.tip;
  for (const { edition, message, joins = [] } of steps) {
    tip = await commitDraft(catalog, edition, [tip, ...joins], author, message);
  }
  await moveRef(repo.fs, repo.gitdir, branch.ref, branch.tip, tip);
  return tip;
}

/** Begins somebody's own branch of a draft, at the commit where the draft stands. */
export async function branchDraft(catalog: Catalog, branch: string, at: string): Promise<void> {
  const { repo } = catalog;
  const ref = `refs/heads/${branch}`;
  if ((await readRef(repo.fs, repo.gitdir, ref)) !== null) {
    throw new CatalogError('EditionExists', `There is a branch ${branch} already; choose another name, or work on it.`);
  }
  await moveRef(repo.fs, repo.gitdir, ref, null, at);
}

/** The files of a draft by path, and the folders that hold no others. */
export function draftFiles(edition: NewEdition): {
  readonly files: Readonly<Record<string, string>>;
  readonly folders: readonly string[];
} {
  const { name, replaces, dates } = edition;
  return {
    files: { ...editionFiles(edition), [DRAFT_PATH]: writeJson({ name, replaces, dates }) },
    folders: [ITEMS_FOLDER, lineageFolder(name), decisionsFolder(name)],
  };
}

async function commitDraft(
  { repo }: Catalog,
  edition: NewEdition,
  parents: readonly string[],
  author: Person,
  message: string,
): Promise<string> {
  const base = parents[0] === undefined ? null : await treeOf(repo, parents[0]);
  const { files, folders } = draftFiles(edition);
  const tree = await writeChanges(repo, base, await changesFor(repo, base, files, folders));
  return writeCommit(repo, { tree, parents, message, author });
}

/**
 * Publishes a draft that is on its branch: a commit that joins it with main and carries its frozen table, then the
 * tag, then the branch of the draft goes.
 */
export async function publishDraft(
  catalog: Catalog,
  edition: NewEdition,
  tip: string,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const { name } = edition;
  const own = [SETTINGS_PATH, OUTLINE_PATH, ITEMS_FOLDER, lineageFolder(name), decisionsFolder(name)];
  const draft = await treeOf(repo, tip);
  const base = main === null ? draft : await writeTreeFrom(repo, await treeOf(repo, main), draft, own);
  const changes = new Map<string, string | null>(Object.entries(frozen(edition)));
  changes.set(DRAFT_PATH, null);
  const tree = await writeChanges(repo, base, changes);
  const parents = main === null || (await isAncestor(repo, main, tip)) ? [tip] : [main, tip];
  const commit = await writeCommit(repo, { tree, parents, message, author });
  await tagEdition(repo, name, 0, commit, message, author);
  await following(name, async () => {
    await followMain(repo);
    await moveRef(repo.fs, repo.gitdir, draftRef(name), tip, null);
  });
}

/**
 * Publishes an erratum of an edition: its lineage is replaced, nothing else changes. Returns the erratum's number.
 */
export async function publishErratum(
  catalog: Catalog,
  name: string,
  lineage: readonly LineageRecord[],
  oldFileOf: (id: ItemId) => ItemId,
  author: Person,
  message: string,
): Promise<number> {
  const { repo } = catalog;
  const at = await locate(catalog, name);
  if (at.state !== 'published') {
    throw new CatalogError(
      'BadArgument',
      `${name} is a draft; its lineage is changed in the draft itself, not by an erratum.`,
    );
  }
  const files = Object.fromEntries(writeLineageFiles(at.name, lineage, oldFileOf));
  const changes = await changesFor(repo, at.tree, files, [lineageFolder(at.name)]);
  const tree = await writeChanges(repo, at.tree, changes);
  const commit = await writeCommit(repo, { tree, parents: [at.commit], message, author });
  await tagEdition(repo, at.name, at.erratum + 1, commit, message, author);
  await following(`${at.name}.${at.erratum + 1}`, () => followMain(repo));
  return at.erratum + 1;
}

/** Writes files that belong to no edition (local rules, intake, comments …) as one commit on main. */
export async function writeBeside(
  catalog: Catalog,
  files: ReadonlyMap<string, string | null>,
  author: Person,
  message: string,
): Promise<void> {
  const { repo } = catalog;
  const main = await readRef(repo.fs, repo.gitdir, MAIN);
  const tree = await writeChanges(repo, main === null ? null : await treeOf(repo, main), files);
  const commit = await writeCommit(repo, { tree, parents: main === null ? [] : [main], message, author });
  await moveRef(repo.fs, repo.gitdir, MAIN, main, commit);
}

async function tagEdition(
  repo: Repository,
  name: string,
  erratum: number,
  commit: string,
  message: string,
  tagger: Person,
) {
  const tag = tagOf(name, erratum);
  const oid = await writeTagObject(repo, { object: commit, name: tag, message, tagger });
  await moveRef(repo.fs, repo.gitdir, `refs/tags/${tag}`, null, oid);
}

/** The tag has published already; "was not changed" would be false where only the branches that follow it fail. */
async function following(name: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof CatalogError)) throw error;
    const { why = error.message.replace(/\.$/, '') } = error.data;
    throw new CatalogError(
      error.code,
      `${name} is published, but the branches do not follow it yet (${why}); mend that, and the next command that writes completes them.`,
      error.data,
    );
  }
}

async function refuseTaken(catalog: Catalog, name: string): Promise<void> {
  if (!editionName.safeParse(name).success) {
    throw new CatalogError(
      'BadArgument',
      `${JSON.stringify(name)} cannot be an edition's name; use up to 60 letters, digits, dots, hyphens and underscores, for example 2024.`,
    );
  }
  const tags = await listEditionTags(catalog.repo);
  const taken = tags.some(t => t.name === name || `${t.name}.${t.erratum}` === name);
  const shadowing = tags.some(t => t.name.startsWith(`${name}.`) && /^\d+$/.test(t.name.slice(name.length + 1)));
  if (taken || shadowing || (await readRef(catalog.repo.fs, catalog.repo.gitdir, draftRef(name))) !== null) {
    throw new CatalogError(
      'EditionExists',
      `Edition ${name} exists already (as an edition, an erratum or a draft) and cannot be replaced; choose another name, or correct its lineage with: fishplate erratum ${name}`,
      { name },
    );
  }
}

/** The edition's files; what could not be read back is refused before anything is written. */
function editionFiles(edition: NewEdition): Record<string, string> {
  const own = writeEditionFiles(edition.settings, edition.items);
  const [first, ...rest] = parseEditionFiles(own).findings;
  if (first) {
    throw new CatalogError(
      'BadArgument',
      `Edition ${edition.name} cannot be kept as it is: ${first.message} Mend that and try again.`,
      {},
      [first, ...rest],
    );
  }
  return Object.fromEntries([
    ...own,
    ...writeLineageFiles(edition.name, edition.lineage, edition.oldFileOf),
    ...writeDecisionFiles(edition.name, edition.decisions),
  ]);
}

function frozen(edition: NewEdition): Record<string, string> {
  const table = writeTable(entriesOf(edition.settings, edition.items));
  return { [headerPath(edition.name)]: writeHeader(edition, table), [tablePath(edition.name)]: table };
}

/**
 * What has to change in a tree so that it holds these files: those that differ are written, and those of ours that it
 * holds besides (an item's file that is no longer wanted) are removed. Writing all of them again costs minutes at
 * 100,000 items.
 */
async function changesFor(
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
