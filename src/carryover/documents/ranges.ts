import type { Joint } from '../../crosswalk/joint.ts';
import type { Outcome } from '../../model/citation.ts';
import type { Entry } from '../../model/edition.ts';
import { type CitedNumber, type MarksOf, resolveCitation } from '../resolve.ts';

/** What happens to a range, and the numbers that take its ends' places where it is carried. */
export interface RangeOutcome {
  readonly outcome: Outcome;
  readonly first?: string;
  readonly last?: string;
}

/**
 * What happens to "3.2.1 to 3.2.4". It is carried or kept only if each member is, and if the heirs again stand one
 * after the other under one parent: otherwise the new range would take in a stranger, or leave one of its own out.
 */
export function resolveRange(joint: Joint, marks: MarksOf, cited: CitedNumber, last: string): RangeOutcome {
  const said = `${cited.number} to ${last}`;
  const ends = [cited.number, last].map(number => resolveCitation(joint, marks, { ...cited, number }));
  const unknown = ends.find(o => o.kind === 'unknown');
  if (unknown) return { outcome: unknown };
  const choose = (why: string, heirs: Outcome['heirs']): RangeOutcome => ({
    outcome: {
      kind: 'choose',
      cause: 'range',
      heirs,
      why,
      toDo: `Write out the numbers that ${said} means in ${joint.to.header.name}.`,
    },
  });

  const members = between(joint.old.withNumber(cited.number), joint.old.withNumber(last), id => joint.old.children(id));
  if (!members) return choose(`${said} is not a row of items under one heading of ${joint.from.header.name}.`, []);
  const outcomes = members.map(m => resolveCitation(joint, marks, { ...cited, number: m.number }));
  const heirs = outcomes.flatMap(o => o.heirs);
  const obstacle = outcomes.find(o => o.kind !== 'kept' && o.kind !== 'carried');
  if (obstacle) return choose(`Not every item from ${said} can be carried: ${obstacle.why}`, heirs);

  const carried = heirs.map(h => joint.new.get(h.id)!);
  const row = between(carried.slice(0, 1), carried.slice(-1), id => joint.new.children(id));
  const again = row?.length === carried.length && row.every((item, at) => item.id === carried[at]!.id);
  if (!again) return choose(`The items from ${said} do not stand in one row in ${joint.to.header.name}.`, heirs);
  const [first, end] = [carried[0]!.number, carried.at(-1)!.number];
  const kept = first === cited.number && end === last;
  const outcome: Outcome = kept
    ? { kind: 'kept', cause: 'same-number', heirs, why: `${said} is the same row in ${joint.to.header.name}.` }
    : { kind: 'carried', cause: 'sole-heir', heirs, why: `${said} is ${first} to ${end} in ${joint.to.header.name}.` };
  return { outcome, first, last: end };
}

/** The siblings from one item to another, both included; undefined where they are no such row. */
function between(
  from: readonly Entry[],
  to: readonly Entry[],
  children: (parent: string | null) => readonly Entry[],
): readonly Entry[] | undefined {
  const [first, last] = [from[0], to[0]];
  if (!first || !last || from.length > 1 || to.length > 1 || first.parent !== last.parent) return undefined;
  const row = children(first.parent);
  const start = row.findIndex(e => e.id === first.id);
  const end = row.findIndex(e => e.id === last.id);
  return start >= 0 && end >= start ? row.slice(start, end + 1) : undefined;
}
