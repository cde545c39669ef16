import { type CitedBook, citedBook, numbersBetween } from '../../citing/cited-book.ts';
import { findCitations } from '../../citing/find-citations.ts';
import { statedEdition } from '../../citing/stated-edition.ts';
import { readDocument } from '../../documents/read-document.ts';
import { type CitedLine, writeCitedCsv } from '../../exports/cited-csv.ts';
import type { Citation } from '../../model/citation.ts';
import type { Passage } from '../../model/document.ts';
import { CatalogError } from '../../model/errors.ts';
import { listEditions } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readIndex } from '../../store/read.ts';
import type { Ports } from '../ports/ports.ts';
import { readCitedBook } from '../reading/read-cited-book.ts';
import { remember } from '../remember.ts';

export interface CiteOptions {
  readonly inputs: readonly string[];
  /** The edition that a text means where it does not say. */
  readonly edition: string;
  /** Where the list goes; absent only returns it. */
  readonly out?: string;
  readonly format?: 'csv' | 'json';
}

/** Lists what documents cite and changes nothing. */
export async function citeFiles(
  { files, progress }: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  { inputs, edition, out, format }: CiteOptions,
): Promise<readonly CitedLine[]> {
  for (const input of out === undefined ? [] : inputs) {
    if (!(await files.same(out!, input))) continue;
    throw new CatalogError('OutputIsInput', `${out} is one of the documents; give --out another name.`, { out });
  }
  const indexes = await indexesFrom(catalog, edition);
  const names = indexes.map(nameOf);
  // Texts are read of the editions that documents follow, and of no others: of these the numbers are enough.
  const withTexts = remember(indexes.length, (name: string) => {
    progress(`Reading the texts of edition ${name}`);
    return readCitedBook(catalog, name);
  });
  const lines: CitedLine[] = [];
  for (const [at, file] of inputs.entries()) {
    if (at > 0 && at % 50 === 0) progress(`${at} of ${inputs.length} documents read`);
    const { passages, edition: marked } = await readDocument(file, await files.read(file));
    const fileEdition = marked ?? statedEdition(passages, names);
    // A document that follows another edition is read against that one.
    const followed = names.find(name => name === fileEdition) ?? names[0]!;
    // As it was asked for: a branch has the name of its draft.
    const own = await withTexts(followed === names[0] ? edition : followed);
    const others = indexes.filter(b => nameOf(b) !== followed);
    const options = {
      editions: others.map(nameOf),
      others,
      ...(fileEdition ? { fileEdition } : {}),
    };
    for (const [i, citations] of findCitations(own, passages, options).entries()) {
      for (const together of written(citations)) lines.push(lineOf(file, passages[i]!, together, [own, ...others]));
    }
  }
  if (out !== undefined) {
    await files.write(out, format === 'json' ? `${JSON.stringify(lines, null, 2)}\n` : writeCitedCsv(lines));
  }
  return lines;
}

const nameOf = (book: CitedBook) => book.edition.header.name;

/** All editions by their numbers and titles, the one that is asked for first. Throws UnknownEdition. */
async function indexesFrom(catalog: Catalog, edition: string): Promise<CitedBook[]> {
  const asked = citedBook(await readIndex(catalog, edition));
  const names = (await listEditions(catalog)).map(h => h.name).filter(name => name !== nameOf(asked));
  return [asked, ...(await Promise.all(names.map(async name => citedBook(await readIndex(catalog, name)))))];
}

/** Short numbers of one expression stand and fall together. */
function written(citations: readonly Citation[]): readonly (readonly [Citation, ...Citation[]])[] {
  const groups: [Citation, ...Citation[]][] = [];
  for (const citation of citations) {
    const last = groups.at(-1);
    if (last && citation.within && last[0].within?.start === citation.within.start) last.push(citation);
    else groups.push([citation]);
  }
  return groups;
}

function lineOf(
  file: string,
  passage: Passage,
  citations: readonly [Citation, ...Citation[]],
  books: readonly CitedBook[],
): CitedLine {
  const [first] = citations;
  const meant = books.find(b => b.edition.header.name === first.edition) ?? books[0]!;
  const counted = citations.length > 1 || first.short ? first.within : undefined;
  const start = counted?.start ?? first.start;
  const end = counted?.end ?? (first.through ?? first).end;
  const doubtful = citations.find(c => !c.certain);
  return {
    file,
    place: passage.place ?? `line ${first.line}`,
    start,
    end,
    text: passage.text.slice(start - passage.start, end - passage.start).replace(/\u00ad/g, ''),
    numbers: [...new Set(citations.flatMap(c => numbersOf(meant, c)))],
    edition: first.edition,
    certain: doubtful === undefined,
    why: (doubtful ?? first).why,
  };
}

function numbersOf(book: CitedBook, { number, through }: Citation): readonly string[] {
  if (!through) return [number];
  return numbersBetween(book, number, through.number) ?? [number, through.number];
}
