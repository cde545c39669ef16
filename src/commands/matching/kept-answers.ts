import type { AnswerCells, KeptAnswer } from '../../exports/match-csv.ts';
import { type Answer, type PairAt, pairCode } from '../../matching/answers.ts';
import type { BareEdition } from './bare-edition.ts';
import { KEPT_WHY } from './given-lines.ts';
import type { ReadAnswers } from './read-answers.ts';

export const NOTHING_GIVEN: AnswerCells = {
  by: '',
  date: '',
  answer: '',
  instead: '',
  because: '',
  own: new Map(),
};

export type ToldAnswers = Pick<ReadAnswers, 'answers' | 'unused' | 'beside'>;

/**
 * Where the answers of a round stand in its output, so that the next round begins with all of them: beside the line
 * that they are about, or else behind all lines. A row that became another than was asked has yes in its new line, and
 * no, which no line shows any more, at the end.
 *
 * @param shown the codes of the lines that are written
 */
export function keptAnswers(
  { answers, unused, beside }: ToldAnswers,
  from: BareEdition,
  to: BareEdition,
  shown: ReadonlySet<string>,
): { readonly given: ReadonlyMap<string, AnswerCells>; readonly kept: readonly KeptAnswer[] } {
  const given = new Map<string, AnswerCells>();
  const kept: KeptAnswer[] = [];
  const put = (pair: string, cells: AnswerCells, why: string) => {
    if (shown.has(pair) && !given.has(pair)) given.set(pair, cells);
    else kept.push({ pair, ...cells, why });
  };
  const codeOf = ([i, j]: PairAt) => pairCode(from.rows[i], i, to.rows[j], j);
  const owns = new Map<string, ReadonlyMap<string, string>>();
  for (const { answer, own } of beside) {
    const key = answer.kind + codeOf(endsOf(answer));
    owns.set(key, joined(owns.get(key), own));
  }
  for (const answer of answers) {
    const ends = endsOf(answer);
    const code = codeOf(ends);
    const own = owns.get(answer.kind + code) ?? NOTHING_GIVEN.own;
    const why = KEPT_WHY.answered(answer.kind) + rowsInWords(from, to, ...ends);
    put(code, { ...NOTHING_GIVEN, ...saidOf(answer), answer: answer.kind, own }, why);
  }
  for (const line of unused) {
    const { code, answer, instead, because, by, date, own, ends } = line;
    const why = ends
      ? KEPT_WHY.notUsed + rowsInWords(from, to, ...ends)
      : KEPT_WHY.fitsNoPair + (line.about || 'unknown rows');
    put(code, { by, date, answer, instead, because, own }, why);
  }
  return { given, kept };
}

const endsOf = (answer: Answer): PairAt => [
  answer.kind === 'new' ? -1 : answer.from,
  answer.kind === 'withdrawn' ? -1 : answer.to,
];

/** What several lines say under one column, in one cell. */
function joined(a: ReadonlyMap<string, string> = new Map(), b: ReadonlyMap<string, string>) {
  const names = new Set([...a.keys(), ...b.keys()]);
  return new Map(
    [...names].map(name => [name, [...new Set([a.get(name), b.get(name)])].filter(Boolean).join(' | ')] as const),
  );
}

const saidOf = ({ because, by = '', date = '' }: Answer) => ({ because, by, date });

function rowsInWords(from: BareEdition, to: BareEdition, i: number, j: number): string {
  return [from.rows[i], to.rows[j]]
    .map(row => (row ? `${row.number} ${row.title || row.text.slice(0, 60)}`.trim() : '-'))
    .join(' → ');
}
