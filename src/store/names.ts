import * as git from 'isomorphic-git';
import { headerPath, parseHeader } from '../format/edition-table.ts';
import { parseJson } from '../format/json.ts';
import { draftFile } from '../format/schemas.ts';
import type { EditionHeader } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Catalog } from './open.ts';
import { readRef } from './refs.ts';
import { commitOfTag, fileAt, isAncestor, type Repository, readText, treeOf } from './repository.ts';

/** `edition/2024.0` is the edition as published, `edition/2024.1` its first erratum. */
export const tagOf = (name: string, erratum: number) => `edition/${name}.${erratum}`;
export const MAIN = 'refs/heads/main';
export const draftRef = (name: string) => `refs/heads/draft/${name}`;
/** What a draft says about itself until it is published. */
export const DRAFT_PATH = 'draft.json';

/** An edition or draft found by name, with the tree that holds it. */
export interface Located {
  readonly name: string;
  readonly state: 'published' | 'draft';
  /** 0 for the edition as published; of no meaning for a draft. */
  readonly erratum: number;
  readonly commit: string;
  readonly tree: string;
  /** The branch that a draft was read from. */
  readonly ref?: string;
}

interface Tag {
  readonly name: string;
  readonly erratum: number;
  readonly ref: string;
}

/** The tags of all editions and errata. */
export async function listEditionTags(repo: Repository): Promise<Tag[]> {
  const tags: Tag[] = [];
  for (const tag of await git.listTags(repo.git)) {
    const match = /^edition\/(.+)\.(\d+)$/.exec(tag);
    if (match) tags.push({ name: match[1]!, erratum: Number(match[2]), ref: `refs/tags/${tag}` });
  }
  return tags;
}

/** The newest erratum of each edition. */
export function newestTags(tags: readonly Tag[]): Tag[] {
  const newest = new Map<string, Tag>();
  for (const tag of tags) {
    const known = newest.get(tag.name);
    if (!known || tag.erratum > known.erratum) newest.set(tag.name, tag);
  }
  return [...newest.values()];
}

export async function listDrafts({ repo }: { readonly repo: Repository }): Promise<string[]> {
  // A lock file beside a branch is listed as a branch; no ref's name may end like that.
  const branches = (await git.listBranches(repo.git)).filter(b => !b.endsWith('.lock'));
  return branches.filter(b => b.startsWith('draft/')).map(b => b.slice('draft/'.length));
}

/** Somebody's own branches of a draft, by name, each with the commit where it stands. */
export async function listDraftBranches(
  catalog: Catalog,
  draft: string,
): Promise<{ readonly name: string; readonly tip: string }[]> {
  const { repo } = catalog;
  const found: { name: string; tip: string }[] = [];
  for (const name of (await git.listBranches(repo.git)).sort()) {
    if (name.startsWith('draft/') || name === 'main' || branchRef(name) === null) continue;
    // A name that an edition or a draft has as well means that one, wherever it is named; what cannot be read is no branch of ours.
    const at = await locate(catalog, name).catch(() => undefined);
    if (at?.ref === `refs/heads/${name}` && at.name === draft) found.push({ name, tip: at.commit });
  }
  return found;
}

/**
 * Finds `2024` (the newest erratum of that edition), `2024.0` (as published), a draft by its name, or somebody's own
 * branch of a draft by the name of the branch.
 * Throws UnknownEdition, with the known ones listed.
 */
export async function locate(catalog: Catalog, name: string): Promise<Located> {
  const { repo, held } = catalog;
  const found = held?.get(name);
  if (found) return found;
  const tags = await listEditionTags(repo);
  const exact = newestTags(tags).find(t => t.name === name);
  const tag = exact ?? tags.find(t => `${t.name}.${t.erratum}` === name);
  if (tag) {
    const commit = await commitOfTag(repo, (await readRef(repo.fs, repo.gitdir, tag.ref))!);
    return { name: tag.name, state: 'published', erratum: tag.erratum, commit, tree: await treeOf(repo, commit) };
  }
  const drafts = await listDrafts(catalog);
  const ref = drafts.includes(name) ? draftRef(name) : branchRef(name);
  const commit = ref === null ? null : await readRef(repo.fs, repo.gitdir, ref);
  if (ref !== null && commit !== null) {
    const tree = await treeOf(repo, commit);
    const header = await draftHeader(repo, tree);
    if (header) return { name: header.name, state: 'draft', erratum: 0, commit, tree, ref };
  }
  const known = [...new Set([...tags.map(t => t.name), ...drafts])].sort();
  throw new CatalogError(
    'UnknownEdition',
    known.length === 0
      ? `There is no edition ${name}: the catalog is empty; import one with: fishplate import TABLE --edition NAME`
      : `There is no edition ${name}; use one of: ${known.join(', ')}.`,
    { name, known },
  );
}

