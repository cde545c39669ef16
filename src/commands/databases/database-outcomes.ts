import { type AddedLine, addedLine } from '../../carryover/jobs/job-case.ts';
import type { KnownCase } from '../../carryover/jobs/job-cases.ts';
import type { Way } from '../../carryover/jobs/job-reader.ts';
import { newDutiesUnder } from '../../carryover/jobs/new-duties.ts';
import type { Value } from '../../databases/database.ts';
import { fillTable } from '../../databases/shape.ts';
import { itemKey } from '../../exports/data-package.ts';
import type { DatabaseRun } from './database-cases.ts';

/** Gives each outcome its number, and writes it with its heirs and with the work that it brings into a job. */
export class OutcomeWriter {
  readonly #run: DatabaseRun;
  readonly #numbers = new Map<KnownCase, number>();
  readonly #folds = new Map<string, number>();
  readonly #works = new Map<
    string,
    { readonly no: number; readonly way: Way; readonly duties: readonly AddedLine[]; readonly row: Value[] }
  >();
  readonly #groups = new Map<string, number>();
  #outcomes: Value[][] = [];
  #heirs: Value[][] = [];
  #outcomeWorks: [outcome: number, place: number, work: number][] = [];
  #duties: Value[][] = [];

  constructor(run: DatabaseRun) {
    this.#run = run;
  }

  number(known: KnownCase): number {
    const before = this.#numbers.get(known);
    if (before !== undefined) return before;
    const no = this.#numbers.size + 1;
    this.#numbers.set(known, no);
    const { way } = known;
    const { number, type, state, outcome, before: ours, after, foldKey, workItems } = known.case;
    const fold = foldKey === undefined ? undefined : numbered(this.#folds, foldKey);
    const [newNumber, newTitle, kind, why, toDo] = ours;
    const from = outcome.from === undefined ? undefined : itemKey(way.joint.from, outcome.from);
    const [readIn, carriedTo] = after;
    this.#outcomes.push([
      no,
      number,
      type,
      state,
      readIn,
      carriedTo,
      kind,
      outcome.cause,
      newNumber,
      newTitle,
      why,
      toDo,
      from,
      fold,
    ]);
    for (const [place, heir] of outcome.heirs.entries())
      this.#heirs.push([no, place + 1, itemKey(way.joint.to, heir.id)]);
    for (const [place, item] of workItems.entries())
      this.#outcomeWorks.push([no, place + 1, this.#work(way, item, type)]);
    return no;
  }

  /** A work item of one way and type; those of other ways with the same item and type stand for the same work of a job. */
  #work(way: Way, item: string, type: string | undefined): number {
    const { joint } = way;
    const group = JSON.stringify([item, type ?? null]);
    const key = JSON.stringify([joint.from.header.name, group]);
    const known = this.#works.get(key);
    if (known) return known.no;
    const no = this.#works.size + 1;
    const added = newDutiesUnder(joint, item, type);
    const duties = added.map(duty => addedLine(joint, '', type, '', duty));
    for (const [place, duty] of added.entries()) {
      const [newNumber, newTitle, kind, why, toDo] = duties[place]!.before;
      this.#duties.push([
        no,
        place + 1,
        itemKey(joint.to, duty.id),
        newNumber,
        newTitle,
        kind,
        why,
        toDo,
        ...duties[place]!.after,
      ]);
    }
    const row = [no, joint.from.header.name, itemKey(joint.to, item), type, numbered(this.#groups, group)];
    this.#works.set(key, { no, way, duties, row });
    return no;
  }

  /** Writes what came since the last time; before the cases that name it. */
  async flush(): Promise<void> {
    const { db, place, shapes } = this.#run;
    await fillTable(db, place, shapes.outcome, this.#outcomes);
    await fillTable(db, place, shapes.heir, this.#heirs);
    [this.#outcomes, this.#heirs] = [[], []];
  }

  /** The work: of a group in which no way brings anything new nothing is kept, or every line would be joined to it in vain. */
  async finish(): Promise<void> {
    const { db, place, shapes } = this.#run;
    const telling = new Set([...this.#works.values()].filter(w => w.duties.length > 0).map(w => w.row[4]));
    const works = [...this.#works.values()].filter(w => telling.has(w.row[4]));
    const kept = new Set(works.map(w => w.no));
    await fillTable(
      db,
      place,
      shapes.work,
      works.map(w => w.row),
    );
    await fillTable(
      db,
      place,
      shapes.outcomeWork,
      this.#outcomeWorks.filter(([, , work]) => kept.has(work)),
    );
    await fillTable(db, place, shapes.duty, this.#duties);
  }
}

function numbered(numbers: Map<string, number>, key: string): number {
  const no = numbers.get(key) ?? numbers.size + 1;
  numbers.set(key, no);
  return no;
}
