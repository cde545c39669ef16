import type { Joint } from '../../crosswalk/joint.ts';
import { isPair } from '../../crosswalk/pair-link.ts';
import type { Duty } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import { groupBy } from '../../model/group-by.ts';
import type { MarksOf } from '../resolve.ts';
import { typeNames } from '../sentences.ts';

/** An item of the older edition that a lesson teaches: it cites it beyond doubt, or tells it in its own words. */
export interface Taught {
  readonly lesson: string;
  readonly id: string;
  readonly how: TaughtHow;
}

export type TaughtHow = 'cited' | 'told';

/**
 * What a trainer does about one requirement. `keep-law`: gone from the catalog, still due under what governs instead.
 * `person`: its record is missing.
 */
export type ToTeach = 'keep' | 'reopen' | 'teach' | 'drop' | 'keep-law' | 'person';

/** One requirement in its lessons: an old one that is taught, with an heir each, or a new one that nobody teaches. */
export interface CoverageLine {
  readonly lessons: readonly string[];
  /** `told`: no lesson cites it, only words tell it. Absent where nobody teaches it. */
  readonly how: TaughtHow | undefined;
  readonly from: Entry | undefined;
  readonly to: Entry | undefined;
  readonly toDo: ToTeach;
  readonly duty: Duty | undefined;
  readonly why: string;
}

/**
 * Lessons against requirements, before and after. A citation of a whole part or work item teaches what stands in it.
 */
export function coverageOf(joint: Joint, marks: MarksOf, taught: readonly Taught[]): readonly CoverageLine[] {
  const lessons = lessonsById(joint, taught);
  const covered = new Set<string>();
  const lines: CoverageLine[] = [];
  for (const from of joint.from.entries.filter(e => e.obliges)) {
    const known = lessons.get(from.id);
    if (!known) continue;
    const here = known.lessons;
    const { how } = known;
    const leaving = joint.leaving(from.id);
    for (const link of leaving.filter(isPair)) {
      const to = joint.new.get(link.to)!;
      covered.add(to.id);
      const { duty } = marks(link);
      const toDo = duty === 'same' ? 'keep' : 'reopen';
      lines.push({ lessons: here, how, from, to, toDo, duty, why: duty === 'same' ? 'asks the same' : `duty ${duty}` });
    }
    for (const link of leaving.filter(l => l.to === null)) {
      const toDo = link.governs === undefined ? 'drop' : 'keep-law';
      const where = link.types ? ` for ${typeNames(joint, link.types)}` : '';
      const why =
        link.governs === undefined
          ? `withdrawn${where}: ${link.reason ?? 'no reason given'}`
          : `keep teaching${where}, due under ${link.governs}`;
      lines.push({ lessons: here, how, from, to: undefined, toDo, duty: undefined, why });
    }
    if (leaving.length === 0) {
      lines.push({
        lessons: here,
        how,
        from,
        to: undefined,
        toDo: 'person',
        duty: undefined,
        why: 'no record says what became of it',
      });
    }
  }
  for (const to of joint.to.entries.filter(e => e.obliges && !covered.has(e.id))) {
    const isNew = joint.arriving(to.id).every(l => l.from === null);
    const why = isNew ? 'new, and nobody teaches it' : 'nobody taught it before either';
    lines.push({ lessons: [], how: undefined, from: undefined, to, toDo: 'teach', duty: undefined, why });
  }
  return lines;
}

function lessonsById({ from, old }: Joint, taught: readonly Taught[]) {
  const direct = groupBy(taught, t => t.id);
  const all = new Map<string, { readonly lessons: readonly string[]; readonly how: TaughtHow }>();
  for (const entry of from.entries) {
    const found = [entry, ...old.ancestors(entry.id)].flatMap(e => direct.get(e.id) ?? []);
    if (found.length === 0) continue;
    const how = found.some(t => t.how === 'cited') ? 'cited' : 'told';
    all.set(entry.id, { lessons: [...new Set(found.map(t => t.lesson))].sort(), how });
  }
  return all;
}