/**
 * A catalog in which editions and drafts stand where they were found, for what asks for them by name more than once: the
 * name of a draft then means the branch, or the commit, that was found, whatever is written in the meantime.
 */
export function holding(catalog: Catalog, ...found: readonly Located[]): Catalog {
  return { ...catalog, held: new Map([...(catalog.held ?? []), ...found.map(at => [at.name, at] as const)]) };
}

/** The draft inside one commit. */
export async function locateCommit({ repo }: Catalog, commit: string): Promise<Located> {
  const tree = await treeOf(repo, commit);
  const header = await draftHeader(repo, tree);
  if (header) return { name: header.name, state: 'draft', erratum: 0, commit, tree };
  throw new CatalogError('BadArgument', `The commit ${commit} holds no draft; name one of: fishplate draft log`);
}

/** Where main stands; null in a catalog without an edition. */
export async function mainCommit({ repo }: Catalog): Promise<string | null> {
  return readRef(repo.fs, repo.gitdir, MAIN);
}

/** Whether everything in a commit is in another one already. */
export async function isJoined({ repo }: Catalog, commit: string, into: string): Promise<boolean> {
  return isAncestor(repo, commit, into);
}

/** What a draft says about itself; undefined where the tree holds no draft. */
export async function draftHeader(repo: Repository, tree: string): Promise<EditionHeader | undefined> {
  const oid = await fileAt(repo, tree, DRAFT_PATH);
  if (oid === null) return undefined;
  const parsed = parseJson(DRAFT_PATH, await readText(repo, oid), draftFile);
  if (!('value' in parsed)) {
    const [first, ...rest] = parsed.findings;
    throw new CatalogError('BadCatalog', `${first!.message} Mend it in a clone and push.`, {}, [first!, ...rest]);
  }
  const { name, replaces, dates } = parsed.value;
  return { name, replaces, dates: dates as EditionHeader['dates'], erratum: 0, state: 'draft' };
}

/** A branch by its name, where that can be the name of one. */
function branchRef(name: string): string | null {
  return /^[\w][\w.-]*(\/[\w][\w.-]*)*$/.test(name) && !name.includes('..') && !name.endsWith('.lock')
    ? `refs/heads/${name}`
    : null;
}

/** The headers of all published editions, oldest first. */
export async function listEditions(catalog: Catalog): Promise<EditionHeader[]> {
  const { repo } = catalog;
  const headers = await Promise.all(
    newestTags(await listEditionTags(repo)).map(async tag => {
      const commit = await commitOfTag(repo, (await readRef(repo.fs, repo.gitdir, tag.ref))!);
      return readHeader(repo, await treeOf(repo, commit), tag.name, tag.erratum);
    }),
  );
  const byName = new Map(headers.map(h => [h.name, h]));
  const age = (h: EditionHeader, seen = 0): number => {
    const before = h.replaces === null ? undefined : byName.get(h.replaces);
    return before && seen <= byName.size ? 1 + age(before, seen + 1) : 0;
  };
  const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  return headers.sort(
    (a, b) => age(a) - age(b) || compare(a.dates.published ?? '', b.dates.published ?? '') || compare(a.name, b.name),
  );
}

export async function readHeader(
  repo: Repository,
  tree: string,
  name: string,
  erratum: number,
): Promise<EditionHeader & { readonly table: string }> {
  const path = headerPath(name);
  const oid = await fileAt(repo, tree, path);
  if (oid === null) {
    throw new CatalogError(
      'BadCatalog',
      `The tag ${tagOf(name, erratum)} has no ${path}; it was not made by publication - delete it, or restore it from a clone.`,
      { path },
    );
  }
  return parseHeader(path, await readText(repo, oid), erratum);
}
