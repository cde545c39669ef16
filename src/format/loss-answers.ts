import { z } from 'zod';
import type { Finding } from '../model/finding.ts';
import { LOSS_VERDICTS, type LossAnswer } from '../model/loss-answer.ts';
import { parseJson, writeJson } from './json.ts';

export const LOSS_ANSWERS = 'answers/loss/';

export const lossAnswerPath = (key: string) => `${LOSS_ANSWERS}${key}.json`;

const text = z.string().max(100_000);
const schema = z.strictObject({
  from: text,
  to: text,
  item: text,
  types: z.array(text),
  kind: text,
  text,
  verdict: z.enum(LOSS_VERDICTS),
  because: text,
  by: text,
  date: z.iso.date(),
  texts: z.array(text),
  second: z.strictObject({ by: text, date: z.iso.date() }).exactOptional(),
});

export function writeLossAnswer(answer: LossAnswer): string {
  const { from, to, item, types, kind, text: words, verdict, because, by, date, texts, second } = answer;
  return writeJson({ from, to, item, types, kind, text: words, verdict, because, by, date, texts, second });
}

/** Answers by their key; a file that cannot be read is a finding, and its question is asked again. */
export function parseLossAnswers(files: ReadonlyMap<string, string>): {
  readonly answers: ReadonlyMap<string, LossAnswer>;
  readonly findings: readonly Finding[];
} {
  const answers = new Map<string, LossAnswer>();
  const findings: Finding[] = [];
  for (const [path, source] of files) {
    const parsed = parseJson<LossAnswer>(path, source, schema);
    if ('value' in parsed) answers.set(path.slice(LOSS_ANSWERS.length, -'.json'.length), parsed.value);
    else findings.push(...parsed.findings);
  }
  return { answers, findings };
}
