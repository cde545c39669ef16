import type { DraftState } from '../../editing/draft-state.ts';
import type { EditionHeader } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { placesOf } from '../../model/places.ts';
import { type Located, listDrafts, locate } from '../../store/names.ts';
import type { NewEdition } from '../../store/new-edition.ts';
import type { Catalog } from '../../store/open.ts';
import { fileHolding, readDecisionsAt, readEdition, readEditionAt, readLineageAt } from '../../store/read.ts';

/** A draft as it was read from a branch, ready for operations. */
export interface ReadDraft {
  readonly header: EditionHeader;
  /** The branch, and the commit on it that was read. */
  readonly branch: { readonly ref: string; readonly tip: string };
  readonly state: DraftState;
}

/** Reads a draft by its name, or a branch of it by the branch's name; without a name the only draft that there is. */
export async function readDraft(catalog: Catalog, name: string | undefined): Promise<ReadDraft> {
  const at = await locate(catalog, name ?? (await onlyDraft(catalog)));
  if (at.state !== 'draft' || at.ref === undefined) {
    throw new CatalogError(
      'BadArgument',
      `Edition ${at.name} is published and stays as it is; open a draft of the next one with: fishplate draft open NAME`,
    );
  }
  const { header, state } = await readDraftAt(catalog, at);
  return { header, branch: { ref: at.ref, tip: at.commit }, state };
}

/** What a draft, or a branch of one, is called wherever it is named: `2030`, `roofs`. */
export const nameOfBranch = (ref: string) => ref.replace(/^refs\/heads\/(draft\/)?/, '');

/** Refuses somebody's own branch of a draft where only the draft itself will do. */
export function refuseBranch({ name, ref }: Located): void {
  if (ref === undefined || nameOfBranch(ref) === name) return;
  const branch = nameOfBranch(ref);
  throw new CatalogError(
    'BadArgument',
    `${branch} is a branch of the draft ${name}; merge it first, with: fishplate draft merge ${branch}`,
  );
}

/** The draft inside one commit: a branch's tip, or any step before it. */
export async function readDraftAt(
  catalog: Catalog,
  at: Located,
): Promise<{ readonly header: EditionHeader; readonly state: DraftState }> {
  const { header, settings, items } = await readEditionAt(catalog, at);
  const older = header.replaces === null ? null : await readEdition(catalog, header.replaces);
  const [lineage, decisions] = [await readLineageAt(catalog, at), await readDecisionsAt(catalog, at)];
  return { header, state: { older, settings, dates: header.dates, items, lineage, decisions } };
}

async function onlyDraft(catalog: Catalog): Promise<string> {
  const drafts = await listDrafts(catalog);
  if (drafts.length === 1) return drafts[0]!;
  throw new CatalogError(
    'BadArgument',
    drafts.length === 0
      ? 'No draft is open; open one with: fishplate draft open NAME'
      : `There are ${drafts.length} drafts; say which one with --in ${drafts.join(' or --in ')}.`,
  );
}

/** A draft as the store writes it. */
export function draftToWrite({ name, replaces }: EditionHeader, state: DraftState): NewEdition {
  const { older, settings, dates, items, lineage, decisions } = state;
  const old = older ? placesOf(older.settings, older.items) : undefined;
  return {
    name,
    replaces,
    dates,
    settings,
    items,
    lineage,
    decisions,
    oldFileOf: id => (older && old ? fileHolding(old, older.settings, id) : id),
  };
}
