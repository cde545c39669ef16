import { basename, parse as parsePath } from 'node:path';
import { checkConservation } from '../crosswalk/conserve.ts';
import { joinEditions } from '../crosswalk/joint.ts';
import { linkByLineage } from '../crosswalk/lineage.ts';
import { deriveSettings } from '../editing/derive-settings.ts';
import { lineageFromTables } from '../editing/lineage-rows.ts';
import { type PlacedRow, placeRows } from '../editing/place-rows.ts';
import { parseJson } from '../format/json.ts';
import * as schemas from '../format/schemas.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { EditionDates, EditionIndex } from '../model/edition.ts';
import { isRequirement } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import { mintId } from '../model/ids.ts';
import type { Item, ItemId, TypeId } from '../model/item.ts';
import { numberItems } from '../model/numbering.ts';
import { type Placed, type Places, placesOf } from '../model/places.ts';
import type { Settings } from '../model/settings.ts';
import { listEditions } from '../store/names.ts';
import { type Catalog, openCatalog, openOrCreate } from '../store/open.ts';
import { fileHolding, indexOf, readIndex } from '../store/read.ts';
import { type NewEdition, publishEdition, saveDraft } from '../store/write.ts';
import { readTable } from '../tables/read-table.ts';
import { type Ports, person } from './ports.ts';

export interface ImportRequest {
  /** csv or JSON files that make one edition together. */
  readonly tables: readonly string[];
  readonly edition: string;
  readonly catalog: string;
  /** The edition that this one replaces; absent = the newest one. */
  readonly replaces?: string;
  /** Tables that say what became of the items of the edition replaced. */
  readonly lineage?: readonly string[];
  /** JSON file with settings (catalog.json) that win over what the tables show. */
  readonly settings?: string;
  /** JSON files with edition-wide decisions. */
  readonly decisions?: readonly string[];
  readonly dates?: EditionDates;
  /** Installation types that whole tables are about: file → types. */
  readonly appliesTo?: ReadonlyMap<string, readonly TypeId[]>;
  readonly skipRows?: boolean;
  /** Leave the edition as a draft on its branch instead of publishing it. */
  readonly draft?: boolean;
}

export interface ImportReport {
  readonly edition: string;
  readonly replaces: string | null;
  readonly state: 'published' | 'draft';
  readonly items: number;
  readonly requirements: number;
  readonly rowsSkipped: number;
  readonly idsMinted: number;
  readonly idsKept: number;
  /** Of the edition replaced: items with neither an heir nor a withdrawal. */
  readonly unaccounted: number;
  readonly findings: readonly Finding[];
}

