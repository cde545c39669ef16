import { isPair, marksOf } from '../../content/links/marks.ts';
import { joinEditions } from '../../crosswalk/joint.ts';
import { refuseUnknownHeads } from '../../editing/item-heads.ts';
import { crosswalkLines } from '../../exports/crosswalk-lines.ts';
import type { MatchLine } from '../../exports/match-csv.ts';
import { type Answer, pairCode } from '../../matching/answers.ts';
import { LEARNED } from '../../matching/learned.ts';
import { type Candidate, type MatchedLink, type Matching, matchRows } from '../../matching/match-rows.ts';
import type { Link } from '../../model/crosswalk.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { nearestNames } from '../../text/nearest.ts';
import type { Ports } from '../ports/ports.ts';
import { readTables } from '../reading/read-tables.ts';
import { type BareEdition, bareEditionOfTables } from './bare-edition.ts';
import { readAnswers } from './read-answers.ts';

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
  readonly matching: Matching;
  /** Links by band; withdrawn and new rows are counted with them. */
  readonly bands: Readonly<Record<'accept' | 'look', number>>;
  readonly answered: number;
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
  ports.progress(`Matching ${from.rows.length} with ${to.rows.length} rows`);
  const matching = matchRows(from.rows, to.rows, LEARNED, answers);
  return reportOf(from, to, matching, { answers, answered: read.answers.length, findings: read.findings });
}

/** What lineage is made of. */
export type Matched = Pick<MatchReport, 'from' | 'to' | 'matching' | 'answers'>;

/** A matching with its lines. */
export function reportOf(
  from: BareEdition,
  to: BareEdition,
  matching: Matching,
  { answers, answered, findings }: Pick<MatchReport, 'answers' | 'answered' | 'findings'>,
): MatchReport {
  const lines = matchLines(from, to, matching, answers);
  const bands = { accept: 0, look: 0 };
  for (const { band } of matching.links) bands[band]++;
  return {
    from,
    to,
    lines,
    matching,
    bands,
    answered,
    answers,
    findings: [...from.findings, ...to.findings, ...findings],
  };
}

function matchLines(from: BareEdition, to: BareEdition, matching: Matching, answers: readonly Answer[]): MatchLine[] {
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

/** The old rows that print a number. Throws UnknownNumber with the nearest ones. */
export function oldRowsWithNumber({ from }: MatchReport, number: string): number[] {
  const found = from.rows.flatMap((row, at) => (row.number === number ? [at] : []));
  if (found.length > 0) return found;
  const nearest = nearestNames(number, new Set(from.rows.map(r => r.number)));
  throw new CatalogError(
    'UnknownNumber',
    `The old tables have no number ${number}${nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}.` : '; give one that they print.'}`,
    { number },
  );
}
