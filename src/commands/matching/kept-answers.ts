import type { AnswerCells, KeptAnswer } from '../../exports/match-csv.ts';
import { type Answer, pairCode } from '../../matching/answers.ts';
import type { BareEdition } from './bare-edition.ts';
import { FITS_NO_PAIR } from './given-lines.ts';
import type { ReadAnswers } from './read-answers.ts';

export const NOTHING_GIVEN: AnswerCells = { by: '', date: '', answer: '', instead: '', because: '' };

export type ToldAnswers = Pick<ReadAnswers, 'answers' | 'unused'>;

/**
 * Where the answers of a round stand in its output, so that the next round begins with all of them: beside the line
 * that they are about, or else behind all lines. A row that became another than was asked has yes in its new line, and
 * no, which no line shows any more, at the end.
 *
 * @param shown the codes of the lines that are written
 */
export function keptAnswers(
  { answers, unused }: ToldAnswers,
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
  for (const answer of answers) {
    const [i, j] = [answer.kind === 'new' ? -1 : answer.from, answer.kind === 'withdrawn' ? -1 : answer.to];
    const cells = { ...NOTHING_GIVEN, ...saidOf(answer), answer: answer.kind };
    put(pairCode(from.rows[i], i, to.rows[j], j), cells, `answered ${answer.kind}: ${rowsInWords(from, to, i, j)}`);
  }
  for (const line of unused) {
    const { code, answer, instead, because, by, date, ends } = line;
    const why = ends ? `not used: ${rowsInWords(from, to, ...ends)}` : `${FITS_NO_PAIR}${line.about || 'unknown rows'}`;
    put(code, { by, date, answer, instead, because }, why);
  }
  return { given, kept };
}

const saidOf = ({ because, by = '', date = '' }: Answer) => ({ because, by, date });

function rowsInWords(from: BareEdition, to: BareEdition, i: number, j: number): string {
  return [from.rows[i], to.rows[j]]
    .map(row => (row ? `${row.number} ${row.title || row.text.slice(0, 60)}`.trim() : '-'))
    .join(' → ');
}
