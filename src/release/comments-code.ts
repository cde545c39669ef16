import type { CommentRecord } from '../model/comment.ts';
import type { Finding } from '../model/finding.ts';
import type { FormComment } from './comments-form.ts';

/** A comment of a form, placed: all that a record says but its code. */
export interface FreshComment {
  readonly form: FormComment;
  readonly record: Omit<CommentRecord, 'code'>;
}

export interface Coded {
  /** New records, and known ones that a mended form has completed. */
  readonly added: readonly CommentRecord[];
  readonly mended: readonly CommentRecord[];
  /** Comments of the form that were on record already. */
  readonly known: number;
  /** Code of each comment of the form. */
  readonly codes: ReadonlyMap<FormComment, string>;
  readonly findings: readonly Finding[];
}

/**
 * Gives each new comment its code: the commenter and a running number, on from the highest, in the order of the
 * form: a reviewer counts the rows, and looks for the first comment under the first code. A comment that is on record already keeps its code, so that a form can be read again; one whose clause or
 * type could not be read is completed from the mended form.
 */
export function codeComments(fresh: readonly FreshComment[], records: readonly CommentRecord[]): Coded {
  const byKey = new Map(records.map(r => [keyOf(r), r]));
  const codes = new Map<FormComment, string>();
  const findings: Finding[] = [];
  const mended = new Map<string, CommentRecord>();
  const first = new Map<string, FreshComment>();
  const matched = new Set<CommentRecord>();
  for (const comment of fresh) {
    const key = keyOf(comment.record);
    const before = first.get(key);
    if (before) findings.push(twice(comment.form, before.form));
    else first.set(key, comment);
    const known = byKey.get(key);
    if (known) matched.add(known);
  }
  let known = 0;
  const unknown: [key: string, FreshComment][] = [];
  for (const [key, comment] of first) {
    const exact = byKey.get(key);
    const before =
      exact ?? onlyOne(records.filter(r => !matched.has(r) && isUnfinished(r) && sameWords(r, comment.record)));
    if (!before) {
      unknown.push([key, comment]);
      continue;
    }
    known++;
    matched.add(before);
    codes.set(comment.form, before.code);
    const better = completed(before, comment.record);
    if (better) mended.set(before.code, better);
  }
  const numbers = new Map<string, number>();
  for (const { code } of records) {
    const [, name, number] = /^(.*)-(\d+)$/.exec(code) ?? [];
    if (name !== undefined) numbers.set(name, Math.max(numbers.get(name) ?? 0, Number(number)));
  }
  const added: CommentRecord[] = [];
  for (const [, { form, record }] of unknown) {
    const name = codeName(record.by);
    const number = (numbers.get(name) ?? 0) + 1;
    numbers.set(name, number);
    const code = `${name}-${String(number).padStart(3, '0')}`;
    codes.set(form, code);
    added.push({ code, ...record });
  }
  for (const { form, record } of fresh) {
    if (!codes.has(form)) codes.set(form, codes.get(first.get(keyOf(record))!.form)!);
  }
  return { added, mended: [...mended.values()], known, codes, findings };
}

/** `Upper Vale Agency` and `upper-vale agency` are one commenter: UPPERVALEAGENCY. */
export function codeName(by: string): string {
  return by.toUpperCase().replace(/[^\p{L}\p{N}]+/gu, '') || 'X';
}

type Said = Omit<CommentRecord, 'code'>;

function keyOf({ by, round = 0, clause = '', line = '', paragraph = '', comment, proposed = '' }: Said): string {
  // The line tells comments apart only where no clause does: a form's lines move with the paper that it was written on.
  const place = clause === '' ? line : clause;
  return JSON.stringify([codeName(by), round, ...[place, paragraph, comment, proposed].map(words)]);
}

function words(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

function sameWords(a: Said, b: Said): boolean {
  const of = (r: Said) => [codeName(r.by), r.round ?? 0, words(r.comment), words(r.proposed ?? '')].join('\n');
  return of(a) === of(b);
}

function isUnfinished(record: Said): boolean {
  return record.unplaced === true || record.type === undefined;
}

function completed(before: CommentRecord, now: Said): CommentRecord | undefined {
  const placed = before.unplaced === true && now.unplaced === undefined;
  const typed = before.type === undefined && now.type !== undefined;
  if (!placed && !typed) return undefined;
  const { unplaced: _, ...rest } = before;
  const { clause, line, paragraph, items } = now;
  return {
    ...(placed ? rest : before),
    ...(placed
      ? { items, ...(clause ? { clause } : {}), ...(line ? { line } : {}), ...(paragraph ? { paragraph } : {}) }
      : {}),
    ...(typed ? { type: now.type! } : {}),
  };
}

function onlyOne<T>(list: readonly T[]): T | undefined {
  return list.length === 1 ? list[0] : undefined;
}

function twice(form: FormComment, before: FormComment): Finding {
  const other = before.file === form.file ? before.where : `${before.where} of ${before.file}`;
  return {
    rule: 'comment-twice',
    severity: 'warning',
    subject: form.file,
    message: `${form.where} says the same as ${other.slice(0, 1).toLowerCase()}${other.slice(1)}; it is kept once.`,
    place: { file: form.file },
  };
}
