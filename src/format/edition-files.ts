import type { Finding } from '../model/finding.ts';
import { CONTENT_FIELDS, type Item, type ItemId } from '../model/item.ts';
import { numberItems } from '../model/numbering.ts';
import type { Settings } from '../model/settings.ts';
import { fileNameOf } from './file-names.ts';
import { parseJson, writeJson } from './json.ts';
import { type OutlineEntry, outline, type StoredItem, settings as settingsSchema, storedItem } from './schemas.ts';

export const SETTINGS_PATH = 'catalog.json';
export const OUTLINE_PATH = 'outline.json';
export const ITEMS_FOLDER = 'items/';

/**
 * The files of an edition, by path. Items of levels 1 to fileLevel have a file each and stand in the outline; deeper
 * ones nest in the file of their ancestor at fileLevel, so that a change to one requirement touches one small file.
 */
export function writeEditionFiles(settings: Settings, items: readonly Item[]): Map<string, string> {
  const files = new Map<string, string>();
  const top: OutlineEntry[] = [];
  const outlined = new Map<ItemId, OutlineEntry[]>();
  const stored = new Map<ItemId, StoredItem>();
  const own: StoredItem[] = [];
  for (const item of items) {
    const entry = storeItem(settings, item);
    stored.set(item.id, entry);
    if (item.level <= settings.fileLevel) {
      own.push(entry);
      const below: OutlineEntry[] = [];
      outlined.set(item.id, below);
      (item.parent === null ? top : outlined.get(item.parent)!).push({ id: item.id, items: below });
    } else {
      const parent = stored.get(item.parent!)!;
      parent.items = [...(parent.items ?? []), entry];
    }
  }
  files.set(SETTINGS_PATH, writeJson(settings));
  files.set(OUTLINE_PATH, writeJson(top.map(withoutEmpty)));
  for (const entry of own) files.set(`${ITEMS_FOLDER}${fileNameOf(entry.id)}.json`, writeJson(entry));
  return files;
}

function withoutEmpty(entry: OutlineEntry): OutlineEntry {
  if (typeof entry === 'string') return entry;
  return entry.items.length === 0 ? entry.id : { id: entry.id, items: entry.items.map(withoutEmpty) };
}

function storeItem(settings: Settings, item: Item): StoredItem {
  const entry: Record<string, unknown> = { id: item.id };
  const style = settings.numbering.levels[item.level - 1]?.style ?? 'printed';
  if (style === 'printed' && item.number !== '') entry.number = item.number;
  if (item.kind !== undefined) entry.kind = item.kind;
  if (item.alsoAt !== undefined) entry.alsoAt = item.alsoAt;
  for (const field of CONTENT_FIELDS) if (item[field] !== undefined) entry[field] = item[field];
  return entry as unknown as StoredItem;
}

export interface ParsedEdition {
  readonly settings: Settings | undefined;
  readonly items: readonly Item[];
  readonly findings: readonly Finding[];
}

/**
 * Reads an edition back from its files. Everything that is wrong is told; an edition with an error among its findings
 * is not to be used. Law: what `writeEditionFiles` wrote comes back equal.
 */
export function parseEditionFiles(files: ReadonlyMap<string, string>): ParsedEdition {
  const findings: Finding[] = [];
  const read = <T>(path: string, schema: Parameters<typeof parseJson<T>>[2]): T | undefined => {
    const source = files.get(path);
    if (source === undefined) {
      findings.push(broken(path, 'missing-file', `${path} is missing.`));
      return undefined;
    }
    const parsed = parseJson(path, source, schema);
    if ('value' in parsed) return parsed.value;
    findings.push(...parsed.findings);
    return undefined;
  };

  const settings = read(SETTINGS_PATH, settingsSchema) as Settings | undefined;
  const tree = read(OUTLINE_PATH, outline);
  const owners = new Map<ItemId, string>();
  const roots = new Map<ItemId, StoredItem>();
  for (const path of [...files.keys()].filter(p => p.startsWith(ITEMS_FOLDER)).sort()) {
    const entry = read(path, storedItem);
    if (!entry) continue;
    roots.set(entry.id, entry);
    forEachStored(entry, inner => {
      const other = owners.get(inner.id);
      if (other !== undefined) {
        findings.push(
          broken(
            path,
            'id-twice',
            `The id ${inner.id} stands in ${other} and again in ${path}; give one of them a new id.`,
          ),
        );
      }
      owners.set(inner.id, path);
    });
  }
  // What the outline lacks because a file cannot be read is no finding of its own.
  const unread = findings.some(f => f.rule !== 'id-twice');
  if (!settings || !tree || unread) return { settings, items: [], findings };

  const items = placeItems(settings, tree, roots, findings);
  const placed = new Set(items.map(i => i.id));
  for (const id of roots.keys()) {
    if (placed.has(id)) continue;
    const path = owners.get(id)!;
    findings.push(broken(path, 'not-in-outline', `${path} holds ${id}, which does not stand in ${OUTLINE_PATH}.`));
  }
  findings.push(...checkItems(settings, items, owners));
  return { settings, items, findings };
}

