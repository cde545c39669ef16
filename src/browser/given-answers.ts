import { Decisions } from '../carryover/decisions.ts';
import { QUESTION_COLUMNS } from '../carryover/questions.ts';
import { tableBytes } from '../commands/ports/table-bytes.ts';
import type { Finding } from '../model/finding.ts';
import { JOB_VERDICTS } from '../model/job-answer.ts';
import { readTable } from '../tables/read-table.ts';
import type { GivenFile, Note, ReadAnswers } from './carry-request.ts';

/**
 * Answers as the table that the command line reads: they go the same way as a questionnaire on a disk, so that the same
 * bytes come out.
 */
export function answersTable(answers: readonly (readonly string[])[] | undefined): GivenFile | undefined {
  if (answers === undefined || answers.length === 0) return undefined;
  return { name: 'answers.csv', bytes: tableBytes('answers.csv', 'Decisions', QUESTION_COLUMNS, answers) };
}

/** Whether a head is that of a questionnaire, which would pass for a table of jobs: it has a column of numbers too. */
export function isQuestionnaire(header: readonly string[]): boolean {
  const names = header.map(name => name.trim());
  return ['number', 'asked_on', 'answer', 'by'].every(name => names.includes(name));
}

/** The rows of a questionnaire that somebody answered, and what there is to say about the others. @throws CatalogError */
export function readAnswers({ name, bytes }: GivenFile): ReadAnswers {
  const table = readTable(name, bytes);
  const notes = new Decisions(table).findings().filter(f => f.rule === 'decision');
  const rows = table.rows.flatMap(({ cells }) => {
    // A cell that a spreadsheet would take for a formula has an apostrophe before it.
    const cell = (column: string) => (cells.get(column) ?? '').replace(/^'(?=[=+\-@])/, '');
    const answer = cell('answer').toLowerCase();
    if (!JOB_VERDICTS.some(known => known === answer) || cell('by') === '') return [];
    const read: Readonly<Record<string, string>> = { answer, state: cell('state') || 'open' };
    return [QUESTION_COLUMNS.map(column => read[column] ?? cell(column))];
  });
  return { kind: 'answers', rows, notes: notesOf(notes) };
}

/** What there is to say, but for answers about other files: they are kept, and need not fit each. */
export function notesOf(findings: readonly Finding[]): readonly Note[] {
  return findings.filter(f => f.rule !== 'decision-without-lines').map(({ rule, message }) => ({ rule, message }));
}
