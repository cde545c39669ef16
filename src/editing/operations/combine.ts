import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId } from '../../model/item.ts';
import type { OperationOf, Wording } from '../../model/operation.ts';
import {
  type Doer,
  type DraftState,
  itemOf,
  nameOf,
  replaceItem,
  sourcesOf,
  typesOf,
  withoutAbsent,
} from '../draft-state.ts';
import { putIn, subtreeOf, without } from '../outline-edits.ts';
import { keepingTypes, withTypes } from '../own-types.ts';
import { changeRecords, noteOn, withNote } from '../records.ts';
import { repoint } from '../repoint.ts';

/**
 * Makes several items one. It applies to every installation type that one of them applied to, and says what each of
 * them said unless other words are given; what stood below the others stands below it. Where they said the same about
 * other types, children keep the types that they had.
 */
export function combine(state: DraftState, operation: OperationOf<'combine'>, doer: Doer): DraftState {
  const { into, to = {}, note } = operation;
  const ids = [...new Set([into, ...operation.ids])];
  const items = ids.map(id => itemOf(state, id));
  const [target, ...others] = items as [Item, ...Item[]];
  if (others.length === 0) {
    throw new CatalogError('BadArgument', `Only ${nameOf(target)} is named; it takes two items or more.`);
  }
  refuseNested(state, items);
  const types = new Set(ids.flatMap(id => typesOf(state, id)));
  const children = state.items.filter(i => i.parent !== null && ids.includes(i.parent)).map(i => i.id);

  let next = leadTo(state, ids, into, doer, note);
  next = keepingTypes(next, children, s => {
    let merged = s;
    for (const other of others) {
      const [, ...below] = subtreeOf(merged.items, other.id);
      const branches = below.filter(i => i.parent === other.id).map(i => subtreeOf(merged.items, i.id));
      merged = { ...merged, items: without(merged.items, [other, ...below]) };
      for (const branch of branches) merged = putIn(merged, branch, { under: into });
    }
    return withTypes(merged, into, [...types]);
  });
  next = replaceItem(next, into, item => withoutAbsent({ ...item, ...saidBy(items), ...to }));
  const gone = new Set(others.map(i => i.id));
  // Why a new item was written goes on being said of what it became part of.
  const notes = state.lineage.flatMap(r => (r.from === null && r.note && gone.has(r.heirs[0]!.to) ? [r.note] : []));
  return notes.reduce((s, said) => noteOn(s, into, doer, said), repoint(next, gone, into));
}

/** Every old item behind these now goes on in `into`, which is no longer all its own. */
function leadTo(
  state: DraftState,
  ids: readonly ItemId[],
  into: ItemId,
  doer: Doer,
  note: string | undefined,
): DraftState {
  const sources = [...new Set(ids.flatMap(id => sourcesOf(state, id)))];
  return changeRecords(state, sources, doer, record => {
    const mine = record.heirs.filter(h => ids.includes(h.to));
    const others = record.heirs.filter(h => !ids.includes(h.to));
    const whole = others.length === 0 && record.withdrawnFor === undefined;
    const fromExtent = whole ? 'all' : mine[0]!.fromExtent;
    return withNote({ ...record, heirs: [...others, { to: into, fromExtent, toExtent: 'part' }] }, note);
  });
}

function refuseNested(state: DraftState, items: readonly Item[]): void {
  const levels = new Set(items.map(i => i.level));
  if (levels.size > 1) {
    throw new CatalogError(
      'BadArgument',
      `${items.map(nameOf).join(', ')} do not stand at one level; move them to one level before they are combined.`,
    );
  }
  const twice = items.find(i => items.some(other => other !== i && subtreeOf(state.items, other.id).includes(i)));
  if (twice)
    throw new CatalogError('BadArgument', `${nameOf(twice)} stands below another one; name items side by side.`);
}

/** What all of them say: each text once, in their order. */
function saidBy(items: readonly Item[]): Wording {
  const once = <T>(values: readonly (T | undefined)[]) => [...new Set(values.filter(v => v !== undefined))];
  const joined = (field: 'text' | 'purpose' | 'outcome' | 'caution', between: string) =>
    once(items.map(i => i[field])).join(between) || undefined;
  const listed = (field: 'references' | 'terms') => {
    const all = once(items.flatMap(i => i[field] ?? []));
    return all.length > 0 ? all : undefined;
  };
  const verified = new Map(items.flatMap(i => i.verified ?? []).map(v => [`${v.when} ${v.how ?? ''}`, v]));
  return withoutAbsent<Wording>({
    text: joined('text', '\n\n'),
    purpose: joined('purpose', ' '),
    outcome: joined('outcome', ' '),
    caution: joined('caution', ' '),
    references: listed('references'),
    terms: listed('terms'),
    verified: verified.size > 0 ? [...verified.values()] : undefined,
  });
}
