import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { citeFiles } from '../../src/commands/documents/cite-files.ts';
import { importTables } from '../../src/commands/importing/import-tables.ts';
import { realFiles } from '../../src/commands/ports/files.ts';
import type { CitedLine } from '../../src/exports/cited-csv.ts';
import { type Catalog, openCatalog } from '../../src/store/open.ts';
import { demoCatalog, testPorts } from '../demo-catalog.ts';

const LABELLED = join(import.meta.dirname, 'labelled');

/** A number-like string of a document, as someone labelled it who has not seen the program. */
interface Label {
  readonly text: string;
  readonly occurrence: number;
  readonly numbers: readonly string[];
  readonly edition: string | null;
  readonly citation: boolean;
  readonly note: string;
}

interface LabelledFile {
  readonly file: string;
  readonly catalog: string;
  /** The edition given to `cite --edition`. */
  readonly run: string;
  readonly labels: readonly Label[];
}

export interface Miss {
  readonly kind: 'missed' | 'made up' | 'other numbers' | 'other edition';
  readonly file: string;
  readonly said: string;
}

/** Counts of one part of the documents. A list that is labelled as one may be found member by member. */
export interface Score {
  citations: number;
  found: number;
  lines: number;
  right: number;
  readonly misses: Miss[];
}

/**
 * Judges `cite` against the labels. `half` 0 is for tuning, 1 is never tuned on: files with an even and an odd place in
 * the sorted list.
 */
export async function judgeCiting(half: 0 | 1): Promise<Judged> {
  const { files } = JSON.parse(readFileSync(join(LABELLED, 'labels.json'), 'utf8')) as { files: LabelledFile[] };
  const sorted = [...files].sort((a, b) => (a.file < b.file ? -1 : 1)).filter((_, at) => at % 2 === half);
  const judged: Judged = { all: noScore(), certain: noScore() };
  for (const labelled of sorted) {
    const path = join(LABELLED, labelled.file);
    const text = readFileSync(path, 'utf8');
    const lines = await citeFiles({ files: realFiles, progress: () => {} }, await catalogOf(labelled.catalog), {
      inputs: [path],
      edition: labelled.run,
    });
    judgeBoth(judged, labelled, text, lines);
  }
  return judged;
}

/** All lines, and those alone that are `certain`. */
export interface Judged {
  readonly all: Score;
  readonly certain: Score;
}

const noScore = (): Score => ({ citations: 0, found: 0, lines: 0, right: 0, misses: [] });

function judgeBoth(
  { all, certain }: Judged,
  labelled: Pick<LabelledFile, 'file' | 'labels'>,
  text: string,
  lines: readonly CitedLine[],
): void {
  judgeOne(labelled, text, lines, all);
  judgeOne(
    labelled,
    text,
    lines.filter(l => l.certain),
    certain,
  );
}

/** A passage of a letter, a lesson, minutes …; everything number-like in it that is no citation is a trap. */
interface LabelledPassage {
  readonly id: string;
  readonly run: string;
  readonly text: string;
  readonly citations: readonly Omit<Label, 'citation' | 'note'>[];
}

/** Judges `cite` on passages around one catalog, each a document of its own. */
export async function judgePassages(catalog: string): Promise<Judged> {
  const passages = JSON.parse(readFileSync(join(LABELLED, catalog, 'passages.json'), 'utf8')) as LabelledPassage[];
  const judged: Judged = { all: noScore(), certain: noScore() };
  const cited = await catalogOf(catalog);
  const texts = new Map(passages.map(p => [`${p.id}.md`, p.text]));
  const files = { ...realFiles, read: async (name: string) => new TextEncoder().encode(texts.get(name)) };
  for (const run of new Set(passages.map(p => p.run))) {
    const asked = passages.filter(p => p.run === run);
    const inputs = asked.map(p => `${p.id}.md`);
    const lines = await citeFiles({ files, progress: () => {} }, cited, { inputs, edition: run });
    for (const { id, text, citations } of asked) {
      const labels = citations.map(c => ({ ...c, citation: true, note: '' }));
      const own = lines.filter(l => l.file === `${id}.md`);
      judgeBoth(judged, { file: id, labels }, text, own);
    }
  }
  return judged;
}

function judgeOne(
  { file, labels }: Pick<LabelledFile, 'file' | 'labels'>,
  text: string,
  lines: readonly CitedLine[],
  score: Score,
): void {
  const around = (start: number, end: number) =>
    text.slice(Math.max(0, start - 50), start).replace(/\s+/g, ' ') +
    `»${text.slice(start, end)}«` +
    text.slice(end, end + 40).replace(/\s+/g, ' ');
  const used = new Set<CitedLine>();
  score.lines += lines.length;
  for (const label of labels.filter(l => l.citation)) {
    score.citations++;
    const start = placeOf(text, label);
    const end = start + label.text.length;
    const here = lines.filter(l => l.start < end && l.end > start);
    for (const line of here) used.add(line);
    const numbers = [...new Set(here.flatMap(l => l.numbers))].sort();
    const said = around(start, end);
    if (here.length === 0) score.misses.push({ kind: 'missed', file, said: `${said} (${label.note})` });
    else if (numbers.join(' ') !== [...new Set(label.numbers)].sort().join(' ')) {
      score.misses.push({
        kind: 'other numbers',
        file,
        said: `${said} = ${numbers.join(' ')}, not ${label.numbers.join(' ')}`,
      });
    } else if (here.some(l => l.edition !== label.edition)) {
      score.misses.push({ kind: 'other edition', file, said: `${said} = ${here[0]!.edition}, not ${label.edition}` });
    } else {
      score.found++;
      score.right += here.length;
    }
  }
  for (const line of lines.filter(l => !used.has(l))) {
    const label = labels.find(
      l => !l.citation && placeOf(text, l) < line.end && placeOf(text, l) + l.text.length > line.start,
    );
    score.misses.push({
      kind: 'made up',
      file,
      said: `${around(line.start, line.end)} (${label?.note ?? 'no label'}; ${line.why})`,
    });
  }
}

function placeOf(text: string, { text: written, occurrence }: Label): number {
  let at = -1;
  for (let n = 0; n < occurrence; n++) at = text.indexOf(written, at + 1);
  if (at < 0) throw new Error(`no ${written} number ${occurrence}`);
  return at;
}

const made = new Map<string, Promise<Catalog>>();
const folders: string[] = [];

/** The invented catalogs are imported by the command that users run. */
function catalogOf(name: string): Promise<Catalog> {
  const known = made.get(name) ?? makeCatalog(name);
  made.set(name, known);
  return known;
}

async function makeCatalog(name: string): Promise<Catalog> {
  if (name === 'demo') return openCatalog(await demoCatalog());
  const folder = mkdtempSync(join(tmpdir(), `fishplate-${name}-`));
  folders.push(folder);
  const catalog = join(folder, 'catalog.git');
  const settings = join(LABELLED, name, 'settings.json');
  for (const table of readdirSync(join(LABELLED, name))
    .filter(f => f.endsWith('.csv'))
    .sort()) {
    await importTables(testPorts(name), {
      tables: [join(LABELLED, name, table)],
      edition: table.replace('.csv', ''),
      catalog,
      ...(existsSync(settings) ? { settings } : {}),
    });
  }
  return openCatalog(catalog);
}

export function removeCatalogs(): void {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
}
