import { ITEMS_FOLDER, parseEditionFiles, writeEditionFiles } from '../format/edition-files.ts';
import { entriesOf, headerPath, tablePath, writeHeader, writeTable } from '../format/edition-table.ts';
import { writeJson } from '../format/json.ts';
import { decisionsFolder, lineageFolder, writeDecisionFiles, writeLineageFiles } from '../format/lineage-files.ts';
import type { Decision, LineageRecord } from '../model/crosswalk.ts';
import type { EditionDates } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
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
  const own = writeEditionFiles(edition.settings, edition.items);
  const [first, ...rest] = parseEditionFiles(own).findings;
  if (first) {
    throw new CatalogError(
      'BadArgument',
      `Edition ${edition.name} cannot be kept as it is: ${first.message} Mend that and try again.`,
      {},
      [first, ...rest],
    );
  }
  return Object.fromEntries([
    ...own,
    ...writeLineageFiles(edition.name, edition.lineage, edition.oldFileOf),
    ...writeDecisionFiles(edition.name, edition.decisions),
  ]);
}

/** What publication adds: the header, and the frozen table that no later change touches. */
export function frozenFiles(edition: NewEdition): Record<string, string> {
  const table = writeTable(entriesOf(edition.settings, edition.items));
  return { [headerPath(edition.name)]: writeHeader(edition, table), [tablePath(edition.name)]: table };
}

/** The files of a draft by path, and the folders that hold no others. */
export function draftFiles(edition: NewEdition): {
  readonly files: Readonly<Record<string, string>>;
  readonly folders: readonly string[];
} {
  const { name, replaces, dates } = edition;
  return {
    files: { ...editionFiles(edition), [DRAFT_PATH]: writeJson({ name, replaces, dates }) },
    folders: [ITEMS_FOLDER, lineageFolder(name), decisionsFolder(name)],
  };
}
