import { checkLineage } from '../../crosswalk/check-lineage.ts';
import { checkConservation } from '../../crosswalk/conserve.ts';
import { entriesOf, tableHash, tablePath, writeTable } from '../../format/edition-table.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { holding, listDrafts, listEditions, locate, readHeader } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { parseTree, readDecisions, readIndex, readLineage, readTable } from '../../store/read.ts';
import { readStep } from './read-crosswalk.ts';

export interface CheckReport {
  readonly checked: readonly string[];
  readonly findings: readonly Finding[];
}

/**
 * Reads every edition and draft (or the one named) whole and says everything that is wrong: files that cannot be read,
 * a frozen table that no longer agrees with its files, lineage that leads nowhere, and what each step loses.
 */
export async function checkCatalog(catalog: Catalog, edition?: string): Promise<CheckReport> {
  const at = edition === undefined ? undefined : await locate(catalog, edition);
  const held = at ? holding(catalog, at) : catalog;
  const names = at ? [at.name] : [...(await listEditions(catalog)).map(h => h.name), ...(await listDrafts(catalog))];
  const findings: Finding[] = [];
  for (const name of names) {
    try {
      findings.push(...(await checkFiles(held, name)), ...(await checkStep(held, name)));
    } catch (error) {
      if (!(error instanceof CatalogError)) throw error;
      findings.push(...(error.findings.length > 0 ? error.findings : [unreadable(name, error)]));
    }
  }
  return { checked: names, findings: dedupe(findings) };
}

async function checkFiles(catalog: Catalog, name: string): Promise<Finding[]> {
  const { repo } = catalog;
  const at = await locate(catalog, name);
  const { settings, items, findings } = await parseTree(repo, at.tree);
  if (!settings || findings.length > 0 || at.state === 'draft') return [...findings];
  const { table } = await readHeader(repo, at.tree, at.name, at.erratum);
  const frozen = await readTable(repo, at);
  const path = tablePath(at.name);
  const changed = tableHash(frozen) !== table || writeTable(entriesOf(settings, items)) !== frozen;
  return changed
    ? [
        {
          rule: 'edition-altered',
          severity: 'error',
          subject: at.name,
          message: `Edition ${at.name} was altered after publication: its items no longer agree with ${path}.`,
          place: { file: path },
        },
      ]
    : [];
}

async function checkStep(catalog: Catalog, name: string): Promise<Finding[]> {
  const { header, entries } = await readIndex(catalog, name);
  const records = await readLineage(catalog, name);
  if (header.replaces === null) return [];
  const older = await readIndex(catalog, header.replaces);
  const ids = (list: readonly { id: string }[]) => new Set(list.map(e => e.id));
  return [
    ...checkLineage(records, ids(older.entries), ids(entries), await readDecisions(catalog, name)),
    ...checkConservation(await readStep(catalog, header.replaces, name)),
  ];
}

function unreadable(name: string, error: CatalogError): Finding {
  return { rule: 'unreadable', severity: 'error', subject: name, message: error.message };
}

function dedupe(findings: readonly Finding[]): Finding[] {
  return [...new Map(findings.map(f => [`${f.rule} ${f.message}`, f])).values()];
}
