import { isPair, marksOf } from '../../content/links/marks.ts';
import { joinEditions } from '../../crosswalk/joint.ts';
import { refuseUnknownHeads } from '../../editing/item-heads.ts';
import { crosswalkLines } from '../../exports/crosswalk-lines.ts';
import type { KeptAnswer, MatchLine } from '../../exports/match-csv.ts';
import { type Answer, pairCode } from '../../matching/answers.ts';
import { LEARNED } from '../../matching/learned.ts';
import { type Candidate, type MatchedLink, type Matching, matchRows } from '../../matching/match-rows.ts';
import { counted } from '../../model/counted.ts';
import type { Link } from '../../model/crosswalk.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { nearestNames } from '../../text/nearest.ts';
import type { Ports } from '../ports/ports.ts';
import { readTables } from '../reading/read-tables.ts';
import { type BareEdition, bareEditionOfTables } from './bare-edition.ts';
import { keptAnswers, NOTHING_GIVEN } from './kept-answers.ts';
import { silentRows, tellsSteps } from './matching-told.ts';
import { type ReadAnswers, readAnswers } from './read-answers.ts';

export interface MatchRequest {
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** Role (number, title, text …) → header, for tables whose headers are spelt otherwise. */
  readonly columns?: ReadonlyMap<string, string>;
  /** Tables with a person's answers. */
  readonly answers?: readonly string[];
}

export interface MatchReport {
  readonly from: BareEdition;
  readonly to: BareEdition;
  readonly lines: readonly MatchLine[];
  /** What people said that none of the lines shows: it is written behind them. */
  readonly kept: readonly KeptAnswer[];
  readonly matching: Matching;
  /** Links by band; withdrawn and new rows are counted with them. */
  readonly bands: Readonly<Record<'accept' | 'look', number>>;
  /** Lines of answers that are used, and such as are not. */
  readonly answered: number;
  readonly unused: number;
  /** What was told beforehand: by the catalog, then by people. */
  readonly answers: readonly Answer[];
  readonly findings: readonly Finding[];
}

/** The crosswalk of two editions that are tables without ids, each link with its probability and why. */
export async function matchTables(ports: Ports, request: MatchRequest): Promise<MatchReport> {
  const { from, to } = await readBareEditions(ports, request);
  return matchBareEditions(ports, from, to, request.answers ?? []);
}

/** Reads the tables of both editions: all files first, so that one that is missing is told before heads and rows are. */
export async function readBareEditions(
  ports: Ports,
  request: MatchRequest,
): Promise<{ readonly from: BareEdition; readonly to: BareEdition }> {
  const told = request.columns ?? new Map<string, string>();
  const from = await readTables(ports, request.from);
  const to = await readTables(ports, request.to);
  refuseUnknownHeads([...from, ...to], told);
  return { from: bareEditionOfTables(from, told), to: bareEditionOfTables(to, told) };
}

/** @param known links that need no guessing: equal ids, declared lineage */
export async function matchBareEditions(
  ports: Ports,
  from: BareEdition,
  to: BareEdition,
  answerFiles: readonly string[],
  known: readonly Answer[] = [],
): Promise<MatchReport> {
  const read = await readAnswers(ports, answerFiles, from.rows, to.rows);
  // A person's answer stands above what the catalog says already.
  const answers = [...known, ...read.answers];
  const tell = tellsSteps(ports, from, to);
  const matching = matchRows(from.rows, to.rows, LEARNED, answers, tell);
  tell(`comparing the texts of ${counted(matching.links.length, 'link')}`);
  return reportOf(from, to, matching, answers, read);
}

/** What lineage is made of. */
export type Matched = Pick<MatchReport, 'from' | 'to' | 'matching' | 'answers'>;

/**
 * A matching with its lines.
 *
 * @param answers all that it was told beforehand
 * @param read what of it people said, and what is to be said of that
 */
export function reportOf(
  from: BareEdition,
  to: BareEdition,
  matching: Matching,
  answers: readonly Answer[],
  read: ReadAnswers,
): MatchReport {
  const bare = matchLines(from, to, matching, answers);
  const { given, kept } = keptAnswers(read, from, to, new Set(bare.map(line => line.pair)));
  const bands = { accept: 0, look: 0 };
  for (const { band } of matching.links) bands[band]++;
  return {
    from,
    to,
    lines: bare.map(line => ({ ...line, given: given.get(line.pair) ?? NOTHING_GIVEN })),
    kept,
    matching,
    bands,
    answered: read.used,
    unused: read.findings.filter(f => f.rule === 'answer').length,
    answers,
    findings: [...from.findings, ...to.findings, ...silentRows(matching, from, to), ...read.findings],
  };
}

