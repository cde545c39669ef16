import { writeMatchCsv } from '../../exports/match-csv.ts';
import type { Answer } from '../../matching/answers.ts';
import { LEARNED } from '../../matching/learned.ts';
import { matchRows } from '../../matching/match-rows.ts';
import { type Question, reviewOrder, settledBy } from '../../matching/review-order.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { nearestNames } from '../../text/nearest.ts';
import { hashOf } from '../carrying/carry-mark.ts';
import { inTurn } from '../in-turn.ts';
import type { Ports } from '../ports/ports.ts';
import { findsRows } from './answer-rows.ts';
import type { BareEdition } from './bare-edition.ts';
import {
  askedIn,
  codeOf,
  type Ends,
  type MatchAnswerRow,
  readMatchAnswers,
  rowsFor,
  writeMatchAnswers,
} from './match-answers.ts';
import type { MatchedRecord } from './match-editions.ts';
import { type Matched, reportOf } from './match-tables.ts';
import { silentRows, tellsSteps } from './matching-told.ts';
import { answersIn, readAnswerTables } from './read-answers.ts';
import type { ReviewCalls } from './review-calls.ts';
import { linksByRow, showQuestion } from './review-question.ts';

export interface MatchReviewRequest {
  readonly from: BareEdition;
  readonly to: BareEdition;
  /** What the catalog knows already. */
  readonly known: readonly Answer[];
  /** Tables with answers that stand and are not written to. */
  readonly earlier: readonly string[];
  /** The csv that every answer goes to. */
  readonly file: string;
  /** What of a matching can become lineage; absent where the tables are no editions of a catalog. */
  readonly lineage?: (matched: Matched) => Promise<readonly MatchedRecord[]>;
}

/** A review of the links of two editions that a person has to look at. */
export interface MatchReview extends ReviewCalls {
  readonly names: { readonly from: string; readonly to: string };
  readonly file: string;
  readonly findings: readonly Finding[];
}

/** For so long a question is not handed to a second person while others are open. */
const HANDED_MS = 5 * 60 * 1000;

/** One matching, and what is asked of it. */
interface Round {
  readonly matching: ReturnType<typeof matchRows>;
  readonly links: ReturnType<typeof linksByRow>;
  readonly asked: readonly (Question & { readonly code: string })[];
  readonly places: ReadonlyMap<string, number>;
  readonly answers: readonly Answer[];
  /** The questions whose answers it knew. */
  readonly knew: ReadonlySet<string>;
  readonly seconds: number;
}

