import type { Decisions } from '../../carryover/decisions.ts';
import { QUESTION_COLUMNS, type Question, questionRows } from '../../carryover/questions.ts';
import type { priceChanges } from '../jobs/price-changes.ts';
import { tableBytes } from '../ports/table-bytes.ts';

export interface BesideOptions {
  /** Where the questionnaire goes: csv, or a workbook where it ends in .xlsx. */
  readonly decisionsOut?: string;
  /** Where the lines go that ask more under a running contract; likewise. */
  readonly priceChanges?: string;
}

/** The tables for people that come with carried jobs, as far as they are asked for: path and bytes. */
export function tablesBeside(
  { decisionsOut, priceChanges: pricesOut }: BesideOptions,
  found: {
    readonly questions: readonly Question[];
    readonly decisions: Decisions | undefined;
    readonly prices: ReturnType<typeof priceChanges>;
  },
): (readonly [path: string, bytes: Uint8Array])[] {
  const { questions, decisions, prices } = found;
  const tables: (readonly [string, Uint8Array])[] = [];
  if (decisionsOut !== undefined) {
    tables.push([decisionsOut, questionTable(decisionsOut, questions, decisions)]);
  }
  if (pricesOut !== undefined) {
    tables.push([pricesOut, tableBytes(pricesOut, 'Price changes', prices.columns, prices.rows())]);
  }
  return tables;
}

/** The questionnaire of a run, with the answers that still hold. */
export function questionTable(
  path: string,
  questions: readonly Question[],
  decisions: Decisions | undefined,
): Uint8Array {
  return tableBytes(path, 'Decisions', QUESTION_COLUMNS, questionRows(questions, decisions));
}
