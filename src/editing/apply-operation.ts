import { checkConservation } from '../crosswalk/conserve.ts';
import { joinEditions } from '../crosswalk/joint.ts';
import type { EditionIndex } from '../model/edition.ts';
import { isRequirement } from '../model/edition.ts';
import { CatalogError } from '../model/errors.ts';
import type { Finding } from '../model/finding.ts';
import type { Item } from '../model/item.ts';
import type { Operation, OperationOf } from '../model/operation.ts';
import type { Settings } from '../model/settings.ts';
import { type Doer, type DraftState, linksOf } from './draft-state.ts';
import { add } from './operations/add.ts';
import { appliesTo } from './operations/applies-to.ts';
import { combine } from './operations/combine.ts';
import { decide } from './operations/decide.ts';
import { incorporate } from './operations/incorporate.ts';
import { link, unlink } from './operations/link.ts';
import { move } from './operations/move.ts';
import { rename } from './operations/rename.ts';
import { renumber } from './operations/renumber.ts';
import { restore } from './operations/restore.ts';
import { retitle, reword } from './operations/reword.ts';
import { setDays } from './operations/set-days.ts';
import { split } from './operations/split.ts';
import { withdraw } from './operations/withdraw.ts';
import { renumbered } from './outline-edits.ts';

/**
 * Does one thing to a draft and keeps its lineage with it. Law: what was accounted for stays accounted for - an
 * operation after which an old item had neither an heir nor a withdrawal, for one of its installation types, is refused
 * (CatalogError, with the findings) and changes nothing.
 */
export function applyOperation(state: DraftState, operation: Operation, doer: Doer): DraftState {
  const done = perform(state, operation, doer);
  const next = { ...done, items: renumbered(done.settings, done.items) };
  const known = new Set(lossesOf(state).map(keyOf));
  const lost = lossesOf(next).filter(f => !known.has(keyOf(f)));
  if (lost.length > 0) {
    throw new CatalogError(
      'BadArgument',
      `After this ${lost.length === 1 ? 'an old item' : `${lost.length} old items`} would be lost: ${lost[0]!.message} Withdraw it with a reason, or let another item carry it on.`,
      { count: lost.length },
      lost,
    );
  }
  return next;
}

type Perform<K extends Operation['op']> = (state: DraftState, operation: OperationOf<K>, doer: Doer) => DraftState;

const OPERATIONS: { readonly [K in Operation['op']]: Perform<K> } = {
  reword,
  retitle,
  move,
  combine,
  split,
  withdraw,
  incorporate,
  add,
  'applies-to': appliesTo,
  rename,
  'set-days': setDays,
  renumber,
  decide,
  link,
  unlink,
  restore,
};

function perform<K extends Operation['op']>(state: DraftState, operation: OperationOf<K>, doer: Doer): DraftState {
  return (OPERATIONS[operation.op as K] as Perform<K>)(state, operation, doer);
}

/** What the step from the older edition to the draft loses. */
export function lossesOf(state: DraftState): readonly Finding[] {
  if (state.older === null) return [];
  const { header, settings, items } = state.older;
  const from = tableOf(header, settings, items);
  const to = tableOf({ ...header, name: 'the draft' }, state.settings, state.items);
  return checkConservation(joinEditions(from, to, { from: header.name, to: 'the draft', links: linksOf(state) }));
}

/** Conservation asks where items stand and what they apply to, never for their words: no hash is needed. */
function tableOf(header: EditionIndex['header'], settings: Settings, items: readonly Item[]): EditionIndex {
  const entries = items.map(item => ({ ...item, hash: '', obliges: isRequirement(settings, item) }));
  return { header, settings, entries };
}

const keyOf = (f: Finding) => `${f.rule} ${f.subject} ${String(f.data?.types ?? '')}`;
