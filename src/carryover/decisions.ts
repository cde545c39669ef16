import type { Joint } from '../crosswalk/joint.ts';
import type { Outcome } from '../model/citation.ts';
import type { Finding } from '../model/finding.ts';
import { JOB_VERDICTS, type JobAnswer, type JobVerdict } from '../model/job-answer.ts';
import type { Table, TableRow } from '../model/table.ts';
import { newBearers } from './number-bearers.ts';
import { askedOn, type CaseKey, type QUESTION_COLUMNS } from './questions.ts';
import { listed } from './sentences.ts';
import { isSpoiled } from './unknown.ts';

/** A person's answer for all lines or places of a case. */
export interface Decision {
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

/** What answers mean where they are used: for lines of jobs, or for places in texts. */
export interface AnswerWords {
  stay(edition: string): string;
  readonly drop: string;
  /** An answer that nothing was asked for. */
  idle(number: string): string;
}

const OF_JOBS: AnswerWords = {
  stay: edition => `Leave this line as it stands under edition ${edition}.`,
  drop: 'Take this line out of the job.',
  idle: number => `No line of the table is what ${number} was decided for.`,
};

/** A questionnaire that came back filled in, and the answers that the catalog keeps; the questionnaire's are the later. */
export class Decisions {
  readonly #byCase = new Map<string, Decision>();
  readonly #cases = new Map<string, CaseKey>();
  readonly #used = new Map<string, 'used' | 'changed' | 'useless'>();
  /** Answers about what stood in this table's original order, which say nothing of another table. */
  readonly #ofTable = new Set<string>();
  readonly #file: string;
  readonly #findings: Finding[] = [];
  readonly #words: AnswerWords;

  constructor(table: Table | undefined, kept: readonly JobAnswer[] = [], words = OF_JOBS) {
    this.#words = words;
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
    const decision: Decision = {
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

  #put(found: CaseKey, decision: Decision): void {
    this.#byCase.set(keyOf(found), decision);
    this.#cases.set(keyOf(found), found);
  }

  known(found: CaseKey): Decision | undefined {
    return this.#byCase.get(keyOf(found));
  }

  /** The outcome of a case as a person decided it; as it was, where nobody did or where the question has changed. */
  apply(joint: Joint, found: CaseKey, outcome: Outcome): Outcome {
    const key = keyOf(found);
    const decision = this.#byCase.get(key);
    const spoiled = isSpoiled(outcome);
    if (!decision || (spoiled && decision.line === 0)) return outcome;
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
    const because = decision.because === '' ? '' : `: ${decision.because}`;
    const decided = spoiled
      ? `Decided by ${decision.by} for all lines like this one${because}. ${outcome.why}`
      : `Decided by ${decision.by}${because}.`;
    const tell = () => {
      if (!spoiled || !first) return;
      this.#ofTable.add(key);
      const message = `All lines that say ${found.number} are decided alike, for this table only. ${outcome.why} Where the original order does not say the same on each of them, enter the numbers as text.`;
      this.#findings.push({ ...this.#finding(decision.line, 'decision-for-all', message), severity: 'note' });
    };
    if (decision.answer !== 'carry') {
      const [kind, toDo] =
        decision.answer === 'stay'
          ? (['kept', this.#words.stay(found.edition)] as const)
          : (['withdrawn', this.#words.drop] as const);
      tell();
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
    const heirs = wanted.map(number => newBearers(joint, number, outcome.type));
    const lost = wanted.filter((_, at) => heirs[at]!.length !== 1);
    if (wanted.length === 0 || lost.length > 0) {
      const message =
        wanted.length === 0
          ? `${found.number} is to be carried, but nothing stands under heir; write the number.`
          : `${lost.map(n => n || 'An heir without a number').join(', ')} names nothing, or not one thing, in ${joint.to.header.name}; correct heir.`;
      if (first) this.#say(decision.line, 'decision', message);
      this.#used.set(key, 'useless');
      return outcome;
    }
    tell();
    return {
      ...outcome,
      kind: 'carried',
      cause: 'decided',
      heirs: heirs.map(([h]) => ({ id: h!.id, number: h!.number, title: h!.title })),
      why: decided,
      toDo: `Cite ${listed(wanted)} from now on.`,
    };
  }

  /** The answer to a question that is about no item, unless it is asked anew by now. */
  answerTo(found: CaseKey, asked: string): Decision | undefined {
    const decision = this.#byCase.get(keyOf(found));
    if (decision?.askedOn !== asked) return undefined;
    this.#used.set(keyOf(found), 'used');
    return decision;
  }

  /** Answers that could not be used, and those whose case no line of the table has. */
  findings(): readonly Finding[] {
    // What the catalog keeps is about all tables of an agency, and need not occur in each.
    const idle = [...this.#byCase].filter(([key, { line }]) => line > 0 && !this.#used.has(key));
    return [
      ...this.#findings,
      ...idle.map(([key, { line }]) => {
        const [number] = JSON.parse(key) as [string];
        return this.#finding(line, 'decision-without-lines', this.#words.idle(number));
      }),
    ];
  }

  /** The answers of the questionnaire that were of use, to be kept for later runs between the same editions. */
  toKeep({ from, to }: { readonly from: string; readonly to: string }): readonly Omit<JobAnswer, 'date'>[] {
    const used = [...this.#byCase].filter(
      ([key, { line }]) => line > 0 && this.#used.get(key) === 'used' && !this.#ofTable.has(key),
    );
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
