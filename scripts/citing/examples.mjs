// The labelled documents of tests/citing/labelled as candidates with their evidence and whether they are citations.
// Needs a built dist/. Files that are never tuned on are left out: those with an odd place in the sorted list.
import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const DIST = '../../dist';
const LABELLED = join(import.meta.dirname, '../../tests/citing/labelled');
const { readCandidates } = await import(`${DIST}/citing/read-candidates.js`);
const { plainDashes } = await import(`${DIST}/citing/plain-dashes.js`);
const { statedEdition } = await import(`${DIST}/citing/stated-edition.js`);
const { readDocument } = await import(`${DIST}/documents/read-document.js`);
const { importTables } = await import(`${DIST}/commands/importing/import-tables.js`);
const { makeDemo } = await import(`${DIST}/commands/importing/make-demo.js`);
const { realFiles } = await import(`${DIST}/commands/ports/files.js`);
const { openCatalog } = await import(`${DIST}/store/open.js`);
const { listEditions } = await import(`${DIST}/store/names.js`);
const { readCitedBook } = await import(`${DIST}/commands/reading/read-cited-book.js`);

/** @returns {Promise<{catalog: string, file: string, candidates, evidence, cited: boolean[], missed: number}[]>} a row for each document */
export async function examples() {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-citing-'));
  try {
    const rows = [];
    for (const document of documents()) {
      const books = await booksOf(folder, document.catalog);
      const { passages, edition } = await readDocument(document.file, new TextEncoder().encode(document.text));
      const named = edition ?? statedEdition(passages, [...books.keys()]) ?? document.run;
      const own = books.get(named) ?? books.get(document.run);
      const others = [...books.values()].filter(b => b !== own);
      const read = readCandidates(
        own,
        others,
        others.map(b => b.edition.header.name),
        passages,
      );
      const spans = document.citations.map(c => spanOf(document.text, c));
      const overlaps = ({ group, passage }, [from, to]) => {
        const { at } = plainDashes(passage.text);
        return passage.start + at(group.start) < to && passage.start + at(group.end - 1) >= from;
      };
      const cited = read.candidates.map(c => spans.some(span => overlaps(c, span)));
      const missed = spans.filter(span => !read.candidates.some(c => overlaps(c, span)));
      rows.push({
        ...document,
        ...read,
        cited,
        missed: missed.map(([a, b]) => document.text.slice(Math.max(0, a - 40), b + 30)),
      });
    }
    return rows;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function documents() {
  const { files } = JSON.parse(readFileSync(join(LABELLED, 'labels.json'), 'utf8'));
  const long = [...files]
    .sort((a, b) => (a.file < b.file ? -1 : 1))
    .filter((_, at) => at % 2 === 0)
    .map(f => ({
      ...f,
      text: readFileSync(join(LABELLED, f.file), 'utf8'),
      citations: f.labels.filter(l => l.citation),
    }));
  const short = TUNED.flatMap(catalog =>
    JSON.parse(readFileSync(join(LABELLED, catalog, 'passages.json'), 'utf8')).map(p => ({
      ...p,
      catalog,
      file: `${p.id}.md`,
    })),
  );
  const sentences = JSON.parse(readFileSync(join(LABELLED, 'sentences/sentences.json'), 'utf8')).map(
    ({ text, found }, at) => ({
      catalog: 'sentences',
      file: `${at}.md`,
      run: '2018',
      text,
      citations: found.length === 0 ? [] : [{ text, occurrence: 1 }],
    }),
  );
  return [...long, ...short, ...sentences];
}

/** Catalogs whose passages are tuned on. */
const TUNED = [
  'ovens',
  'domes',
  'walls',
  'coldrooms',
  'greenhouses',
  'skilifts',
  'showcases',
  'fishladders',
  'saunas',
  'telescopes',
  'stalls',
].filter(c => existsSync(join(LABELLED, c, 'passages.json')));

function spanOf(text, { text: written, occurrence }) {
  let at = -1;
  for (let n = 0; n < occurrence; n++) at = text.indexOf(written, at + 1);
  return [at, at + written.length];
}

const made = new Map();

async function booksOf(folder, catalog) {
  if (!made.has(catalog)) made.set(catalog, await makeBooks(folder, catalog));
  return made.get(catalog);
}

async function makeBooks(folder, catalog) {
  const dir = join(folder, `${catalog}.git`);
  const ports = {
    files: realFiles,
    now: () => new Date(0),
    author: { name: 'Steward', email: 'steward@example.org' },
    random: randomBytes,
    progress: () => {},
  };
  if (catalog === 'demo') await makeDemo(ports, dir);
  else {
    const source = join(LABELLED, catalog);
    const settings = join(source, 'settings.json');
    for (const table of readdirSync(source)
      .filter(f => f.endsWith('.csv'))
      .sort()) {
      await importTables(ports, {
        tables: [join(source, table)],
        edition: table.replace('.csv', ''),
        catalog: dir,
        settings,
      });
    }
  }
  const opened = await openCatalog(dir);
  const names = (await listEditions(opened)).map(h => h.name);
  return new Map(await Promise.all(names.map(async name => [name, await readCitedBook(opened, name)])));
}
