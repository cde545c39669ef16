import type { Joint } from '../crosswalk/joint.ts';
import type { Outcome } from '../model/citation.ts';
import type { Finding } from '../model/finding.ts';
import type { TypeId } from '../model/item.ts';
import { JOB_VERDICTS, type JobAnswer, type JobVerdict } from '../model/job-answer.ts';
import type { Table, TableRow } from '../model/table.ts';
import { listed } from './sentences.ts';

/** The columns of a questionnaire; a person fills in the last four. */
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

/** A person's answer for all lines of a case. */
export interface JobDecision {
  readonly answer: JobVerdict;
  /** Numbers of the newer edition, for `carry`. */
  readonly heirs: readonly string[];
  readonly because: string;
  readonly by: string;
  /** Mark of the texts and heirs that the question was asked on. */
  readonly askedOn: string;
  /** Of the questionnaire; 0 where the catalog keeps the answer. */
  readonly line: number;
}

/** Whose lines a decision is for. */
export interface CaseKey {
  readonly number: string;
  readonly type: TypeId | undefined;
  readonly state: string;
  readonly edition: string;
  /** The title that stands beside the number, where it names an item. */
  readonly title: string | undefined;
}

/** A case as a person is asked about it. */
export interface JobQuestion extends CaseKey {
  /** The outcome before any decision. */
  readonly outcome: Outcome;
  readonly askedOn: string;
  readonly lines: number;
}

/** Whether a person is asked about a case at all: what is certain needs no answer, what is finished stays. */
export function isQuestion(state: string, outcome: Outcome): boolean {
  return state === 'open' && (outcome.kind === 'choose' || outcome.kind === 'unknown' || outcome.kind === 'withdrawn');
}

