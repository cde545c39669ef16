import { z } from 'zod';
import type { Finding } from '../model/finding.ts';
import { JOB_VERDICTS, type JobAnswer } from '../model/job-answer.ts';
import { fileNameOf } from './file-names.ts';
import { parseJson, writeJson } from './json.ts';

/** Where the answers of an agency about its jobs are kept on main. */
export const jobAnswersFolder = (agency: string) => `answers/job/${fileNameOf(agency)}/`;

/** One case has one file, so that a later answer takes the place of an earlier one. */
export function jobAnswerPath(agency: string, answer: JobAnswer): string {
  const { from, to, number, type, state, edition, title } = answer;
  const parts = [from, to, number, type ?? '', state, edition, title ?? ''];
  return `${jobAnswersFolder(agency)}${fileNameOf(parts.join('|'))}.json`;
}

const text = z.string().max(100_000);
const schema = z.strictObject({
  from: text,
  to: text,
  number: text,
  type: text.exactOptional(),
  state: text,
  edition: text,
  title: text.exactOptional(),
  verdict: z.enum(JOB_VERDICTS),
  heirs: z.array(text),
  because: text,
  by: text,
  date: z.iso.date(),
  askedOn: text,
});

export function writeJobAnswer(answer: JobAnswer): string {
  const { from, to, number, type, state, edition, title, verdict, heirs, because, by, date, askedOn } = answer;
  return writeJson({ from, to, number, type, state, edition, title, verdict, heirs, because, by, date, askedOn });
}

/** Answers in the order of their paths; a file that cannot be read is a finding, and its question is asked again. */
export function parseJobAnswers(files: ReadonlyMap<string, string>): {
  readonly answers: readonly JobAnswer[];
  readonly findings: readonly Finding[];
} {
  const answers: JobAnswer[] = [];
  const findings: Finding[] = [];
  for (const [path, source] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const parsed = parseJson<JobAnswer>(path, source, schema);
    if ('value' in parsed) answers.push(parsed.value);
    else findings.push(...parsed.findings);
  }
  return { answers, findings };
}
