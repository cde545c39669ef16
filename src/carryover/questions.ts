import type { Joint } from '../crosswalk/joint.ts';
import type { Outcome } from '../model/citation.ts';
import type { TypeId } from '../model/item.ts';
import type { Decisions } from './decisions.ts';
import { isSpoiled } from './unknown.ts';

/** The columns of a questionnaire, about jobs as about texts; a person fills in the last four. */
export const QUESTION_COLUMNS = [
  'lines',
  'number',
  'type',
  'state',
  'edition',
  'title_beside',
  'question',
  'to_do',
  'heirs',
  'asked_on',
  'answer',
  'heir',
  'because',
  'by',
] as const;

/** Whose lines, or places in texts, a decision is for. */
export interface CaseKey {
  readonly number: string;
  readonly type: TypeId | undefined;
  readonly state: string;
  readonly edition: string;
  /** The title that stands beside the number, where it names an item. */
  readonly title: string | undefined;
}

/** A case as a person is asked about it. */
export interface Question extends CaseKey {
  /** The outcome before any decision. */
  readonly outcome: Outcome;
  readonly askedOn: string;
  readonly lines: number;
}

/** Whether a person is asked about an outcome at all: what is certain needs no answer, and a sum has none. */
export function isQuestion({ kind, cause }: Outcome): boolean {
  if (cause === 'total') return false;
  return kind === 'choose' || kind === 'unknown' || kind === 'withdrawn';
}

/** The questions with the most lines first; the rest by their cells, for in a database cases are met in another order. */
export function largestFirst(questions: readonly Question[]): readonly Question[] {
  const all = questions.map(q => ({ q, by: [q.number, q.type ?? '', q.edition, q.title ?? '', q.askedOn] }));
  all.sort((a, b) => b.q.lines - a.q.lines || firstDifference(a.by, b.by));
  return all.map(({ q }) => q);
}

function firstDifference(a: readonly string[], b: readonly string[]): number {
  const at = a.findIndex((cell, n) => cell !== b[n]);
  return at < 0 ? 0 : a[at]! < b[at]! ? -1 : 1;
}

/** The questions of a run, those with the most lines first; answers that still hold stand in them. */
export function questionRows(questions: readonly Question[], given?: Decisions): (string | number)[][] {
  return questions.map(q => {
    const before = given?.known(q);
    const still = before?.askedOn === q.askedOn ? before : undefined;
    const heirs = q.outcome.heirs.map(h => `${h.number} ${h.title}`.trim()).join(' | ');
    const all = isSpoiled(q.outcome) ? ` An answer here decides all lines that say ${q.number} alike.` : '';
    const toDo = `${q.outcome.toDo ?? ''}${all}`;
    return [
      ...[q.lines, q.number, q.type ?? '', q.state, q.edition, q.title ?? '', q.outcome.why, toDo],
      ...[heirs, q.askedOn],
      ...[still?.answer ?? '', still?.heirs.join(' | ') ?? '', still?.because ?? '', still?.by ?? ''],
    ];
  });
}

/**
 * What a question was asked on: the words of the old item and of its heirs, and how the case came out. Where any of it
 * changes, an answer given before is asked for again.
 */
export function askedOn(joint: Joint, outcome: Outcome): string {
  const from = outcome.from === undefined ? undefined : joint.old.get(outcome.from);
  const heirs = outcome.heirs.map(h => [h.id, joint.new.get(h.id)?.hash ?? '']);
  return shortHash(JSON.stringify([outcome.kind, outcome.cause, from?.hash ?? '', heirs]));
}

/** FNV-1a over 64 bits: enough to see a change, and short enough for a cell. */
function shortHash(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) {
    hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * 0x100000001b3n);
  }
  return hash.toString(16).padStart(16, '0');
}