export async function openMatchReview(ports: Ports, request: MatchReviewRequest): Promise<MatchReview> {
  const { from, to, file } = request;
  const both = { from: from.rows, to: to.rows };
  const earlier = await readAnswerTables(ports, request.earlier);
  const find = findsRows(from.rows, to.rows);
  // Read anew each time: somebody may mend the file in a spreadsheet meanwhile, and its rows are few.
  const read = async () => {
    const { rows, table } = await readMatchAnswers(ports.files, file);
    const told = answersIn(table ? [...earlier, table] : earlier, from.rows, to.rows, find);
    return { rows, told, answers: told.answers };
  };
  const begun = await read();
  let round = match(begun);
  // Questions that the last matching took for settled and whose answers were taken back since.
  const reopened = new Map<string, Ends>();
  const handed = new Map<string, { readonly by: string; readonly at: number }>();
  let written: { readonly matching: Round['matching']; readonly said: string; readonly text: string } | undefined;
  const turn = inTurn();
  /** Reads and writes the file as one step: another process may serve it as well. */
  const changing = <T>(work: () => Promise<T>) =>
    turn(() => (ports.files.alone ? ports.files.alone(file, work) : work()));
  const now = () => ports.now().getTime();
  const withOther = (code: string, by: string | undefined) => {
    const held = handed.get(code);
    return held !== undefined && held.by !== by && held.at + HANDED_MS > now();
  };

  return {
    names: { from: from.index.header.name, to: to.index.header.name },
    file,
    findings: [...from.findings, ...to.findings, ...silentRows(round.matching, from, to), ...begun.told.findings],
    progress: async () => {
      const { rows, answers } = await read();
      const open = openOf(answers);
      const given = new Set(rows.map(r => r.asked));
      return {
        answered: given.size,
        left: open.length + reopened.size,
        likelyWrong: Math.round(open.reduce((sum, q) => sum + 1 - q.link.confidence, 0)),
        sinceMatching: given.size + round.knew.size - 2 * [...given].filter(code => round.knew.has(code)).length,
        matchingSeconds: round.seconds,
      };
    },
    nextOpen: async (after, by) => {
      const open = openOf((await read()).answers);
      const back = [...reopened.keys()].find(code => code !== after);
      if (back !== undefined) return back;
      const at = after === undefined ? -1 : (round.places.get(after) ?? -1);
      const free = open.filter(({ code }) => !withOther(code, by));
      const next = [free, open].flatMap(list => list.find(({ code }) => round.places.get(code)! > at) ?? list[0] ?? []);
      const code = next[0]?.code;
      if (code !== undefined && by !== undefined) handed.set(code, { by, at: now() });
      return code;
    },
    question: async code => {
      const answered = (await read()).rows.filter(r => r.asked === code);
      const ends = endsOf(code, answered);
      if (!ends) return undefined;
      const at = round.places.get(code);
      const { link, hanging = 0 } = round.asked[at ?? -1] ?? {};
      const shown = showQuestion({ from, to, ...round }, ends);
      const [previous, next] = [round.asked[(at ?? 0) - 1]?.code, round.asked[(at ?? -1) + 1]?.code];
      return {
        ...shown,
        code,
        confidence: link?.confidence ?? shown.sum?.confidence ?? 0,
        hanging,
        answered,
        seen: seenOf(answered),
        ...(previous === undefined ? {} : { previous }),
        ...(next === undefined ? {} : { next }),
      };
    },
    last: async by => {
      const { rows } = await read();
      const code = rows.findLast(r => r.by === by)?.asked;
      return code === undefined ? [] : rows.filter(r => r.asked === code);
    },
    answer: (code, given, because, by, seen) =>
      changing(async () => {
        const { rows } = await read();
        const before = rows.filter(r => r.asked === code);
        const other = before.find(r => r.by !== by);
        if (seen !== undefined && other && seenOf(before) !== seen) {
          const sentence = `${other.by.replace(/\s*<.*/, '')} has answered this since your page was made; look at that answer, and give yours again if it is to take its place.`;
          throw new CatalogError('Changed', sentence, { code });
        }
        const ends = endsOf(code, before);
        if (!ends) {
          throw new CatalogError('BadArgument', `There is no question ${code}; go to the next one that is open.`);
        }
        const said = { because, by, date: dayOf(ports.now()), asked: code };
        const lines = rowsFor(both, ends, given).map(row => ({ ...row, ...said }));
        await writeMatchAnswers(ports.files, file, [...rows.filter(r => r.asked !== code), ...lines]);
        reopened.delete(code);
      }),
    undo: (by, asked) =>
      changing(async () => {
        const { rows } = await read();
        // What somebody else answered last is not one's own to take back.
        const code = rows.findLast(r => r.by === by && (asked === undefined || r.asked === asked))?.asked;
        if (code === undefined) return undefined;
        const taken = rows.filter(r => r.asked === code);
        const ends = endsOf(code, taken);
        await writeMatchAnswers(
          ports.files,
          file,
          rows.filter(r => r.asked !== code),
        );
        if (ends && !round.places.has(code)) reopened.set(code, ends);
        return ends && code;
      }),
    rematch: () =>
      turn(async () => {
        begin(await read());
      }),
    crosswalk: () => turn(crosswalk),
    lineage: () => turn(async () => request.lineage?.({ from, to, ...(await current()) }) ?? []),
    rowsWithNumber: async (side, number) => {
      const rows = both[side === 'old' ? 'from' : 'to'];
      const found = rows.flatMap((row, at) => (row.number === number ? [at] : []));
      if (found.length > 0) return found;
      const nearest = nearestNames(number, new Set(rows.map(r => r.number)));
      throw new CatalogError(
        'UnknownNumber',
        `The ${side} edition has no number ${number}${nearest.length > 0 ? `; the nearest are ${nearest.join(', ')}.` : '; give one that it prints.'}`,
        { number },
      );
    },
  };

  function begin(state: Awaited<ReturnType<typeof read>>): void {
    round = match(state);
    // What was taken back is in doubt again and asked, or the matcher is sure of it without the answer.
    reopened.clear();
  }

  /** The matching with every answer that stands in the file now. */
  async function current() {
    const state = await read();
    if (JSON.stringify(state.answers) !== JSON.stringify(round.answers)) begin(state);
    return { ...state, matching: round.matching, answers: [...request.known, ...state.answers] };
  }

  /** Marks of all its lines take longer than the matching, so the text is kept until an answer changes. */
  async function crosswalk(): Promise<string> {
    const { matching, rows, answers, told } = await current();
    const said = JSON.stringify(rows);
    if (written?.matching === matching && written.said === said) return written.text;
    written = { matching, said, text: writeMatchCsv(reportOf(from, to, matching, answers, told)) };
    return written.text;
  }

  function match({ rows, answers }: { rows: readonly MatchAnswerRow[]; answers: readonly Answer[] }): Round {
    const tell = tellsSteps(ports, from, to);
    const started = performance.now();
    const matching = matchRows(from.rows, to.rows, LEARNED, [...request.known, ...answers], tell);
    tell('ordering the questions');
    const asked = reviewOrder(matching.links, from.rows, to.rows).map(q => ({ ...q, code: codeOf(both, q.link) }));
    return {
      matching,
      links: linksByRow(matching.links),
      asked,
      places: new Map(asked.map(({ code }, at) => [code, at])),
      answers,
      knew: new Set(rows.map(r => r.asked)),
      seconds: (performance.now() - started) / 1000,
    };
  }

  function openOf(answers: readonly Answer[]) {
    const settled = settledBy(answers);
    return round.asked.filter(({ link }) => !settled(link));
  }

  /** Which rows a question is about: one of this round, one reopened, or one that an earlier round asked. */
  function endsOf(code: string, answered: readonly MatchAnswerRow[]): Ends | undefined {
    const at = round.places.get(code);
    return at === undefined ? (reopened.get(code) ?? askedIn(both, code, answered)) : round.asked[at]!.link;
  }
}

const seenOf = (rows: readonly MatchAnswerRow[]) =>
  rows.length === 0 ? '' : hashOf(JSON.stringify(rows)).slice(0, 16);
