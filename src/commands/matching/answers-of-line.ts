import { type Answer, isPairCode } from '../../matching/answers.ts';
import type { BareRow } from '../../matching/bare-row.ts';
import { counted } from '../../model/counted.ts';
import type { AnswerColumns, GivenLine } from './given-lines.ts';

export type ByNumber = (number: string) => readonly number[];

/** What a line answers; a sentence that says why it is not used; undefined where it is a remark only. */
export function answersOf(
  line: GivenLine,
  columns: AnswerColumns,
  from: readonly BareRow[],
  to: readonly BareRow[],
  numbers: { readonly from: ByNumber; readonly to: ByNumber },
): Answer[] | string | undefined {
  const { answer, instead, code, ends, because, by, date } = line;
  const insteadAt = Number(columns.cell(line.row, 'instead_row') ?? 0) - 1;
  const other = instead !== '' || to[insteadAt] !== undefined;
  if (answer === '' && !other) return undefined;
  if (!ends) return lostSentence(line, from, to);
  const said = { because, ...(by === '' ? {} : { by }), ...(date === '' ? {} : { date }) };
  const [i, j] = ends;
  const same = answer === 'yes' && instead !== '' && instead === to[j]?.number;
  if (other && !same) {
    if (answer === 'yes' || answer === 'withdrawn' || answer === 'new') {
      return `This line says ${answer} and names ${instead || 'another row'} instead; leave one of the two.`;
    }
    const side = i < 0 ? 'old' : 'new';
    const rows: number[] = [];
    const byNumber = i < 0 ? numbers.from : numbers.to;
    const one = byNumber(instead).length > 0;
    for (const number of one ? [instead] : instead.split(/[;|]/).map(part => part.trim())) {
      const bearers = i >= 0 && to[insteadAt]?.number === number ? [insteadAt] : byNumber(number);
      if (bearers.length !== 1) {
        const many = bearers.length === 0 ? `No ${side} row has` : `${counted(bearers.length, `${side} row`)} have`;
        return `${many} the number ${number || '(none)'} that stands under instead; name one that exactly one ${side} row prints, or several as 3.1; 3.2.`;
      }
      rows.push(bearers[0]!);
    }
    const yes = rows.map((row): Answer => ({ kind: 'yes', from: i < 0 ? row : i, to: i < 0 ? j : row, ...said }));
    const rejected = i >= 0 && j >= 0 && !rows.includes(j);
    return rejected ? [...yes, { kind: 'no', from: i, to: j, ...said }] : yes;
  }
  if ((answer === 'yes' || answer === 'no') && i >= 0 && j >= 0) return [{ kind: answer, from: i, to: j, ...said }];
  if ((answer === 'withdrawn' || (answer === 'yes' && j < 0)) && i >= 0) {
    return [{ kind: 'withdrawn', from: i, ...said }];
  }
  if ((answer === 'new' || (answer === 'yes' && i < 0)) && j >= 0) return [{ kind: 'new', to: j, ...said }];
  if (answer === 'no') {
    return i >= 0
      ? `No says that ${nameOf(from[i])} did not end, but not what it became; write the new number under instead.`
      : `No says that ${nameOf(to[j])} is not new, but not where it came from; write the old number under instead.`;
  }
  return `${answer || code} is no answer here; write yes, no, withdrawn or new, or the right number under instead.`;
}

const nameOf = (row: BareRow | undefined) => row?.number || row?.title || 'this row';

/** Why a line finds no rows. */
function lostSentence(line: GivenLine, from: readonly BareRow[], to: readonly BareRow[]): string {
  const { code, about, answer, instead } = line;
  const what = [answer, instead && `instead ${instead}`].filter(Boolean).join(', ');
  if (code === '')
    return `The answer ${what} has no code under pair; take it over from the crosswalk that match wrote.`;
  if (!isPairCode(code)) {
    return `${code} is no code of a pair, so the answer ${what} finds no rows; take the code over from the crosswalk that match wrote.`;
  }
  const rows = about === '' ? '' : ` (${about})`;
  const gone = (['from', 'to'] as const).flatMap(side => {
    const [number, title] = [line.row.cells.get(`${side}_number`) ?? '', line.row.cells.get(`${side}_title`) ?? ''];
    const list = side === 'from' ? from : to;
    if (number === '' && title === '') return [];
    if (list.some(row => (number !== '' && row.number === number) || (title !== '' && row.title === title))) return [];
    return [`the ${side === 'from' ? 'old' : 'new'} table has no row ${`${number} ${title}`.trim()}`];
  });
  const cause =
    gone.length > 0 ? gone.join(', and ') : 'the words, the number or the place of one of its rows have changed since';
  return `The answer ${what} for ${code}${rows} fits no pair of these tables: ${cause}. Answer it again.`;
}

export function rowsByNumber(rows: readonly BareRow[]): ByNumber {
  const known = new Map<string, number[]>();
  rows.forEach((row, at) => {
    const list = known.get(row.number);
    if (list) list.push(at);
    else known.set(row.number, [at]);
  });
  return number => known.get(number) ?? [];
}
