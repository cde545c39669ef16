import { checkLineage } from '../../crosswalk/check-lineage.ts';
import type { LineageRecord } from '../../model/crosswalk.ts';
import type { EditionIndex } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { placesOf } from '../../model/places.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { publishErratum } from '../../store/publish.ts';
import { fileHolding, readDecisions, readIndex, readLineage } from '../../store/read.ts';
import { type Ports, person } from '../ports/ports.ts';
import { readLineageTables } from './lineage-tables.ts';

export interface ErratumRequest {
  readonly edition: string;
  /** Lineage tables; the records of the old items that they name are replaced, all others stay. */
  readonly lineage: readonly string[];
  readonly note?: string;
}

export interface ErratumReport {
  readonly name: string;
  readonly replaced: number;
  readonly added: number;
  readonly findings: readonly Finding[];
}

/** Corrects or adds lineage of a published edition as its next erratum; nothing else of the edition changes. */
export async function addErratum(ports: Ports, catalog: Catalog, request: ErratumRequest): Promise<ErratumReport> {
  const step = await readStepTo(catalog, request.edition);
  const [old, next] = [step.older, step.newer].map(e => placesOf(e.settings, e.entries));
  const decisions = await readDecisions(catalog, step.name);
  const { records, findings } = await readLineageTables(ports, request.lineage, old!, next!, decisions);
  refuseLines(findings.filter(f => f.severity === 'error'));
  return { ...(await writeErratum(ports, catalog, step, records, request.note)), findings };
}

/** A published edition and the one that it replaces. */
export interface PublishedStep {
  readonly name: string;
  readonly older: EditionIndex;
  readonly newer: EditionIndex;
}

export async function readStepTo(catalog: Catalog, edition: string): Promise<PublishedStep> {
  const at = await locate(catalog, edition);
  const newer = await readIndex(catalog, at.name);
  if (newer.header.replaces === null) {
    throw new CatalogError(
      'BadArgument',
      `Edition ${at.name} replaces no other, so it has no lineage to correct; name a later edition.`,
    );
  }
  return { name: at.name, older: await readIndex(catalog, newer.header.replaces), newer };
}

/** Writes records in the place of those of the same old items. Nothing is written if one of them cannot be used. */
export async function writeErratum(
  ports: Ports,
  catalog: Catalog,
  { name, older, newer }: PublishedStep,
  records: readonly LineageRecord[],
  note?: string,
): Promise<ErratumReport> {
  const ids = (list: readonly { id: string }[]) => new Set(list.map(e => e.id));
  refuseLines(checkLineage(records, ids(older.entries), ids(newer.entries), await readDecisions(catalog, name)));
  const key = (r: LineageRecord) => r.from ?? `new ${r.heirs[0]?.to}`;
  const named = new Set(records.map(key));
  const before = await readLineage(catalog, name);
  const kept = before.filter(r => !named.has(key(r)));
  const old = placesOf(older.settings, older.entries);
  const number = await publishErratum(
    catalog,
    name,
    [...kept, ...records],
    id => fileHolding(old, older.settings, id),
    person(ports),
    note ?? `Erratum of edition ${name}: lineage of ${records.length} items`,
  );
  const replaced = before.length - kept.length;
  return { name: `${name}.${number}`, replaced, added: records.length - replaced, findings: [] };
}

function refuseLines(wrong: readonly Finding[]): void {
  if (wrong.length === 0) return;
  throw new CatalogError(
    'RowsNotPlaced',
    `${wrong.length} lines of the lineage cannot be used, the first one: ${wrong[0]!.message} Nothing was written; mend the table and try again.`,
    {},
    wrong,
  );
}
