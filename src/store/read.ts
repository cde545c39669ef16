import { ITEMS_FOLDER, OUTLINE_PATH, parseEditionFiles, SETTINGS_PATH } from '../format/edition-files.ts';
import { entriesOf, parseTable, tablePath } from '../format/edition-table.ts';
import { fileNameOf } from '../format/file-names.ts';
import { parseJson } from '../format/json.ts';
import { decisionsFolder, lineageFolder, parseDecisionFiles, parseLineageFiles } from '../format/lineage-files.ts';
import * as schemas from '../format/schemas.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { Edition, EditionHeader, EditionIndex } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { Placed, Places } from '../model/places.ts';
import type { Settings } from '../model/settings.ts';
import { DRAFT_PATH, draftHeader, type Located, locate, readHeader } from './names.ts';
import type { Catalog } from './open.ts';
import { fileAt, listFiles, type Repository, readText, readTexts } from './repository.ts';

/** An edition without its texts: from its frozen table, or, for a draft, from a full reading. */
export async function readIndex(catalog: Catalog, name: string): Promise<EditionIndex> {
  const at = await locate(catalog, name);
  const { tree } = at;
  if (at.state === 'draft') return { ...indexOf(await readEditionAt(catalog, at)), tree };
  const { repo } = catalog;
  const [header, settings, table] = await Promise.all([
    headerOf(repo, at),
    readSettings(repo, at),
    readTable(repo, at),
  ]);
  return { header, settings, entries: parseTable(tablePath(at.name), table), tree };
}

/** The frozen table of a published edition as it stands in its file. */
export async function readTable(repo: Repository, at: Located): Promise<string> {
  const path = tablePath(at.name);
  const oid = await fileAt(repo, at.tree, path);
  if (oid === null) throw damaged([missing(path)]);
  return readText(repo, oid);
}

export function indexOf(edition: Edition): EditionIndex {
  return { ...edition, entries: entriesOf(edition.settings, edition.items) };
}

/** An edition with all its texts. Throws BadCatalog with all findings where it cannot be trusted. */
export async function readEdition(catalog: Catalog, name: string): Promise<Edition> {
  return readEditionAt(catalog, await locate(catalog, name));
}

export async function readEditionAt(catalog: Catalog, at: Located): Promise<Edition> {
  const { settings, items, findings } = await parseTree(catalog.repo, at.tree);
  const errors = findings.filter(f => f.severity === 'error');
  if (!settings || errors.length > 0) throw damaged(errors);
  return { header: await headerOf(catalog.repo, at), settings, items };
}

/** The edition inside a tree with everything that is wrong with it; used where damage is to be shown, not refused. */
export async function parseTree(repo: Repository, tree: string) {
  const files = await listFiles(repo, tree, ITEMS_FOLDER);
  for (const path of [SETTINGS_PATH, OUTLINE_PATH]) {
    const oid = await fileAt(repo, tree, path);
    if (oid !== null) files.set(path, oid);
  }
  return parseEditionFiles(await readTexts(repo, files));
}

/**
 * The items asked for, read from the files that hold them and no others: a crosswalk of 100,000 items whose next
 * edition changed 500 files reads 1,000 files. They are read from the tree that the index was read from: its name may
 * mean another by now, and the name of a branch's index is the draft's.
 */
export async function readItems(
  { repo }: Catalog,
  index: EditionIndex,
  places: Places<Placed>,
  wanted: Iterable<ItemId>,
): Promise<Map<ItemId, Item>> {
  const all = await listFiles(repo, treeBehind(index), ITEMS_FOLDER);
  const files = new Map<string, string>();
  for (const id of wanted) {
    const path = `${ITEMS_FOLDER}${fileNameOf(fileHolding(places, index.settings, id))}.json`;
    const oid = all.get(path);
    if (oid === undefined) throw damaged([missing(path)]);
    files.set(path, oid);
  }
  const items = new Map<ItemId, Item>();
  for (const [path, source] of await readTexts(repo, files)) {
    const parsed = parseJson(path, source, schemas.storedItem);
    if (!('value' in parsed)) throw damaged(parsed.findings);
    const collect = ({ items: nested = [], ...said }: schemas.StoredItem) => {
      const entry = places.get(said.id);
      if (entry) {
        const { number, parent, level } = entry;
        items.set(said.id, { ...said, number, parent, level } as Item);
      }
      nested.forEach(collect);
    };
    collect(parsed.value);
  }
  return items;
}

/** The tree that an index was read from, for what is read after it. */
export function treeBehind({ tree }: EditionIndex): string {
  if (tree === undefined) throw new Error('the index was read from no catalog');
  return tree;
}

/** The id whose file holds an item: its ancestor at fileLevel, or itself above that. */
export function fileHolding(places: Places<Placed>, settings: Settings, id: ItemId): ItemId {
  let at = places.get(id);
  while (at && at.level > settings.fileLevel && at.parent !== null) at = places.get(at.parent);
  return at?.id ?? id;
}

type Stood = Pick<Located, 'name' | 'tree'>;

/** The lineage records of the step that ends at an edition. Published lineage with errors is refused. */
export async function readLineage(catalog: Catalog, toEdition: string): Promise<readonly LineageRecord[]> {
  return readLineageAt(catalog, await locate(catalog, toEdition));
}

export async function readLineageAt(catalog: Catalog, at: Stood): Promise<readonly LineageRecord[]> {
  const files = await listFiles(catalog.repo, at.tree, lineageFolder(at.name));
  const { records, findings } = parseLineageFiles(await readTexts(catalog.repo, files));
  if (findings.length > 0) throw damaged(findings);
  return records;
}

export async function readDecisions(catalog: Catalog, toEdition: string): Promise<readonly Decision[]> {
  return readDecisionsAt(catalog, await locate(catalog, toEdition));
}

export async function readDecisionsAt(catalog: Catalog, at: Stood): Promise<readonly Decision[]> {
  const files = await listFiles(catalog.repo, at.tree, decisionsFolder(at.name));
  const { decisions, findings } = parseDecisionFiles(await readTexts(catalog.repo, files));
  if (findings.length > 0) throw damaged(findings);
  return decisions;
}

async function headerOf(repo: Repository, at: Located): Promise<EditionHeader> {
  if (at.state === 'published') {
    const { table: _, ...header } = await readHeader(repo, at.tree, at.name, at.erratum);
    return header;
  }
  const header = await draftHeader(repo, at.tree);
  if (!header) throw damaged([missing(DRAFT_PATH)]);
  return header;
}

async function readSettings(repo: Repository, at: Located): Promise<Settings> {
  const oid = await fileAt(repo, at.tree, SETTINGS_PATH);
  if (oid === null) throw damaged([missing(SETTINGS_PATH)]);
  const parsed = parseJson(SETTINGS_PATH, await readText(repo, oid), schemas.settings);
  if (!('value' in parsed)) throw damaged(parsed.findings);
  return parsed.value as Settings;
}

function missing(path: string): Finding {
  return {
    rule: 'missing-file',
    severity: 'error',
    subject: path,
    message: `${path} is missing.`,
    place: { file: path },
  };
}

function damaged(findings: readonly Finding[]): CatalogError {
  const [first, ...rest] = findings;
  const more = rest.length > 0 ? ` (and ${rest.length} more)` : '';
  return new CatalogError(
    'BadCatalog',
    `${first?.message ?? 'The catalog cannot be read.'}${more} Mend it in a clone and push, or restore it with git revert.`,
    { count: findings.length },
    findings,
  );
}
