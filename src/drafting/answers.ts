import { createHash } from 'node:crypto';

/**
 * "Intended, because ...": a person's answer to a remark. It is a plain value; where a catalog keeps it is not settled
 * yet (DESIGN section 4 foresees answers/<kind>/<key>.json).
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

/**
 * The remarks that nobody has answered. An answer holds for one rule, one subject and one wording: once the text changes
 * the question is asked again.
 */
export function unanswered<T extends { readonly id: string; readonly rule: string }>(
  remarks: readonly T[],
  textOf: (id: string) => string,
  answers: readonly Answer[],
): T[] {
  const answered = new Set(answers.map(a => JSON.stringify([a.rule, a.subject, a.textHash])));
  return remarks.filter(({ id, rule }) => !answered.has(JSON.stringify([rule, id, textHash(textOf(id))])));
}