/** Walks the outline, and below each entry the items nested in its file, into document order. */
function placeItems(
  settings: Settings,
  tree: readonly OutlineEntry[],
  roots: ReadonlyMap<ItemId, StoredItem>,
  findings: Finding[],
): Item[] {
  const items: Item[] = [];
  const placed = new Set<ItemId>();
  const put = (entry: StoredItem, parent: ItemId | null, level: number) => {
    const { items: nested = [], number = '', ...said } = entry;
    items.push({ ...said, number, level, parent } as Item);
    for (const inner of nested) put(inner, entry.id, level + 1);
  };
  const walk = (entries: readonly OutlineEntry[], parent: ItemId | null, level: number) => {
    for (const entry of entries) {
      const id = typeof entry === 'string' ? entry : entry.id;
      const below = typeof entry === 'string' ? [] : entry.items;
      const stored = roots.get(id);
      if (placed.has(id)) {
        findings.push(broken(OUTLINE_PATH, 'outline-twice', `${OUTLINE_PATH} names ${id} twice; keep one place.`));
      } else if (!stored) {
        findings.push(broken(OUTLINE_PATH, 'no-file', `${OUTLINE_PATH} names ${id}, but no file in items/ holds it.`));
      } else if (level > settings.fileLevel || (stored.items && level < settings.fileLevel)) {
        findings.push(
          broken(
            OUTLINE_PATH,
            'file-level',
            `${id} stands at level ${level}, but items have files and nest by fileLevel ${settings.fileLevel} of ${SETTINGS_PATH}.`,
          ),
        );
      } else {
        placed.add(id);
        put(stored, parent, level);
        walk(below, id, level + 1);
      }
    }
  };
  walk(tree, null, 1);
  const numbers = numberItems(settings, items);
  return items.map(item => ({ ...item, number: numbers.get(item.id) ?? '' }));
}

/** What the schemas cannot see: references between files. */
function checkItems(settings: Settings, items: readonly Item[], owners: ReadonlyMap<ItemId, string>): Finding[] {
  const findings: Finding[] = [];
  const types = new Set(settings.installationTypes.map(t => t.id));
  const numbers = new Map<string, ItemId>();
  for (const item of items) {
    const path = owners.get(item.id) ?? OUTLINE_PATH;
    for (const type of item.appliesTo ?? []) {
      if (types.has(type)) continue;
      findings.push(
        broken(path, 'unknown-type', `${item.id} applies to ${type}, which ${SETTINGS_PATH} does not list.`),
      );
    }
    for (const place of item.alsoAt ?? []) {
      if (owners.has(place)) continue;
      findings.push(broken(path, 'unknown-place', `${item.id} also stands at ${place}, which does not exist.`));
    }
    if (!settings.numbering.numbersUnique || item.number === '') continue;
    const other = numbers.get(item.number);
    if (other !== undefined) {
      findings.push(broken(path, 'number-twice', `${other} and ${item.id} both print the number ${item.number}.`));
    }
    numbers.set(item.number, item.id);
  }
  return findings;
}

function forEachStored(entry: StoredItem, visit: (inner: StoredItem) => void): void {
  visit(entry);
  for (const inner of entry.items ?? []) forEachStored(inner, visit);
}

function broken(file: string, rule: string, message: string): Finding {
  return { rule, severity: 'error', subject: file, message, place: { file } };
}