/** The questions of a run, those with the most lines first; answers that still hold stand in them. */
export function questionRows(questions: readonly JobQuestion[], given?: Decisions): (string | number)[][] {
  return questions.map(q => {
    const before = given?.known(q);
    const still = before?.askedOn === q.askedOn ? before : undefined;
    const heirs = q.outcome.heirs.map(h => `${h.number} ${h.title}`.trim()).join(' | ');
    return [
      ...[q.lines, q.number, q.type ?? '', q.state, q.edition, q.title ?? '', q.outcome.why, q.outcome.toDo ?? ''],
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

/** A questionnaire that came back filled in, and the answers that the catalog keeps; the questionnaire's are the later. */
export class Decisions {
  readonly #byCase = new Map<string, JobDecision>();
  readonly #cases = new Map<string, CaseKey>();
  readonly #used = new Map<string, 'used' | 'changed' | 'useless'>();
  readonly #file: string;
  readonly #findings: Finding[] = [];

  constructor(table: Table | undefined, kept: readonly JobAnswer[] = []) {
    for (const answer of kept) this.#put(caseOf(answer), { ...answer, answer: answer.verdict, line: 0 });
    this.#file = table?.file ?? 'the answers in the catalog';
    if (!table) return;
    const lacking = ['number', 'answer'].filter(name => !table.columns.includes(name));
    if (lacking.length > 0) {
      this.#say(
        1,
        'decision',
        `${table.file} has no column ${lacking.join(' and no column ')}, so no answer in it counts.`,
      );
      return;
    }
    for (const row of table.rows) this.#take(row);
  }

  #take(row: TableRow): void {
    const cell = (name: (typeof QUESTION_COLUMNS)[number]) =>
      row.cells
        .get(name)
        ?.replace(/^'(?=[=+\-@])/, '')
        .trim() ?? '';
    const answer = cell('answer').toLowerCase();
    if (answer === '' || answer === 'ask') return;
    const known = JOB_VERDICTS.find(a => a === answer);
    if (!known) {
      this.#say(row.line, 'decision', `${answer} is no answer; write ${listed(JOB_VERDICTS, 'or')}.`);
      return;
    }
    const decision: JobDecision = {
      answer: known,
      heirs: cell('heir')
        .split('|')
        .map(h => h.trim())
        .filter(h => h !== ''),
      because: cell('because'),
      by: cell('by'),
      askedOn: cell('asked_on'),
      line: row.line,
    };
    if (decision.by === '') {
      this.#say(row.line, 'decision', `The answer for ${cell('number')} has no name under by; fill it in.`);
      return;
    }
    const found = {
      number: cell('number'),
      type: cell('type') || undefined,
      state: cell('state') || 'open',
      edition: cell('edition'),
      title: cell('title_beside') || undefined,
    };
    if (this.known(found)?.line)
      this.#say(row.line, 'decision', `${cell('number')} is answered twice; the last answer counts.`);
    this.#put(found, decision);
  }

  #put(found: CaseKey, decision: JobDecision): void {
    this.#byCase.set(keyOf(found), decision);
    this.#cases.set(keyOf(found), found);
  }

  known(found: CaseKey): JobDecision | undefined {
    return this.#byCase.get(keyOf(found));
  }

  /** The outcome of a case as a person decided it; as it was, where nobody did or where the question has changed. */
  apply(joint: Joint, found: CaseKey, outcome: Outcome): Outcome {
    const key = keyOf(found);
    const decision = this.#byCase.get(key);
    if (!decision) return outcome;
    if (decision.askedOn !== askedOn(joint, outcome)) {
      if (!this.#used.has(key)) {
        this.#used.set(key, 'changed');
        const message = `What ${found.number} was decided on has changed since; it is asked again.`;
        this.#say(decision.line, 'decision-asked-again', message);
      }
      return outcome;
    }
    const first = !this.#used.has(key);
    this.#used.set(key, 'used');
    const decided = `Decided by ${decision.by}${decision.because === '' ? '' : `: ${decision.because}`}.`;
    if (decision.answer !== 'carry') {
      const [kind, toDo] =
        decision.answer === 'stay'
          ? (['kept', `Leave this line as it stands under edition ${found.edition}.`] as const)
          : (['withdrawn', 'Take this line out of the job.'] as const);
      return {
        ...outcome,
        kind,
        cause: 'decided',
        heirs: decision.answer === 'stay' ? outcome.heirs : [],
        why: decided,
        toDo,
      };
    }
    const wanted = decision.heirs.length > 0 ? decision.heirs : outcome.heirs.map(h => h.number);
    const heirs = wanted.map(number => joint.new.withNumber(number));
    const lost = wanted.filter((_, at) => heirs[at]!.length !== 1);
    if (wanted.length === 0 || lost.length > 0) {
      const message =
        wanted.length === 0
          ? `${found.number} is to be carried, but nothing stands under heir; write the number.`
          : `${lost.join(', ')} names nothing, or not one thing, in ${joint.to.header.name}; correct heir.`;
      if (first) this.#say(decision.line, 'decision', message);
      this.#used.set(key, 'useless');
      return outcome;
    }
    return {
      ...outcome,
      kind: 'carried',
      cause: 'decided',
      heirs: heirs.map(([h]) => ({ id: h!.id, number: h!.number, title: h!.title })),
      why: decided,
      toDo: `Cite ${listed(wanted)} from now on.`,
    };
  }

  /** Answers that could not be used, and those whose case no line of the table has. */
  findings(): readonly Finding[] {
    // What the catalog keeps is about all tables of an agency, and need not occur in each.
    const idle = [...this.#byCase].filter(([key, { line }]) => line > 0 && !this.#used.has(key));
    return [
      ...this.#findings,
      ...idle.map(([key, { line }]) => {
        const [number] = JSON.parse(key) as [string];
        return this.#finding(line, 'decision-without-lines', `No line of the table is what ${number} was decided for.`);
      }),
    ];
  }

  /** The answers of the questionnaire that were of use, to be kept for later runs between the same editions. */
  toKeep({ from, to }: { readonly from: string; readonly to: string }): readonly Omit<JobAnswer, 'date'>[] {
    const used = [...this.#byCase].filter(([key, { line }]) => line > 0 && this.#used.get(key) === 'used');
    return used.map(([key, { answer, heirs, because, by, askedOn: on }]) => {
      const { number, type, state, edition, title } = this.#cases.get(key)!;
      const about = { from, to, number, state, edition, ...(type ? { type } : {}), ...(title ? { title } : {}) };
      return { ...about, verdict: answer, heirs, because, by, askedOn: on };
    });
  }

  #say(line: number, rule: string, message: string): void {
    this.#findings.push(this.#finding(line, rule, message));
  }

  #finding(line: number, rule: string, message: string): Finding {
    const place = line > 0 ? { place: { file: this.#file, line } } : {};
    return { rule, severity: 'warning', subject: this.#file, message, ...place };
  }
}

function keyOf({ number, type, state, edition, title }: CaseKey): string {
  return JSON.stringify([number, type ?? '', state, edition, title ?? '']);
}

function caseOf({ number, type, state, edition, title }: JobAnswer): CaseKey {
  return { number, type, state, edition, title };
}
