import type { FixedQuestionLine } from '../../release/fixed-question-lines.ts';
import { writeCsv } from '../../tables/write-csv.ts';

/** A review queue as a table to fill in: a line for each question, in its order. */
export function fixedQuestionCsv(lines: readonly FixedQuestionLine[]): string {
  const head = [
    'item',
    'number',
    'title',
    'part',
    'question',
    'asks',
    'evidence',
    'state',
    'answer',
    'because',
    'by',
    'date',
  ];
  return writeCsv([
    head,
    ...lines.map(l => [
      l.item,
      l.number,
      l.title,
      l.part,
      l.question.code,
      l.question.asks,
      l.evidence.join(' | '),
      l.state,
      l.state === 'yes' || l.state === 'no' ? l.state : '',
      l.state === 'again' ? '' : (l.answer?.because ?? ''),
      l.answer?.by ?? '',
      l.answer?.date ?? '',
    ]),
  ]);
}