type BareLine = Omit<MatchLine, 'given'>;

function matchLines(from: BareEdition, to: BareEdition, matching: Matching, answers: readonly Answer[]): BareLine[] {
  const gone = new Map(answers.flatMap(a => (a.kind === 'withdrawn' ? [[a.from, a.because] as const] : [])));
  const byLink = new Map<string, MatchedLink>();
  const key = (a: string | null | undefined, b: string | null | undefined) => `${a ?? ''}>${b ?? ''}`;
  const links = matching.links.map((m): Link => {
    const link: Link = {
      from: m.from === null ? null : String(m.from),
      to: m.to === null ? null : String(m.to),
      fromExtent: 'unknown',
      toExtent: 'unknown',
      basis: m.answered === undefined ? 'inferred' : 'confirmed',
      confidence: Math.round(m.confidence * 1000) / 1000,
      ...(m.to === null && gone.get(m.from!) ? { reason: gone.get(m.from!)! } : {}),
    };
    byLink.set(key(link.from, link.to), m);
    return link;
  });
  const joint = joinEditions(from.index, to.index, { from: from.index.header.name, to: to.index.header.name, links });
  const texts = { from: (id: string) => from.items.get(id), to: (id: string) => to.items.get(id) };
  const known = new Map(links.filter(isPair).map(link => [link, marksOf(joint, link, texts)]));
  return crosswalkLines(joint, link => known.get(link)!).map(line => {
    const m = byLink.get(key(line.from?.id, line.to?.id))!;
    const [i, j] = [m.from ?? -1, m.to ?? -1];
    return {
      ...line,
      from: line.from && { ...line.from, id: from.ids[i]! },
      to: line.to && { ...line.to, id: to.ids[j]! },
      ...(from.tables.length > 1 && i >= 0 ? { fromTable: from.tables[from.rows[i]!.table]! } : {}),
      band: m.band,
      why: whyOf(m, matching),
      pair: pairCode(from.rows[i], i, to.rows[j], j),
    };
  });
}

/** The reasons that moved the belief most, in a few words. */
function whyOf(m: MatchedLink, matching: Matching): string {
  if (m.answered !== undefined) return m.answered === '' ? 'answered' : `answered: ${m.answered}`;
  if (m.from === null) return 'no old row is likely to be its source';
  const best = m.to === null ? matching.runnersUp(m.from, 1)[0] : matching.explain(m.from, m.to);
  if (m.to !== null) return best ? partsInWords(best) : '';
  return best ? `nothing fits: the nearest is ${percent(best.confidence)} likely` : 'nothing shares a word with it';
}

export function partsInWords({ parts }: Candidate): string {
  return parts
    .slice(0, 4)
    .filter(part => Math.abs(part.value) >= 0.1)
    .map(part => `${part.reason} ${part.value > 0 ? '+' : '−'}${Math.abs(part.value).toFixed(1)}`)
    .join(', ');
}

export const percent = (probability: number) => `${Math.round(probability * 100)} %`;

/**
 * The old rows that print a number, of all tables or of the one that stands before it: `3.1`, `rows:3.1`.
 *
 * @throws CatalogError UnknownNumber with the nearest ones; BadArgument where several tables print it and none is named
 */
export function oldRowsWithNumber({ from }: Pick<MatchReport, 'from'>, told: string): number[] {
  const { rows, tables } = from;
  const bearers = (number: string, table?: number) =>
    rows.flatMap((row, at) => (row.number === number && (table === undefined || row.table === table) ? [at] : []));
  const found = bearers(told);
  const where = [...new Set(found.map(at => rows[at]!.table))];
  if (where.length > 1) {
    const ways = where.map(table => `--explain ${shellWord(`${tables[table]}:${told}`)}`);
    throw new CatalogError(
      'BadArgument',
      `Several of the old tables have a number ${told}; say which: ${ways.join(' or ')}`,
    );
  }
  if (found.length > 0) return found;
  const table = tables.findIndex(name => told.startsWith(`${name}:`));
  const number = table < 0 ? told : told.slice(tables[table]!.length + 1);
  const there = table < 0 ? [] : bearers(number, table);
  if (there.length > 0) return there;
  const nearest = nearestNames(number, new Set(rows.filter(r => table < 0 || r.table === table).map(r => r.number)));
  throw new CatalogError(
    'UnknownNumber',
    `${table < 0 ? 'The old tables have' : `The table ${tables[table]} has`} no number ${number}${nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}.` : '; give one that they print.'}`,
    { number },
  );
}

const shellWord = (word: string) => (/^[\w./=,:@%+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`);
