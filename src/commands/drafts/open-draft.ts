import { CatalogError } from '../../model/errors.ts';
import type { Settings } from '../../model/settings.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readEdition } from '../../store/read.ts';
import { saveDraft } from '../../store/write-draft.ts';
import { type Ports, person } from '../ports/ports.ts';

export interface DraftRequest {
  readonly name: string;
  /** The edition that the draft begins as; absent = the newest one. */
  readonly from?: string;
  /** Number every level in decimals without gaps from now on, instead of keeping printed numbers. */
  readonly renumber?: boolean;
}

/** Opens a draft on its own branch, equal to the edition that it is going to replace. */
export async function openDraft(ports: Ports, catalog: Catalog, request: DraftRequest): Promise<{ replaces: string }> {
  const replaces = request.from ?? (await listEditions(catalog)).at(-1)?.name;
  if (replaces === undefined) {
    throw new CatalogError(
      'UnknownEdition',
      'There is no edition to begin from; import one with: fishplate import TABLE --edition NAME',
    );
  }
  const { header, settings, items } = await readEdition(catalog, replaces);
  const draft = {
    name: request.name,
    replaces: header.name,
    dates: {},
    settings: request.renumber ? inDecimals(settings) : settings,
    items,
    lineage: [],
    decisions: [],
    oldFileOf: (id: string) => id,
  };
  await saveDraft(catalog, draft, person(ports), `Draft ${request.name}, begun from ${header.name}`);
  return { replaces: header.name };
}

function inDecimals(settings: Settings): Settings {
  const levels = settings.levels.map(() => ({ style: 'decimal' as const }));
  return { ...settings, numbering: { levels, numbersUnique: true } };
}
