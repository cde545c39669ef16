import { z } from 'zod';
import type { Finding } from '../model/finding.ts';
import { type FixedAnswers, QUESTION_CODES } from '../model/fixed-answer.ts';
import type { ItemId } from '../model/item.ts';
import { fileNameOf } from './file-names.ts';
import { parseJson, writeJson } from './json.ts';

export const fixedAnswerFolder = (edition: string) => `answers/review/${fileNameOf(edition)}/`;
export const fixedAnswerPath = (edition: string, item: ItemId) =>
  `${fixedAnswerFolder(edition)}${fileNameOf(item)}.json`;

const text = z.string().max(100_000);
const schema = z.strictObject({
  edition: text,
  item: text,
  answers: z.array(
    z.strictObject({
      question: z.enum(QUESTION_CODES),
      answer: z.enum(['yes', 'no']),
      because: text,
      by: text,
      date: z.iso.date(),
      texts: text,
    }),
  ),
});

/** Answers in the order of the questions and fields in one order: the same record gives the same bytes. */
export function writeFixedAnswers({ edition, item, answers }: FixedAnswers): string {
  const inOrder = [...answers].sort((a, b) => QUESTION_CODES.indexOf(a.question) - QUESTION_CODES.indexOf(b.question));
  const told = inOrder.map(({ question, answer, because, by, date, texts }) => ({
    question,
    answer,
    because,
    by,
    date,
    texts,
  }));
  return writeJson({ edition, item, answers: told });
}

/** A file that cannot be read is a finding, and its questions are asked again. */
export function parseFixedAnswers(files: ReadonlyMap<string, string>): {
  readonly records: readonly FixedAnswers[];
  readonly findings: readonly Finding[];
} {
  const records: FixedAnswers[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of files) {
    const parsed = parseJson<FixedAnswers>(path, source, schema);
    if ('value' in parsed) records.push(parsed.value);
    else findings.push(...parsed.findings);
  }
  return { records, findings };
}
