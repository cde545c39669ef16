import { INTAKE_FOLDER, parseIntake } from '../../format/intake-files.ts';
import { CatalogError } from '../../model/errors.ts';
import type { IntakeRecord } from '../../model/intake.ts';
import type { ItemId } from '../../model/item.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import { addIntake } from './intake-add.ts';

/** What somebody leaves at an item while its edition is in force. */
export interface ToldNote {
  readonly kind: string;
  readonly cause: string;
  readonly text: string;
}

/** What people told about an item, and what they tell now. */
export interface NotesDesk {
  /** Newest first; with the causes that were given before, so that the same is counted as the same. */
  about(item: ItemId): Promise<{ readonly notes: readonly IntakeRecord[]; readonly causes: readonly string[] }>;
  /** Throws BadArgument where something is missing. */
  keep(edition: string, item: ItemId, told: ToldNote, by: Person): Promise<void>;
}

export function notesDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): NotesDesk {
  return {
    about: async item => {
      const { records } = parseIntake(await readBeside(reading, INTAKE_FOLDER));
      return {
        notes: records.filter(r => r.item === item).reverse(),
        causes: [...new Set(records.map(r => r.cause))].sort(),
      };
    },
    keep: async (edition, item, told, by) => {
      const author = { name: by.name, email: by.address };
      const report = await addIntake({ ...ports, author }, await writing(), edition, [
        { ...told, number: item, from: by.name },
      ]);
      const wrong = report.findings.find(f => f.severity === 'error');
      if (wrong && report.added.length + report.known === 0) {
        throw new CatalogError('BadArgument', wrong.message.replace(/^[^:]*: /, ''), { item });
      }
    },
  };
}
