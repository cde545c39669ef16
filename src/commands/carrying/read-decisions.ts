import { type AnswerWords, Decisions } from '../../carryover/decisions.ts';
import type { JobAnswer } from '../../model/job-answer.ts';
import { readTable } from '../../tables/read-table.ts';
import type { Files } from '../ports/ports.ts';

export interface GivenDecisions {
  /** A questionnaire that came back filled in. */
  readonly decisions?: string;
  /** Answers that the catalog keeps; those of the questionnaire are the later ones. */
  readonly kept?: readonly JobAnswer[];
}

/** What people decided about the cases of a run of jobs, or of texts, and the questionnaire's bytes; empty where nobody decided anything. */
export async function readDecisions(
  files: Pick<Files, 'read'>,
  { decisions: path, kept }: GivenDecisions,
  words?: AnswerWords,
): Promise<{ readonly decisions?: Decisions; readonly bytes?: Uint8Array }> {
  if (path === undefined) return kept ? { decisions: new Decisions(undefined, kept, words) } : {};
  const bytes = await files.read(path);
  return { decisions: new Decisions(readTable(path, bytes), kept, words), bytes };
}
