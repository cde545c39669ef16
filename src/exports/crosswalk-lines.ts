import { isPair, type PairLink } from '../content/links/marks.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { groupIntoRows } from '../crosswalk/rows.ts';
import type { AppliesTo, Basis, Duty, Extent, Fate, Link, Marks, Wording } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';

/**
 * One line of a crosswalk as it is published: a link with both its ends. An empty side stands for withdrawn, new or
 * unaccounted. `fate` is the old item's own, or `new`; never the fate of the row.
 */
export interface CrosswalkLine {
  readonly row: number;
  readonly fate: Fate;
  readonly from: Entry | undefined;
  readonly to: Entry | undefined;
  readonly fromExtent: Extent | '';
  readonly toExtent: Extent | '';
  readonly renumbered: boolean | undefined;
  readonly moved: boolean | undefined;
  readonly wording: Wording | '';
  readonly duty: Duty | '';
  readonly appliesTo: AppliesTo | '';
  readonly dutyByType: Marks['dutyByType'];
  readonly evidence: Marks['evidence'];
  readonly basis: Basis | '';
  readonly confidence: number | undefined;
  readonly reason: string;
  readonly note: string;
  readonly link: Link | undefined;
}

/** The lines of a crosswalk, in the order of the older edition; new items last, in the order of the newer one. */
export function crosswalkLines(joint: Joint, marks: (link: PairLink) => Marks): CrosswalkLine[] {
  const lines: CrosswalkLine[] = [];
  for (const row of groupIntoRows(joint.crosswalk, joint.from.entries, joint.to.entries)) {
    if (row.links.length === 0) {
      for (const id of row.from) lines.push(gapLine(row.number, joint.old.get(id)!));
    }
    // Over several steps an item may have come in partly on the way: it has sources, and a line "new" would deny them.
    const told = row.links.filter(l => l.from !== null || joint.fateOfNew(l.to!) === 'new');
    const ordered = told.sort((a, b) => place(joint, a) - place(joint, b));
    for (const link of ordered) lines.push(linkLine(row.number, joint, link, marks));
  }
  return lines;
}

const orders = new WeakMap<Joint, { old: Map<string, number>; new: Map<string, number> }>();

/** Sorts links by their old item, then by their new one. */
function place(joint: Joint, link: Link): number {
  let order = orders.get(joint);
  if (!order) {
    order = {
      old: new Map(joint.from.entries.map((e, at) => [e.id, at])),
      new: new Map(joint.to.entries.map((e, at) => [e.id, at])),
    };
    orders.set(joint, order);
  }
  const size = joint.to.entries.length + 1;
  const from = link.from === null ? joint.from.entries.length : order.old.get(link.from)!;
  return from * size + (link.to === null ? size - 1 : order.new.get(link.to)!);
}

const NO_MARKS = {
  renumbered: undefined,
  moved: undefined,
  wording: '',
  duty: '',
  appliesTo: '',
  dutyByType: [],
  evidence: [],
} as const;

function gapLine(row: number, from: Entry): CrosswalkLine {
  return {
    row,
    fate: 'unaccounted',
    from,
    to: undefined,
    fromExtent: '',
    toExtent: '',
    ...NO_MARKS,
    basis: '',
    confidence: undefined,
    reason: '',
    note: 'No record says what became of it.',
    link: undefined,
  };
}

function linkLine(row: number, joint: Joint, link: Link, marks: (link: PairLink) => Marks): CrosswalkLine {
  return {
    row,
    fate: link.from === null ? 'new' : joint.fateOfOld(link.from),
    from: link.from === null ? undefined : joint.old.get(link.from),
    to: link.to === null ? undefined : joint.new.get(link.to),
    fromExtent: link.from === null ? '' : link.fromExtent,
    toExtent: link.to === null ? '' : link.toExtent,
    ...(isPair(link) ? marks(link) : NO_MARKS),
    basis: link.basis,
    confidence: link.confidence,
    reason: link.reason ?? '',
    note: noteOf(joint, link),
    link,
  };
}

/** The note with what else a reader has to know: what governs now, where to look, what is in doubt. */
export function noteOf(joint: Joint, link: Link): string {
  const pointed = link.pointsTo === undefined ? undefined : joint.new.get(link.pointsTo);
  return [
    link.note,
    link.types && `Ends for ${link.types.join(', ')} only.`,
    link.governs && `Now governed by ${link.governs}.`,
    pointed && `See ${pointed.number} ${pointed.title}.`,
    link.decision && `Decision: ${link.decision}.`,
    link.doubtful && 'This pair may be false: it passes through a merge that was split again.',
  ]
    .filter(Boolean)
    .join(' ');
}
