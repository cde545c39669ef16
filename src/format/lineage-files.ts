import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { Finding } from '../model/finding.ts';
import { groupBy } from '../model/group-by.ts';
import type { ItemId } from '../model/item.ts';
import { fileNameOf } from './file-names.ts';
import { parseJson, writeJson } from './json.ts';
import * as schemas from './schemas.ts';

export const lineageFolder = (toEdition: string) => `lineage/${toEdition}/`;
export const decisionsFolder = (toEdition: string) => `decisions/${toEdition}/`;

/** Records of new items have no old file to stand beside. `~new` is a name that no id is written as. */
const ARRIVALS = '~new';

/**
 * The files of one step's lineage, by path: a record stands in the file named for the old item's file, so that people
 * who work on different work items do not meet in one lineage file.
 *
 * @param fileOf the id whose file holds an item of the older edition
 */
export function writeLineageFiles(
  toEdition: string,
  records: readonly LineageRecord[],
  fileOf: (id: ItemId) => ItemId,
): Map<string, string> {
  const groups = groupBy(records, r => (r.from === null ? ARRIVALS : fileNameOf(fileOf(r.from))));
  const files = new Map<string, string>();
  for (const [file, group] of groups) {
    const sorted = [...group].sort((a, b) => compareIds(a.from ?? a.heirs[0]?.to, b.from ?? b.heirs[0]?.to));
    files.set(`${lineageFolder(toEdition)}${file}.json`, writeJson(sorted.map(ordered)));
  }
  return files;
}

function compareIds(a = '', b = ''): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

const FIELDS = [
  'from',
  'heirs',
  'notSame',
  'withdrawnFor',
  'reason',
  'note',
  'governs',
  'governsChecked',
  'pointsTo',
  'decision',
  'alsoEnds',
  'by',
  'date',
  'basis',
] as const satisfies readonly (keyof LineageRecord)[];

function ordered(record: LineageRecord): Record<string, unknown> {
  return Object.fromEntries(FIELDS.filter(f => record[f] !== undefined).map(f => [f, record[f]]));
}

export interface ParsedLineage {
  readonly records: readonly LineageRecord[];
  readonly findings: readonly Finding[];
}

/** Reads one step's lineage from its files. Two records for one old item are a finding; the first is kept. */
export function parseLineageFiles(files: ReadonlyMap<string, string>): ParsedLineage {
  const records: LineageRecord[] = [];
  const findings: Finding[] = [];
  const seen = new Map<ItemId, string>();
  for (const [path, source] of [...files].sort(([a], [b]) => compareIds(a, b))) {
    const parsed = parseJson(path, source, schemas.lineageFile);
    if (!('value' in parsed)) {
      findings.push(...parsed.findings);
      continue;
    }
    for (const record of parsed.value as LineageRecord[]) {
      const other = record.from === null ? undefined : seen.get(record.from);
      if (other !== undefined) {
        findings.push({
          rule: 'lineage-twice',
          severity: 'error',
          subject: record.from!,
          message: `${record.from} has lineage in ${other} and again in ${path}; make it one record.`,
          place: { file: path },
        });
        continue;
      }
      if (record.from !== null) seen.set(record.from, path);
      records.push(record);
    }
  }
  return { records, findings };
}

export function writeDecisionFiles(toEdition: string, decisions: readonly Decision[]): Map<string, string> {
  return new Map(decisions.map(d => [`${decisionsFolder(toEdition)}${fileNameOf(d.id)}.json`, writeJson(d)]));
}

export function parseDecisionFiles(files: ReadonlyMap<string, string>): {
  readonly decisions: readonly Decision[];
  readonly findings: readonly Finding[];
} {
  const decisions: Decision[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of files) {
    const parsed = parseJson(path, source, schemas.decision);
    if ('value' in parsed) decisions.push(parsed.value as Decision);
    else findings.push(...parsed.findings);
  }
  return { decisions, findings };
}
