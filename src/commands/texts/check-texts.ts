import { checkDrafts, type DraftRemark, type DraftText } from '../../drafting/check-drafts.ts';
import { loadLanguage } from '../../drafting/language.ts';
import type { Term } from '../../drafting/rule.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { readCsv } from '../../tables/read-csv.ts';
import { readTable } from '../../tables/read-table.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import type { Ports } from '../ports/ports.ts';
import { rowIdFindings } from './row-ids.ts';

export interface TextsRequest {
  /** csv with the columns `id` and `text`, optionally `purpose`. */
  readonly texts: string;
  /** csv with the columns `term`, optionally `deprecated` (yes) and `use` (the term to write instead). */
  readonly terms?: string;
  readonly out?: string;
}

export interface TextsReport {
  readonly texts: number;
  readonly remarks: readonly DraftRemark[];
  /** Of the table: ids that are empty or stand twice. */
  readonly findings: readonly Finding[];
}

/** Asks the drafting rules of a table of texts, without any catalog. */
export async function checkTexts(ports: Ports, request: TextsRequest): Promise<TextsReport> {
  const { texts, terms, out } = request;
  if (out !== undefined) {
    for (const input of [texts, terms]) {
      if (input !== undefined && (await ports.files.same(input, out))) {
        throw new CatalogError('OutputIsInput', `${out} is an input; give --out another name.`, { out });
      }
    }
  }
  const known = terms === undefined ? undefined : await readTerms(ports, terms);
  const { drafts, findings } = await readTexts(ports, texts, known);
  const remarks = checkDrafts(drafts, await loadLanguage());
  if (out !== undefined) await ports.files.write(out, remarksCsv(remarks));
  return { texts: drafts.length, remarks, findings };
}

/** `id,rule,place,message`; the place is `start-end words`, offsets in UTF-16 units of the cell as it stands. */
export function remarksCsv(remarks: readonly DraftRemark[]): string {
  return writeCsv([
    ['id', 'rule', 'place', 'message'],
    ...remarks.map(r => [r.id, r.rule, `${r.start}-${r.end} ${r.words}`, r.message]),
  ]);
}

/** Cells are read untrimmed, so that places count from the first character of the cell. */
async function readTexts(
  ports: Ports,
  file: string,
  terms: readonly Term[] | undefined,
): Promise<{ readonly drafts: readonly DraftText[]; readonly findings: readonly Finding[] }> {
  const { batches } = await readCsv(ports.files.stream(file));
  let header: string[] | undefined;
  const drafts: DraftText[] = [];
  const ids: { id: string; line: number }[] = [];
  for await (const { records } of batches) {
    for (const { cells, line } of records) {
      if (!header) {
        header = cells.map(c => c.trim().toLowerCase());
        needColumns(file, header, ['id', 'text']);
        continue;
      }
      const cell = (name: string) => cells[header!.indexOf(name)] ?? '';
      if (cells.every(c => c.trim() === '')) continue;
      const purpose = cell('purpose').trim();
      const context = { ...(terms ? { terms } : {}), ...(purpose === '' ? {} : { purpose }) };
      ids.push({ id: cell('id'), line });
      drafts.push({ id: cell('id'), text: cell('text'), context });
    }
  }
  if (!header) needColumns(file, [], ['id', 'text']);
  return { drafts, findings: rowIdFindings(file, ids) };
}

function needColumns(file: string, header: readonly string[], needed: readonly string[]): void {
  const lacking = needed.filter(name => !header.includes(name));
  if (lacking.length === 0) return;
  const has = header.length === 0 ? 'it is empty' : `it has ${header.join(', ')}`;
  throw new CatalogError(
    'BadTable',
    `${file} needs the columns ${needed.join(' and ')}, but ${has}; name the columns so in its first line.`,
    { file, lacking },
  );
}

/** The terms of a glossary. */
export async function readTerms(ports: Ports, file: string): Promise<Term[]> {
  const table = readTable(file, await ports.files.read(file));
  needColumns(file, table.columns, ['term']);
  return table.rows
    .map(({ cells }) => ({
      term: cells.get('term') ?? '',
      deprecated: /^(?:yes|true|1|x|deprecated)$/i.test(cells.get('deprecated') ?? ''),
      ...(cells.get('use') ? { use: cells.get('use')! } : {}),
    }))
    .filter(t => t.term !== '');
}