/** Turns tables into a published edition. Nothing is written unless everything can be. */
export async function importTables(ports: Ports, request: ImportRequest): Promise<ImportReport> {
  const tables = [];
  for (const file of request.tables) tables.push(readTable(file, await ports.files.read(file)));
  const typesOfTable = request.appliesTo ?? new Map();
  const placed = placeRows(tables, typesOfTable);
  const findings: Finding[] = [...placed.findings];
  const problems = () => findings.filter(f => f.severity === 'error');
  const refuse = () => {
    const [first] = problems();
    if (!first) return;
    const at = first.place ? ` (${first.place.file}:${first.place.line})` : '';
    throw new CatalogError(
      'RowsNotPlaced',
      `${problems().length} rows or lines cannot be used, the first one: ${first.message}${at} Nothing was written; mend the table, or import the rest with --skip-rows.`,
      { count: problems().length },
      findings,
    );
  };
  if (!request.skipRows) refuse();
  if (placed.rows.length === 0) {
    throw new CatalogError(
      'BadTable',
      `No row of ${request.tables.join(', ')} can be used; check that its header names number, title or text.`,
    );
  }

  const earlier = await earlierEditions(request);
  const before = earlier.replaced;
  const told = request.settings === undefined ? {} : await readSettingsFile(ports, request.settings);
  const title = parsePath(basename(request.catalog)).name.replace(/^catalog$/, 'Catalog');
  const settings = deriveSettings(placed.rows, before?.settings, told, title);
  const identified = giveIds(ports, placed.rows, earlier, request);
  findings.push(...identified.findings);
  const numbered = renumber(settings, identified.items, findings);
  if (!request.skipRows) refuse();

  const old = placesOf(before?.settings ?? settings, before?.entries ?? []);
  const lineage = await readLineageTables(ports, request.lineage ?? [], old, placesOf(settings, numbered));
  findings.push(...lineage.findings);
  if (!request.skipRows) refuse();

  const edition: NewEdition = {
    name: request.edition,
    replaces: before?.header.name ?? null,
    dates: { published: isoDay(ports.now()), ...request.dates },
    settings,
    items: numbered,
    lineage: lineage.records,
    decisions: await readDecisionFiles(ports, request.decisions ?? []),
    oldFileOf: id => fileHolding(old as never, before?.settings ?? settings, id),
  };
  ports.progress(`Writing edition ${edition.name}: ${numbered.length} items`);
  const catalog = await openOrCreate(request.catalog);
  const message = `Edition ${edition.name}, imported from ${request.tables.map(t => basename(t)).join(', ')}`;
  if (request.draft) await saveDraft(catalog, edition, null, person(ports), message);
  else await publishEdition(catalog, edition, person(ports), message);

  return {
    edition: edition.name,
    replaces: edition.replaces,
    state: request.draft ? 'draft' : 'published',
    items: numbered.length,
    requirements: numbered.filter(i => isRequirement(settings, i)).length,
    rowsSkipped: tables.reduce((sum, t) => sum + t.rows.length, 0) - placed.rows.length,
    idsMinted: identified.minted,
    idsKept: numbered.length - identified.minted,
    unaccounted: before ? countUnaccounted(before, edition) : 0,
    findings,
  };
}

interface Earlier {
  readonly replaced: EditionIndex | undefined;
  /** Every id that any edition uses. */
  readonly ids: ReadonlySet<ItemId>;
}

async function earlierEditions(request: ImportRequest): Promise<Earlier> {
  const none = { replaced: undefined, ids: new Set<ItemId>() };
  let catalog: Catalog;
  try {
    catalog = await openCatalog(request.catalog);
  } catch (error) {
    if (error instanceof CatalogError && error.code === 'NotACatalog') return none;
    throw error;
  }
  const editions = await listEditions(catalog);
  const ids = new Set<ItemId>();
  for (const { name } of editions) for (const entry of (await readIndex(catalog, name)).entries) ids.add(entry.id);
  const name = request.replaces ?? editions.at(-1)?.name;
  return { replaced: name === undefined ? undefined : await readIndex(catalog, name), ids };
}

async function readSettingsFile(ports: Ports, file: string): Promise<Partial<Settings>> {
  const source = new TextDecoder().decode(await ports.files.read(file));
  const parsed = parseJson(file, source, schemas.settings.partial());
  if ('value' in parsed) return parsed.value as Partial<Settings>;
  throw new CatalogError(
    'BadArgument',
    `${parsed.findings[0]!.message} Mend the settings file and try again.`,
    {},
    parsed.findings,
  );
}

async function readDecisionFiles(ports: Ports, files: readonly string[]): Promise<Decision[]> {
  const decisions: Decision[] = [];
  for (const file of files) {
    const parsed = parseJson(file, new TextDecoder().decode(await ports.files.read(file)), schemas.decision);
    if (!('value' in parsed)) {
      throw new CatalogError(
        'BadArgument',
        `${parsed.findings[0]!.message} Mend the decision and try again.`,
        {},
        parsed.findings,
      );
    }
    decisions.push(parsed.value as Decision);
  }
  return decisions;
}

async function readLineageTables(ports: Ports, files: readonly string[], old: Places<Placed>, newer: Places<Placed>) {
  const tables = [];
  for (const file of files) tables.push(readTable(file, await ports.files.read(file)));
  return lineageFromTables(tables, old, newer);
}

/**
 * Ids: those that the table gives are kept (`type:id`, or `table:id`, where tables repeat them), `was` takes over the id
 * of the item that the row continues, everything else is minted.
 */
