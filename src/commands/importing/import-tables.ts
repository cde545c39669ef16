import { basename, parse as parsePath } from 'node:path';
import { checkConservation } from '../../crosswalk/conserve.ts';
import { joinEditions } from '../../crosswalk/joint.ts';
import { linkByLineage } from '../../crosswalk/lineage.ts';
import { checkRowTypes, rowsOfKnownTypes } from '../../editing/check-row-types.ts';
import { deriveSettings } from '../../editing/derive-settings.ts';
import { identifyRows } from '../../editing/identify-rows.ts';
import { refuseUnknownHeads, type ToldHeads } from '../../editing/item-heads.ts';
import { lineageFromTables } from '../../editing/lineage-rows.ts';
import { numberByScheme } from '../../editing/number-by-scheme.ts';
import { placeRows } from '../../editing/place-rows.ts';
import { parseJson } from '../../format/json.ts';
import * as schemas from '../../format/schemas.ts';
import type { Decision, LineageRecord } from '../../model/crosswalk.ts';
import { dayOf } from '../../model/day.ts';
import type { EditionDates, EditionIndex } from '../../model/edition.ts';
import { isRequirement } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { placesOf } from '../../model/places.ts';
import type { Settings } from '../../model/settings.ts';
import { refuseTaken, refuseUnfit } from '../../store/free-name.ts';
import { listEditions } from '../../store/names.ts';
import type { NewEdition } from '../../store/new-edition.ts';
import { type Catalog, openCatalog, openOrCreate } from '../../store/open.ts';
import { publishEdition } from '../../store/publish.ts';
import { fileHolding, indexOf, readIndex } from '../../store/read.ts';
import { saveDraft } from '../../store/write-draft.ts';
import { type Ports, person } from '../ports/ports.ts';
import { readTables } from '../reading/read-tables.ts';
import { readLineageFiles } from './lineage-tables.ts';

export interface ImportRequest {
  /** csv, xlsx or JSON files that make one edition together. */
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
  /** Role (number, title, text …) → header, for tables whose headers are spelt otherwise. */
  readonly columns?: ToldHeads;
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
  // The name first, then whether each file can be read: nobody mends rows for a name that is refused afterwards.
  const earlier = await earlierEditions(request);
  const before = earlier.replaced;
  const tables = await readTables(ports, request.tables);
  const lineageTables = await readLineageFiles(ports, request.lineage ?? []);
  const told = request.settings === undefined ? {} : await readSettingsFile(ports, request.settings);
  const decisions = await readDecisionFiles(ports, request.decisions ?? []);
  refuseUnknownHeads(tables, request.columns);
  const typesOfTable = request.appliesTo ?? new Map();
  const placed = placeRows(tables, typesOfTable, request.columns);
  if (placed.rows.length === 0) {
    throw new CatalogError(
      'BadTable',
      `No row of ${request.tables.join(', ')} can be used; check that its rows have a number, a title or a text.`,
      {},
      placed.findings,
    );
  }

  const title = parsePath(basename(request.catalog)).name.replace(/^catalog$/, 'Catalog');
  const settings = deriveSettings(placed.rows, before?.settings, told, title);
  const rows = request.skipRows ? rowsOfKnownTypes(placed.rows, settings) : placed.rows;
  const identified = identifyRows(rows, {
    typesOfTable,
    replaced: before && placesOf(before.settings, before.entries),
    taken: earlier.ids,
    random: ports.random,
  });
  const { items, findings: offScheme } = numberByScheme(settings, identified.items);
  const old = placesOf(before?.settings ?? settings, before?.entries ?? []);
  const lineage = lineageFromTables(lineageTables, old, placesOf(settings, items), decisions);
  const findings = [
    ...tables.flatMap(table => table.findings),
    ...placed.findings,
    ...checkRowTypes(placed.rows, settings),
    ...identified.findings,
    ...offScheme,
    ...lineage.findings,
  ];
  if (!request.skipRows) refuseErrors(findings);

  const edition: NewEdition = {
    name: request.edition,
    replaces: before?.header.name ?? null,
    dates: { published: dayOf(ports.now()), ...request.dates },
    settings,
    items,
    lineage: lineage.records,
    decisions,
    oldFileOf: id => fileHolding(old, before?.settings ?? settings, id),
  };
  ports.progress(`Writing edition ${edition.name}: ${items.length} items`);
  const catalog = await openOrCreate(request.catalog);
  const sources = request.tables.map(t => basename(t));
  const message = `Edition ${edition.name}, imported from ${sources.length === 1 ? sources[0] : `${sources.length} tables\n\n${sources.join('\n')}`}`;
  if (request.draft) await saveDraft(catalog, edition, person(ports), message);
  else await publishEdition(catalog, edition, person(ports), message);

  return {
    edition: edition.name,
    replaces: edition.replaces,
    state: request.draft ? 'draft' : 'published',
    items: items.length,
    requirements: items.filter(i => isRequirement(settings, i)).length,
    rowsSkipped: tables.reduce((sum, t) => sum + t.rows.length, 0) - rows.length,
    idsMinted: identified.minted,
    idsKept: items.length - identified.minted,
    unaccounted: before ? countUnaccounted(before, edition) : 0,
    findings,
  };
}

function refuseErrors(findings: readonly Finding[]): void {
  const errors = findings.filter(f => f.severity === 'error');
  const [first] = errors;
  if (!first) return;
  const at = first.place ? ` (${first.place.file}:${first.place.line})` : '';
  throw new CatalogError(
    'RowsNotPlaced',
    `${errors.length === 1 ? 'One row or line' : `${errors.length} rows or lines`} cannot be used${errors.length === 1 ? '' : ', the first one'}: ${first.message}${at} Nothing was written; mend the table, or import the rest with --skip-rows.`,
    { count: errors.length },
    findings,
  );
}

interface Earlier {
  readonly replaced: EditionIndex | undefined;
  /** Every id that any edition uses. */
  readonly ids: ReadonlySet<ItemId>;
}

/** @throws CatalogError BadArgument, EditionExists where the edition to be imported cannot have its name */
async function earlierEditions(request: ImportRequest): Promise<Earlier> {
  refuseUnfit(request.edition);
  const none = { replaced: undefined, ids: new Set<ItemId>() };
  let catalog: Catalog;
  try {
    catalog = await openCatalog(request.catalog);
  } catch (error) {
    if (error instanceof CatalogError && error.code === 'NotACatalog') return none;
    throw error;
  }
  await refuseTaken(catalog, request.edition);
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
