import { isPair } from '../../content/links/marks.ts';
import type { Joint } from '../../crosswalk/joint.ts';
import type { Link } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import type { TypeId } from '../../model/item.ts';
import type { LocalRecord } from '../../model/local.ts';
import { called, listed, withdrawalsWhy } from '../sentences.ts';

/**
 * What becomes of the citation of a local rule or variance. `re-pointed`: it has one heir beyond doubt. `choose`: a
 * person says which. `withdrawn`: nothing follows. `unknown`: the number names nothing, or not one thing. `closed`: denied,
 * expired or moot, so it stays a record of its edition. `other-edition`: it cites another edition than the one carried.
 */
export const POINTINGS = ['re-pointed', 'choose', 'withdrawn', 'unknown', 'closed', 'other-edition'] as const;
export type PointingKind = (typeof POINTINGS)[number];

export interface Pointing {
  readonly kind: PointingKind;
  readonly from: Entry | undefined;
  readonly heirs: readonly Entry[];
  readonly why: string;
  /** Absent where nothing is to be done. */
  readonly toDo?: string;
}

/**
 * Points a local record to the newer edition. What it is about goes on even where the requirement now asks more or less:
 * whether the record still stands beside it is another question, which `governs --all` answers.
 *
 * @param date calendar date; a record that ended before is closed
 * @param types that the record holds for; absent: all
 */
export function pointLocal(joint: Joint, record: LocalRecord, date: string, types?: readonly TypeId[]): Pointing {
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const { edition, number, item } = record.cites;
  if (edition !== from) {
    return {
      kind: 'other-edition',
      from: undefined,
      heirs: [],
      ...(edition === to
        ? { why: `It cites ${number} of ${to} already.` }
        : { why: `It cites ${number} of ${edition}, not of ${from}.`, toDo: `Run again with --from ${edition}.` }),
    };
  }
  const bearers = item === undefined ? joint.old.withNumber(number) : [joint.old.get(item)].flatMap(e => e ?? []);
  const cited = bearers[0];
  if (closedSince(record, date)) {
    return { kind: 'closed', from: cited, heirs: [], why: `It is closed (${record.state}) and stays under ${from}.` };
  }
  if (!cited || bearers.length > 1) {
    return {
      kind: 'unknown',
      from: undefined,
      heirs: [],
      why: cited ? `${from} prints ${number} on ${bearers.length} items.` : `${from} has no ${number}.`,
      toDo: cited ? 'Write the id of the item into the record, under cites.' : 'Mend the number in the record.',
    };
  }
  const links = joint.leaving(cited.id);
  const applies = (id: string) => !types || joint.new.types(id).some(t => types.includes(t));
  const pairs = links.filter(isPair).filter(l => applies(l.to));
  const heirs = [...new Set(pairs.map(l => l.to))].map(id => joint.new.get(id)!);
  const gone = links.filter(l => l.to === null && (!types || !l.types || l.types.some(t => types.includes(t))));
  const base = { from: cited, heirs };
  if (heirs.length === 0) {
    const name = cited.number || cited.title;
    return gone.length > 0
      ? { ...base, kind: 'withdrawn', why: withdrawalsWhy(joint, name, gone), toDo: aloneToDo(joint, record, gone) }
      : {
          ...base,
          kind: 'unknown',
          why: `Nothing in ${to} follows ${called(cited)}${types ? ' for the types that it holds for' : ''}, and no record says why.`,
          toDo: 'Ask whoever publishes the catalog.',
        };
  }
  if (heirs.length > 1) {
    return {
      ...base,
      kind: 'choose',
      why: `${called(cited)} has gone to ${listed(heirs.map(called))}.`,
      toDo: 'Say which of them it is about; it may be several.',
    };
  }
  const unsure = pairs.find(l => l.basis === 'inferred' || l.doubtful);
  if (unsure) {
    const why = unsure.doubtful ? 'Over the editions between it may be a false pair' : 'A program guessed it';
    return {
      ...base,
      kind: 'choose',
      why: `${called(cited)} may be ${called(heirs[0]!)}. ${why}.`,
      toDo: 'Compare both texts and say whether it is.',
    };
  }
  const partly = gone.length > 0 ? ` For some installation types it was withdrawn.` : '';
  return { ...base, kind: 're-pointed', why: `${called(cited)} is ${called(heirs[0]!)} in ${to}.${partly}` };
}

/** A rule goes on binding at its place without the catalog; a variance has nothing left to depart from. */
function aloneToDo(joint: Joint, { kind }: LocalRecord, ends: readonly Link[]): string {
  const named = ends.flatMap(({ pointsTo, governs }) => {
    const target = pointsTo === undefined ? undefined : joint.new.get(pointsTo);
    return [target && called(target), governs].filter(Boolean);
  });
  const see = [...new Set(named)].join(', or ');
  const unless = see === '' ? '' : `, unless it is about ${see}`;
  return kind === 'rule'
    ? `Say whether the rule goes on by itself${unless}.`
    : `Say whether it can be closed: nothing is left to depart from${unless}.`;
}

/** The record as it cites the newer edition; only of one that is re-pointed. Its state and all its words stay. */
export function rePointed(record: LocalRecord, to: string, heir: Entry): LocalRecord {
  return { ...record, cites: { edition: to, number: heir.number || heir.title || heir.id, item: heir.id } };
}

function closedSince({ state, until }: LocalRecord, date: string): boolean {
  return state === 'denied' || state === 'expired' || state === 'moot' || (until !== null && until < date);
}
