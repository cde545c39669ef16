import { type Comparison, compareTexts } from '../../content/compare-texts.ts';
import { readerForType } from '../../content/reading/for-type.ts';
import type { Duty, Wording } from '../../model/crosswalk.ts';
import { tellEvidence } from '../../model/duty-evidence.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { readTable } from '../../tables/read-table.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import type { Ports } from '../ports/ports.ts';
import { rowIdFindings } from './row-ids.ts';

export interface PairsRequest {
  /**
   * csv with the columns `id`, `from_text` and `to_text`, optionally `type`: then of both texts only what they say for it is
   * compared. Other types are known by standing in that column as well.
   */
  readonly pairs: string;
  readonly out?: string;
}

export interface ComparedPair extends Comparison {
  readonly id: string;
  readonly type: string;
}

export interface PairsReport {
  readonly pairs: readonly ComparedPair[];
  readonly wording: Readonly<Record<Wording, number>>;
  readonly duty: Readonly<Record<Duty, number>>;
  /** Of the table: ids that are empty or stand twice. */
  readonly findings: readonly Finding[];
}

const NEEDED = ['id', 'from_text', 'to_text'];

/** Compares pairs of texts, without any catalog: what is asked now that was not, and what is lost. */
export async function comparePairs(ports: Ports, { pairs: file, out }: PairsRequest): Promise<PairsReport> {
  if (out !== undefined && (await ports.files.same(file, out))) {
    throw new CatalogError('OutputIsInput', `${out} is the input; give --out another name.`, { out });
  }
  const table = readTable(file, await ports.files.read(file));
  const lacking = NEEDED.filter(name => !table.columns.includes(name));
  if (lacking.length > 0) {
    throw new CatalogError(
      'BadTable',
      `${file} has no column ${lacking.join(' and no column ')}; name its columns id, from_text and to_text in its first line.`,
      { file, lacking },
    );
  }
  const types = [...new Set(table.rows.map(({ cells }) => cells.get('type') ?? ''))].filter(Boolean);
  const named = types.map(type => ({ id: type, name: type }));
  const readers = new Map(types.map(type => [type, readerForType(type, named)]));
  const pairs = table.rows.map(({ cells }) => {
    const cell = (name: string) => cells.get(name) ?? '';
    const forType = readers.get(cell('type'));
    const [from, to] = ['from_text', 'to_text'].map(name => forType?.(cell(name)).text ?? cell(name));
    return { id: cell('id'), type: cell('type'), ...compareTexts(from!, to!) };
  });
  const wording = { same: 0, editorial: 0, substantive: 0 };
  const duty = { same: 0, stricter: 0, relaxed: 0, mixed: 0, unclear: 0 };
  for (const pair of pairs) {
    wording[pair.wording]++;
    duty[pair.duty]++;
  }
  if (out !== undefined) await ports.files.write(out, pairsCsv(pairs, table.columns.includes('type')));
  const ids = table.rows.map(({ cells, line }) => ({ id: cells.get('id') ?? '', line }));
  return { pairs, wording, duty, findings: rowIdFindings(file, ids) };
}

/** `id,wording,duty,lost,evidence`, behind them `type` where the pairs have one; phrases are joined by ` | `. */
export function pairsCsv(pairs: readonly ComparedPair[], typed = false): string {
  return writeCsv([
    ['id', 'wording', 'duty', 'lost', 'evidence', ...(typed ? ['type'] : [])],
    ...pairs.map(pair => [
      pair.id,
      pair.wording,
      pair.duty,
      pair.lost.map(l => l.text).join(' | '),
      pair.evidence.map(tellEvidence).join(' | '),
      ...(typed ? [pair.type] : []),
    ]),
  ]);
}
