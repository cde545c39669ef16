import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type ImportReport, importTables } from '../../src/commands/importing/import-tables.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import type { Ports } from '../../src/commands/ports/ports.ts';
import { type Catalog, openCatalog } from '../../src/store/open.ts';

type Row = object;

export interface NewCatalog {
  readonly dir: string;
  /** Imports rows (and the lineage from the edition before) by the command that users run. */
  add(
    edition: string,
    rows: readonly Row[],
    more?: { lineage?: readonly Row[]; settings?: Row },
  ): Promise<ImportReport>;
  open(): Promise<Catalog>;
  remove(): void;
}

/** A catalog in a temporary folder, filled by real imports from real files. */
export function newCatalog(): NewCatalog {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-outside-'));
  const dir = join(folder, 'catalog.git');
  const write = (name: string, value: unknown) => {
    const path = join(folder, name);
    writeFileSync(path, JSON.stringify(value));
    return path;
  };
  return {
    dir,
    add: (edition, rows, { lineage, settings } = {}) =>
      importTables(ports, {
        tables: [write(`${edition}.json`, rows)],
        edition,
        catalog: dir,
        ...(lineage ? { lineage: [write(`${edition}.lineage.json`, lineage)] } : {}),
        ...(settings ? { settings: write(`${edition}.settings.json`, settings) } : {}),
      }),
    open: () => openCatalog(dir),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

const ports: Ports = {
  files: realFiles,
  now: () => new Date('2024-02-01T00:00:00Z'),
  author: { name: 'Steward', email: 'steward@example.org' },
  random: bytes => randomBytes(bytes),
  progress: () => {},
};
