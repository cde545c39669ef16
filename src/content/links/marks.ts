import type { Joint } from '../../crosswalk/joint.ts';
import type { PairLink } from '../../crosswalk/pair-link.ts';
import type { AppliesTo, Duty, Marks } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import type { Item, ItemId, TypeId } from '../../model/item.ts';
import type { DutyVerdict } from '../duty/compare-duty.ts';
import { compareWording } from '../wording/wording.ts';
import { dutyAlong } from './duty-along.ts';

export { isPair, type PairLink } from '../../crosswalk/pair-link.ts';

/** Where the words of the items come from; only those whose content hash differs are ever asked for. */
export interface Texts {
  from(id: ItemId): Item | undefined;
  to(id: ItemId): Item | undefined;
}

/** What changed along one link. Duty is judged per installation type: a merge may tighten one and leave two alone. */
export function marksOf(joint: Joint, link: PairLink, texts: Texts): Marks {
  const from = joint.old.get(link.from)!;
  const to = joint.new.get(link.to)!;
  const before = joint.old.types(link.from);
  const after = joint.new.types(link.to);
  const wording = from.hash === to.hash ? 'same' : wordingOf(texts.from(link.from), texts.to(link.to));
  const appliesTo = compareTypes(before, after);
  const verdictFor = (type: TypeId | undefined): DutyVerdict =>
    wording === 'substantive' ? inOneLine(dutyAlong(joint, link, type, texts)) : { duty: 'same', evidence: [] };
  const verdicts = before.map(type => ({ type, verdict: after.includes(type) ? verdictFor(type) : undefined }));
  const whole = before.length === 0 ? verdictFor(undefined) : undefined;
  const dutyByType = verdicts.map(({ type, verdict }) => ({ type, duty: verdict?.duty ?? ('ends' as const) }));
  return {
    renumbered: from.number !== to.number,
    moved: hasMoved(joint, link),
    wording,
    duty: whole?.duty ?? gravest(dutyByType.map(d => d.duty)),
    appliesTo,
    dutyByType,
    evidence: whole ? whole.evidence.map(e => ({ ...e, types: [] })) : evidenceByType(verdicts),
  };
}

/** Words of two items that went together, or of two paragraphs, have a line's end between them, which tears tables apart. */
function inOneLine({ duty, evidence }: DutyVerdict): DutyVerdict {
  const line = (words: string) => words.replace(/\s+/g, ' ').trim();
  return { duty, evidence: evidence.map(e => ({ ...e, from: line(e.from), to: line(e.to) })) };
}

/** What holds for several types is told once, with all of them. */
function evidenceByType(verdicts: readonly { readonly type: TypeId; readonly verdict: DutyVerdict | undefined }[]) {
  const told = new Map<string, Marks['evidence'][number]>();
  for (const { type, verdict } of verdicts) {
    for (const { direction, what, from, to } of verdict?.evidence ?? []) {
      const key = JSON.stringify([direction, what, from, to]);
      told.set(key, { direction, what, from, to, types: [...new Set([...(told.get(key)?.types ?? []), type])] });
    }
  }
  return [...told.values()];
}

/**
 * One word for all types that the old item had and that go on. Which came, and which ended, is said by `appliesTo`: new
 * types were asked nothing before, so they make nothing of what the others are asked unclear.
 */
function gravest(duties: readonly (Duty | 'ends')[]): Duty {
  const going = new Set(duties.filter(d => d !== 'ends'));
  if (going.has('unclear') || going.size === 0) return 'unclear';
  if (going.has('mixed') || (going.has('stricter') && going.has('relaxed'))) return 'mixed';
  return going.has('stricter') ? 'stricter' : going.has('relaxed') ? 'relaxed' : 'same';
}

function wordingOf(from: Item | undefined, to: Item | undefined) {
  if (!from || !to) throw new Error('the texts of a changed item were not read');
  return compareWording(from, to);
}

/**
 * An item has moved if one of its places is new or gone: a parent that is neither an old one nor an heir of an old one,
 * or an old one without such. Comparing parents alone would call every child of a merged or re-identified work item
 * moved; looking at the first place alone would hide that an item now also stands elsewhere.
 */
function hasMoved(joint: Joint, link: PairLink): boolean {
  const before = parentsOf(joint.old.get(link.from)!);
  const after = parentsOf(joint.new.get(link.to)!);
  const goesOn = (a: ItemId | null, b: ItemId | null) =>
    a === b || (a !== null && b !== null && joint.leaving(a).some(l => l.to === b));
  return before.some(a => !after.some(b => goesOn(a, b))) || after.some(b => !before.some(a => goesOn(a, b)));
}

function parentsOf({ parent, alsoAt = [] }: Entry): readonly (ItemId | null)[] {
  return [parent, ...alsoAt];
}

function compareTypes(before: readonly TypeId[], after: readonly TypeId[]): AppliesTo {
  const lost = before.some(t => !after.includes(t));
  const won = after.some(t => !before.includes(t));
  if (lost) return won ? 'shifted' : 'narrower';
  return won ? 'wider' : 'same';
}
