import type { Finding } from '../../model/finding.ts';
import type { TypeId } from '../../model/item.ts';
import type { Columns } from './columns.ts';

/** At most this many different words or jobs are named one by one; the rest are counted. */
const NAMED = 100;

/** Collects what there is to say about a job table while its lines go by. */
export class JobNotes {
  readonly #columns: Columns;
  readonly #types = new Map<string, number>();
  readonly #states = new Map<string, number>();
  readonly #jobs: { job: string; record: number }[] = [];
  #returned = 0;

  constructor(columns: Columns) {
    this.#columns = columns;
  }

  /** Notes words for a type or a state that are on no list; says whether there was one. */
  strange(
    typeCell: string,
    type: TypeId | undefined,
    stateCell: string,
    state: string | undefined,
    lines = 1,
  ): boolean {
    const strangeType = typeCell.trim() !== '' && type === undefined;
    const strangeState = stateCell.trim() !== '' && state === undefined;
    if (strangeType) count(this.#types, typeCell.trim(), lines);
    if (strangeState) count(this.#states, stateCell.trim(), lines);
    return strangeType || strangeState;
  }

  /** A job that had ended comes again. `record` counts the table's records from 1, without the header. */
  returned(job: string, record: number): void {
    this.#returned++;
    if (this.#jobs.length < NAMED) this.#jobs.push({ job, record });
  }

  findings(): readonly Finding[] {
    const findings: Finding[] = [];
    const missing = (role: 'job' | 'type' | 'state', means: string) => {
      if (this.#columns[role]) return;
      const message = `No column with the ${role} was found, so ${means}; if there is one, name it: --column ${role}=HEADER on the command line, “Read it differently” on the page.`;
      findings.push({ rule: `no-${role}-column`, severity: 'note', subject: role, message });
    };
    missing('job', 'no line is folded into another and no line is added');
    missing('type', 'each number is answered for all installation types at once');
    missing('state', 'every line is taken for open, finished ones too');
    for (const [word, lines] of this.#types) {
      const message = `"${word}" is no installation type of either edition; ${lines} lines are answered for all types.`;
      findings.push({ rule: 'unknown-type', severity: 'warning', subject: word, message, data: { lines } });
    }
    for (const [word, lines] of this.#states) {
      const message = `"${word}" is no state that is known; ${lines} lines with it are taken for open. If it means finished, run again with --state-name "${word}=done".`;
      findings.push({ rule: 'unknown-state', severity: 'warning', subject: word, message, data: { lines } });
    }
    for (const { job, record } of this.#jobs) {
      const message = `Job ${job} comes back in record ${record} after other jobs; its parts are folded each for itself. Sort the table by job to join them.`;
      findings.push({ rule: 'job-returns', severity: 'warning', subject: job, message, data: { record } });
    }
    const more = this.#returned - this.#jobs.length;
    if (more > 0) {
      const message = `Jobs come back ${more} more times after other jobs.`;
      findings.push({ rule: 'job-returns', severity: 'warning', subject: 'jobs', message, data: { more } });
    }
    return findings;
  }
}

function count(words: Map<string, number>, word: string, lines: number): void {
  const short = word.slice(0, 60);
  const key = words.has(short) || words.size < NAMED ? short : '(others)';
  words.set(key, (words.get(key) ?? 0) + lines);
}
