import { ITEMS_FOLDER, parseEditionFiles, writeEditionFiles } from '../format/edition-files.ts';
import { entriesOf, headerPath, tablePath, writeHeader, writeTable } from '../format/edition-table.ts';
import { parseJson, writeJson } from '../format/json.ts';
import {
  decisionsFolder,
  lineageFolder,
  parseDecisionFiles,
  parseLineageFiles,
  writeDecisionFiles,
  writeLineageFiles,
} from '../format/lineage-files.ts';
import { draftFile, editionFile } from '../format/schemas.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { EditionDates } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Item, ItemId } from '../model/item.ts';
import type { Settings } from '../model/settings.ts';
import { DRAFT_PATH } from './names.ts';

/** An edition as it is about to be written. */
export interface NewEdition {
  readonly name: string;
  readonly replaces: string | null;
  readonly dates: EditionDates;
  readonly settings: Settings;
  readonly items: readonly Item[];
  readonly lineage: readonly LineageRecord[];
  readonly decisions: readonly Decision[];
  /** The id whose file holds an item of the edition that this one replaces. */
  readonly oldFileOf: (id: ItemId) => ItemId;
}

/** The edition's files; what could not be read back is refused before anything is written. */
export function editionFiles(edition: NewEdition): Record<string, string> {
  const { name } = edition;
  const own = writeEditionFiles(edition.settings, edition.items);
  refuseUnreadable(name, parseEditionFiles(own).findings);
  const decisions = writeDecisionFiles(name, edition.decisions);
  refuseUnreadable(name, parseDecisionFiles(decisions).findings);
  return Object.fromEntries([...own, ...lineageFiles(name, edition.lineage, edition.oldFileOf), ...decisions]);
}

/** The files of an edition's lineage; what could not be read back is refused before anything is written. */
export function lineageFiles(
  name: string,
  lineage: readonly LineageRecord[],
  oldFileOf: (id: ItemId) => ItemId,
): ReadonlyMap<string, string> {
  const files = writeLineageFiles(name, lineage, oldFileOf);
  refuseUnreadable(name, parseLineageFiles(files).findings);
  return files;
}

function refuseUnreadable(name: string, [first, ...rest]: readonly Finding[]): void {
  if (!first) return;
  throw new CatalogError(
    'BadArgument',
    `Edition ${name} cannot be kept as it is: ${first.message} Mend that and try again.`,
    {},
    [first, ...rest],
  );
}

/** What publication adds: the header, and the frozen table that no later change touches. */
export function frozenFiles(edition: NewEdition): Record<string, string> {
  const table = writeTable(entriesOf(edition.settings, edition.items));
  const header = writeHeader(edition, table);
  const path = headerPath(edition.name);
  const parsed = parseJson(path, header, editionFile);
  if (!('value' in parsed)) refuseUnreadable(edition.name, parsed.findings);
  return { [path]: header, [tablePath(edition.name)]: table };
}

/** The files of a draft by path, and the folders that hold no others. */
export function draftFiles(edition: NewEdition): {
  readonly files: Readonly<Record<string, string>>;
  readonly folders: readonly string[];
} {
  const { name, replaces, dates } = edition;
  const header = writeJson({ name, replaces, dates });
  const parsed = parseJson(DRAFT_PATH, header, draftFile);
  if (!('value' in parsed)) refuseUnreadable(name, parsed.findings);
  return {
    files: { ...editionFiles(edition), [DRAFT_PATH]: header },
    folders: [ITEMS_FOLDER, lineageFolder(name), decisionsFolder(name)],
  };
}
