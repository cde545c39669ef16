import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { EditionDates } from '../../model/edition.ts';
import { openForWriting } from '../../store/open.ts';
import { writeBeside } from '../../store/write-beside.ts';
import { readForms } from '../comments/comments-read.ts';
import { addIntake, toldInTable } from '../intake/intake-add.ts';
import { PACKAGE_ROOT } from '../package-root.ts';
import type { Ports } from '../ports/ports.ts';
import { type ImportReport, importTables } from './import-tables.ts';

/** Where the demo's tables lie: the folder `catalog` beside `src` and `dist`. All of it is invented. */
export const DEMO_SOURCE = join(PACKAGE_ROOT, 'catalog');

interface DemoEdition {
  readonly name: string;
  readonly dates: EditionDates & { readonly published: string };
  readonly appliesTo?: Readonly<Record<string, readonly string[]>>;
  /** Folder with lineage tables. */
  readonly lineage?: string;
  readonly decisions?: string;
}

const EDITIONS: readonly DemoEdition[] = [
  {
    name: '2014',
    dates: { published: '2014-05-01', effective: '2014-09-01' },
    appliesTo: { 'houses.csv': ['house'], 'rows.csv': ['terrace', 'court'], 'streets.csv': ['street'] },
  },
  {
    name: '2018',
    dates: { published: '2018-03-01', effective: '2018-07-01', transitionEnds: '2018-12-31' },
    lineage: 'from-2014',
  },
  {
    name: '2024',
    dates: { published: '2024-02-01', effective: '2024-07-01', transitionEnds: '2025-06-30' },
    lineage: 'from-2018',
    decisions: 'decisions',
  },
];

/**
 * Makes the demo catalog in a folder that is new or empty, edition by edition, through the same import that users have.
 * Clock and random source are fixed, so that the same tables give the same ids and the same commits everywhere.
 */
export async function makeDemo(ports: Ports, dir: string): Promise<ImportReport[]> {
  const random = seededRandom('fishplate demo');
  const reports: ImportReport[] = [];
  for (const { name, dates, appliesTo = {}, lineage, decisions } of EDITIONS) {
    const source = join(DEMO_SOURCE, name);
    const tables = await filesIn(source, '.csv');
    reports.push(
      await importTables(
        {
          ...ports,
          random,
          now: () => new Date(`${dates.published}T09:00:00Z`),
          author: { name: 'Standards steward', email: 'steward@example.org' },
        },
        {
          tables,
          edition: name,
          catalog: dir,
          settings: join(source, 'settings.json'),
          dates,
          appliesTo: new Map(Object.entries(appliesTo).map(([file, types]) => [join(source, file), types])),
          ...(lineage ? { lineage: await filesIn(join(source, lineage), '.csv') } : {}),
          ...(decisions ? { decisions: await filesIn(join(source, decisions), '.json') } : {}),
        },
      ),
    );
  }
  const author = { name: 'Standards steward', email: 'steward@example.org', date: new Date('2024-02-01T10:00:00Z') };
  await writeBeside(await openForWriting(dir), await filesBeside(), author, 'Local rules, variances and policies');
  await readBesides(ports, dir);
  return reports;
}

/** Committee comments and feedback, read by the commands that users have; a file is named for the edition it is about. */
async function readBesides(ports: Ports, dir: string): Promise<void> {
  const catalog = await openForWriting(dir);
  const author = { name: 'Secretariat', email: 'secretariat@example.org' };
  const own = { ...ports, author, now: () => new Date('2024-02-01T11:00:00Z') };
  for (const file of await filesIn(join(DEMO_SOURCE, 'comments'), '.csv')) {
    await readForms(own, catalog, { files: [file], edition: basename(file, '.csv'), withObservations: true });
  }
  for (const file of await filesIn(join(DEMO_SOURCE, 'intake'), '.csv')) {
    const { told } = await toldInTable(own, file);
    await addIntake(own, catalog, basename(file, '.csv'), told);
  }
}

/** What belongs to no edition and is kept as it is: local rules and variances by place, policies by agency. */
async function filesBeside(): Promise<Map<string, string>> {
  const files = new Map<string, string>();
  for (const place of await readdir(join(DEMO_SOURCE, 'local'))) {
    for (const file of await filesIn(join(DEMO_SOURCE, 'local', place), '.json')) {
      files.set(`local/${place}/${basename(file)}`, await readFile(file, 'utf8'));
    }
  }
  for (const file of await filesIn(join(DEMO_SOURCE, 'policies'), '.json')) {
    files.set(`policies/${basename(file)}`, await readFile(file, 'utf8'));
  }
  return files;
}

async function filesIn(folder: string, ending: string): Promise<string[]> {
  const names = await readdir(folder);
  return names
    .filter(n => n.endsWith(ending))
    .sort()
    .map(n => join(folder, n));
}

/** Bytes that look random and are always the same: SHA-256 over a counter. */
function seededRandom(seed: string): (bytes: number) => Uint8Array {
  let counter = 0;
  return bytes => createHash('sha256').update(`${seed} ${counter++}`).digest().subarray(0, bytes);
}
