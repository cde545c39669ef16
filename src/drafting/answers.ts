import { createHash } from 'node:crypto';

/**
 * "Intended, because ...": a person's answer to a remark, as a plain value. A catalog keeps it as a yes to the fixed
 * question that the rule speaks of (`review answer`).
 */
export interface Answer {
  readonly rule: string;
  /** The item or row that the remark was about. */
  readonly subject: string;
  /** {@link textHash} of the text as it stood when the answer was given. */
  readonly textHash: string;
  readonly because: string;
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
}

/** 20 hex digits of SHA-256 of a text. */
export function textHash(text: string): string {
  return createHash('sha256').update(text, 'utf8').digest('hex').slice(0, 20);
}

/** What was remarked on, split by whether somebody has answered it. */
export interface AnsweredRemarks<T> {
  readonly open: readonly T[];
  readonly answered: readonly { readonly remark: T; readonly answer: Answer }[];
}

/**
 * Parts the remarks that nobody has answered from those that are intended. An answer holds for one rule, one subject and
 * one wording: once the text changes the question is asked again.
 */
export function splitAnswered<T extends { readonly id: string; readonly rule: string }>(
  remarks: readonly T[],
  textOf: (id: string) => string,
  answers: readonly Answer[],
): AnsweredRemarks<T> {
  const key = (rule: string, subject: string, hash: string) => JSON.stringify([rule, subject, hash]);
  const known = new Map(answers.map(a => [key(a.rule, a.subject, a.textHash), a]));
  const open: T[] = [];
  const answered: { remark: T; answer: Answer }[] = [];
  for (const remark of remarks) {
    const answer = known.size === 0 ? undefined : known.get(key(remark.rule, remark.id, textHash(textOf(remark.id))));
    if (answer) answered.push({ remark, answer });
    else open.push(remark);
  }
  return { open, answered };
}
