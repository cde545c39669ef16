import type { Joint } from '../../crosswalk/joint.ts';
import { INTAKE_FOLDER, intakeRecord, parseIntake } from '../../format/intake-files.ts';
import type { EditionIndex, Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { IntakeRecord } from '../../model/intake.ts';
import { placesOf } from '../../model/places.ts';
import { countIntake, type FollowedReport, followReport, type IntakeCounts } from '../../release/intake.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import { readBeside } from '../../store/read-beside.ts';
import { localFiles } from '../local/governs.ts';
import { readJoint } from '../reading/read-crosswalk.ts';
import { remember } from '../remember.ts';

/** All reports, requests for a variance among them, in the order of their dates. */
export async function allReports(
  catalog: Catalog,
): Promise<{ readonly records: readonly IntakeRecord[]; readonly findings: readonly Finding[] }> {
  const intake = parseIntake(await readBeside(catalog, INTAKE_FOLDER));
  const requests = await varianceRequests(catalog);
  const records = [...intake.records, ...requests.records].sort((a, b) => (a.date < b.date ? -1 : 1));
  return { records, findings: [...intake.findings, ...requests.findings] };
}

/** A variance is a request to depart from a requirement, whatever was decided about it: it tells where one does not fit. */
async function varianceRequests(catalog: Catalog) {
  const { records, findings } = await localFiles(catalog);
  const indexOf = remember(20, (name: string) => readIndex(catalog, name));
  const found: IntakeRecord[] = [];
  const wrong: Finding[] = [...findings];
  for (const { record, path } of records) {
    if (record.kind !== 'variance') continue;
    const { cites, cause = 'variance request', from: date, text } = record;
    const { name } = await locate(catalog, cites.edition);
    const entry = (await indexOf(name)).entries.find(e =>
      cites.item ? e.id === cites.item : e.number === cites.number,
    );
    if (!entry) {
      wrong.push({
        rule: 'intake-number',
        severity: 'warning',
        subject: record.id,
        message: `${path} cites ${cites.edition} ${cites.number}, which that edition does not have; it is not counted.`,
        place: { file: path },
      });
      continue;
    }
    const from = record.holder ?? record.place;
    const { id: item, number } = entry;
    found.push(intakeRecord({ kind: 'variance request', edition: name, item, number, cause, date, from, text }));
  }
  return { records: found, findings: wrong };
}

export interface CountRequest {
  readonly edition: string;
  /** Count under the items of this level (from 1) instead of each item. */
  readonly level?: number;
}

export interface CountReport extends IntakeCounts {
  readonly edition: string;
  readonly findings: readonly Finding[];
}

/** All reports with where their items stand in one edition. */
export interface FollowedReports {
  readonly index: EditionIndex;
  readonly followed: readonly FollowedReport[];
  readonly findings: readonly Finding[];
}

export async function followReports(catalog: Catalog, edition: string): Promise<FollowedReports> {
  const at = await locate(catalog, edition);
  const [held, { name }] = [holding(catalog, at), at];
  const index = await readIndex(held, name);
  const places = placesOf(index.settings, index.entries);
  const { records, findings } = await allReports(catalog);
  const jointFrom = remember(20, async (from: string): Promise<Joint> => (await readJoint(held, from, name)).joint);
  const followed: FollowedReport[] = [];
  for (const record of records) {
    const own = record.edition === name ? places.get(record.item) : undefined;
    followed.push(own ? { record, now: [own] } : followReport(record, await jointFrom(record.edition)));
  }
  return { index, followed, findings };
}

/** Where the next edition has to work: reports by item of an edition and by cause, items followed by lineage. */
export async function countReports(catalog: Catalog, { edition, level }: CountRequest): Promise<CountReport> {
  const { index, followed, findings } = await followReports(catalog, edition);
  const { header, settings, entries } = index;
  if (level !== undefined && level > settings.levels.length) {
    throw new CatalogError(
      'BadArgument',
      `${header.name} has ${settings.levels.length} levels; give --level one of them.`,
    );
  }
  return { edition: header.name, findings, ...countIntake(followed, entries, underLevel(index, level)) };
}

/** The item of a level under which another one is counted; without a level, itself. */
export function underLevel({ settings, entries }: EditionIndex, level: number | undefined): (entry: Entry) => Entry {
  const places = placesOf(settings, entries);
  return entry =>
    level === undefined ? entry : ([entry, ...places.ancestors(entry.id)].find(e => e.level === level) ?? entry);
}

/** Reports of one edition, number (with what stands below it) or cause. */
export async function listReports(
  catalog: Catalog,
  filter: { readonly edition?: string; readonly number?: string; readonly cause?: string },
): Promise<{ readonly records: readonly IntakeRecord[]; readonly findings: readonly Finding[] }> {
  const { records, findings } = await allReports(catalog);
  const edition = filter.edition === undefined ? undefined : (await locate(catalog, filter.edition)).name;
  const wanted = records.filter(r => {
    if (edition !== undefined && r.edition !== edition) return false;
    if (filter.cause !== undefined && r.cause !== filter.cause.toLowerCase()) return false;
    return filter.number === undefined || r.number === filter.number || r.number.startsWith(`${filter.number}.`);
  });
  return { records: wanted, findings };
}