function giveIds(ports: Ports, rows: readonly PlacedRow[], earlier: Earlier, request: ImportRequest) {
  const findings: Finding[] = [];
  const before = earlier.replaced && placesOf(earlier.replaced.settings, earlier.replaced.entries);
  const tablesWithId = new Map<string, Set<string>>();
  for (const { id, row } of rows) {
    if (id === undefined) continue;
    const files = tablesWithId.get(id) ?? new Set();
    tablesWithId.set(id, files.add(row.file));
  }
  const used = new Map<ItemId, PlacedRow>();
  const ids = new Map<PlacedRow, ItemId>();
  let minted = 0;
  for (const placed of rows) {
    let id = placed.id;
    if (id !== undefined && tablesWithId.get(id)!.size > 1) {
      const types = request.appliesTo?.get(placed.row.file);
      id = `${types?.length === 1 ? types[0] : parsePath(placed.row.file).name}:${id}`;
    }
    if (id === undefined && placed.was !== undefined) {
      const found = before?.get(placed.was) ? [before.get(placed.was)!] : (before?.withNumber(placed.was) ?? []);
      if (found.length === 1) id = found[0]!.id;
      else
        findings.push(
          rowFinding(
            placed,
            'was-not-found',
            `continues ${placed.was}, which names ${found.length === 0 ? 'nothing' : `${found.length} items`} in the edition replaced`,
          ),
        );
    }
    const other = id === undefined ? undefined : used.get(id);
    if (other) {
      findings.push(
        rowFinding(
          placed,
          'id-twice',
          `has the id ${id}, which the row at ${other.row.file}:${other.row.line} has already`,
        ),
      );
      id = undefined;
    }
    if (id === undefined) {
      id = mintId(ports.random, candidate => earlier.ids.has(candidate) || used.has(candidate));
      minted++;
    }
    used.set(id, placed);
    ids.set(placed, id);
  }
  const byKey = new Map(rows.map(r => [r.number, r]));
  const items = rows.map((placed): Item => {
    const alsoAt = placed.alsoAt?.flatMap(key =>
      used.has(key) ? [key] : byKey.has(key) ? [ids.get(byKey.get(key)!)!] : [],
    );
    return {
      id: ids.get(placed)!,
      number: placed.number,
      level: placed.level,
      parent: placed.parent === null ? null : ids.get(placed.parent)!,
      ...(placed.levelLabel === undefined ? {} : { kind: placed.levelLabel }),
      ...(alsoAt?.length ? { alsoAt } : {}),
      ...placed.content,
    };
  });
  return { items, findings, minted };
}

/** The numbers by the edition's scheme. Where the table prints another one, the table and the scheme disagree. */
function renumber(settings: Settings, items: readonly Item[], findings: Finding[]): Item[] {
  const numbers = numberItems(settings, items);
  return items.map(item => {
    const number = numbers.get(item.id) ?? '';
    if (item.number !== '' && item.number !== number) {
      findings.push({
        rule: 'number-off-scheme',
        severity: 'error',
        subject: item.id,
        message: `The table prints ${item.number} for "${item.title}", but by the numbering scheme it is ${number || 'without a number'}.`,
      });
    }
    const { kind, ...rest } = item;
    const named = kind !== undefined && kind !== settings.levels[item.level - 1]?.name ? { kind } : {};
    return { ...rest, ...named, number };
  });
}

function countUnaccounted(before: EditionIndex, edition: NewEdition): number {
  const after = indexOf({
    header: { ...edition, erratum: 0, state: 'published' },
    settings: edition.settings,
    items: edition.items,
  });
  const links = linkByLineage(before.entries, after.entries, edition.lineage as LineageRecord[]);
  const joint = joinEditions(before, after, { from: before.header.name, to: edition.name, links });
  return checkConservation(joint).filter(f => f.rule === 'unaccounted').length;
}

function rowFinding(placed: PlacedRow, rule: string, what: string): Finding {
  const { file, line } = placed.row;
  return {
    rule,
    severity: 'error',
    subject: file,
    message: `${placed.number || placed.content.title} ${what}.`,
    place: { file, line },
  };
}

const isoDay = (date: Date) => date.toISOString().slice(0, 10);
