import type { Joint } from '../../crosswalk/joint.ts';
import { isPair } from '../../crosswalk/pair-link.ts';
import type { Duty } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import { groupBy } from '../../model/group-by.ts';
import type { MarksOf } from '../resolve.ts';
import { called, typeNames } from '../sentences.ts';

/** An item of the older edition that a lesson teaches: it cites it beyond doubt, or tells it in its own words. */
export interface Taught {
  readonly lesson: string;
  readonly id: string;
  readonly how: TaughtHow;
}

/** `part`: a part is cited as a whole, which says nothing of what in it is taught. */
export type TaughtHow = 'cited' | 'told' | 'part';

/**
 * What a trainer does about one requirement. `keep-law`: gone from the catalog, still due under what governs instead.
 * `person`: its record is missing. `mentioned`: it goes on, and lessons cite its whole part and nothing nearer to it.
 */
export type ToTeach = 'keep' | 'reopen' | 'teach' | 'drop' | 'keep-law' | 'person' | 'mentioned';

/** One requirement in its lessons: an old one that is taught, with an heir each, or a new one that nobody teaches. */
export interface CoverageLine {
  readonly lessons: readonly string[];
  /** `told`: no lesson cites it, only words tell it. Absent where nobody teaches or mentions it. */
  readonly how: TaughtHow | undefined;
  readonly from: Entry | undefined;
  readonly to: Entry | undefined;
  readonly toDo: ToTeach;
  readonly duty: Duty | undefined;
  readonly why: string;
}

/**
 * Lessons against requirements, before and after. A citation of a work item teaches what stands in it; one of a whole part
 * ("See Part 3") only mentions it, but what is gone is told all the same: a lesson that points there points at it.
 */
export function coverageOf(joint: Joint, marks: MarksOf, taught: readonly Taught[]): readonly CoverageLine[] {
  const lessons = lessonsById(joint, taught);
  const covered = new Set<string>();
  const lines: CoverageLine[] = [];
  const mentioned: CoverageLine[] = [];
  for (const from of joint.from.entries.filter(e => e.obliges)) {
    const known = lessons.get(from.id);
    if (!known) continue;
    const here = known.lessons;
    const { how } = known;
    const leaving = joint.leaving(from.id);
    const wholePart = how === 'part' ? `cited is the whole of ${called(known.part!)}` : '';
    for (const link of leaving.filter(isPair)) {
      const to = joint.new.get(link.to)!;
      if (wholePart) {
        mentioned.push({ lessons: here, how, from, to, toDo: 'mentioned', duty: undefined, why: wholePart });
        continue;
      }
      covered.add(to.id);
      const { duty } = marks(link);
      const toDo = duty === 'same' ? 'keep' : 'reopen';
      lines.push({ lessons: here, how, from, to, toDo, duty, why: duty === 'same' ? 'asks the same' : `duty ${duty}` });
    }
    const butOf = wholePart && `; ${wholePart}`;
    for (const link of leaving.filter(l => l.to === null)) {
      const toDo = link.governs === undefined ? 'drop' : 'keep-law';
      const where = link.types ? ` for ${typeNames(joint, link.types)}` : '';
      const why =
        link.governs === undefined
          ? `withdrawn${where}: ${link.reason ?? 'no reason given'}`
          : `keep teaching${where}, due under ${link.governs}`;
      lines.push({ lessons: here, how, from, to: undefined, toDo, duty: undefined, why: why + butOf });
    }
    if (leaving.length === 0) {
      lines.push({
        lessons: here,
        how,
        from,
        to: undefined,
        toDo: 'person',
        duty: undefined,
        why: `no record says what became of it${butOf}`,
      });
    }
  }
  // What is taught under another number needs no second line.
  lines.push(...mentioned.filter(l => !covered.has(l.to!.id)));
  for (const { to } of mentioned) covered.add(to!.id);
  for (const to of joint.to.entries.filter(e => e.obliges && !covered.has(e.id))) {
    const isNew = joint.arriving(to.id).every(l => l.from === null);
    const why = isNew ? 'new, and nobody teaches it' : 'nobody taught it before either';
    lines.push({ lessons: [], how: undefined, from: undefined, to, toDo: 'teach', duty: undefined, why });
  }
  return lines;
}

function lessonsById({ from, old }: Joint, taught: readonly Taught[]) {
  const direct = groupBy(taught, t => t.id);
  const all = new Map<string, TaughtIn>();
  const put = (id: string, how: TaughtHow, found: readonly Taught[], part?: Entry) =>
    all.set(id, { lessons: [...new Set(found.map(t => t.lesson))].sort(), how, ...(part ? { part } : {}) });
  for (const entry of from.entries) {
    const above = old.ancestors(entry.id);
    // Directly above a requirement stands its work item, unless there are but two levels: then it is a part.
    const near = above.filter(e => e.id === entry.parent && e.parent !== null);
    const found = [entry, ...near].flatMap(e => direct.get(e.id) ?? []);
    const part = above.find(e => direct.has(e.id));
    if (found.length > 0) put(entry.id, found.some(t => t.how === 'cited') ? 'cited' : 'told', found);
    else if (part) put(entry.id, 'part', direct.get(part.id)!, part);
  }
  return all;
}

interface TaughtIn {
  readonly lessons: readonly string[];
  readonly how: TaughtHow;
  /** Where no more than its part is cited. */
  readonly part?: Entry;
}
