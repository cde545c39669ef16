import { linksOf } from '../../editing/draft-state.ts';
import type { Decision } from '../../model/crosswalk.ts';
import type { EditionHeader } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { reasonsInWords } from '../../model/heir-words.ts';
import type { Item, ItemId } from '../../model/item.ts';
import { type Places, placesOf } from '../../model/places.ts';
import type { Settings } from '../../model/settings.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { nearestNames } from '../../text/nearest.ts';
import { inTurn } from '../in-turn.ts';
import type { Person } from '../people.ts';
import type { Ports } from '../ports/ports.ts';
import { named } from '../reading/named-item.ts';
import { remember } from '../remember.ts';
import { type BranchesDesk, branchesDesk } from './branches-desk.ts';
import { type LoggedStep, stepsUpTo } from './draft-log.ts';
import { type OperationsReport, operateOnDraft, prepareOperations, type WrittenOperation } from './draft-operations.ts';
import { type Foreseen, foresee } from './foresee-operation.ts';
import { nameOfBranch, type ReadDraft, readDraft } from './read-draft.ts';
import { undoOperation } from './undo-operation.ts';

/** A draft, or a branch of one, as a desk shows it, at one commit. */
export interface DeskDraft {
  /** What it is called in addresses: the draft's name, or the branch's. */
  readonly name: string;
  readonly header: EditionHeader;
  readonly tip: string;
  readonly settings: Settings;
  readonly places: Places<Item>;
  /** The items of the edition that it replaces. */
  readonly old: Places<Item>;
  readonly oldName: string;
  /** The old items that an item of the draft stands for. */
  sources(id: ItemId): readonly Item[];
  /** What holds edition-wide. */
  readonly decisions: readonly Decision[];
  /** Glossary terms that its items use, in alphabetical order. */
  readonly terms: readonly string[];
  /** Old items that do not stand in the draft under their own id, with what the lineage says of each. */
  readonly left: readonly LeftItem[];
  /** Newest first. */
  readonly steps: readonly LoggedStep[];
}

export interface LeftItem {
  readonly item: Item;
  /** Where it goes on; empty where it ends. */
  readonly heirs: readonly Item[];
  /** What the reason means, where one is on record. */
  readonly reason: string;
  readonly note: string;
}

/** A draft, for the people who work on it while a viewer runs. */
export interface DraftDesk {
  /** Throws BadArgument for a published edition. */
  read(draft: string): Promise<DeskDraft>;
  /** The id of the item that somebody names by number or id; throws UnknownItem with the nearest numbers. */
  find(draft: string, name: string): Promise<ItemId>;
  /** What an operation would do. Throws what `do` would throw. */
  look(draft: string, operation: WrittenOperation, by: Person): Promise<Foresight>;
  /** Throws Changed where the draft no longer stands at the commit that was looked at. */
  do(draft: string, operation: WrittenOperation, seen: string, by: Person): Promise<OperationsReport>;
  /** Takes a step back; gives what was undone. Throws BadArgument where later work rests on it. */
  undo(draft: string, commit: string, by: Person): Promise<string>;
  readonly branches: BranchesDesk;
}

export interface Foresight extends Foreseen {
  readonly told: string;
  readonly tip: string;
}

const MOST = 3;

export function draftDesk(ports: Ports, reading: Catalog, writing: () => Promise<Catalog>): DraftDesk {
  const signed = (by: Person) => ({ ...ports, progress: () => {}, author: { name: by.name, email: by.address } });
  const drafts = remember(MOST, async (key: string) => {
    const found = await readDraft(reading, (JSON.parse(key) as [string])[0]);
    return { found, shown: shownAtDesk(found, await stepsUpTo(reading, found.branch.tip)) };
  });
  const turn = inTurn();
  const known = async (draft: string) => drafts(JSON.stringify([draft, (await locate(reading, draft)).commit]));
  const read = async (draft: string) => (await known(draft)).shown;
  return {
    read,
    find: async (draft, name) => {
      const { places, header } = await read(draft);
      try {
        return named(places.all, name, header.name);
      } catch (error) {
        throw withNearest(error, name, 'the draft', places);
      }
    },
    look: async (draft, operation, by) => {
      try {
        const { found } = await known(draft);
        const prepared = await prepareOperations(signed(by), reading, { draft, operations: [operation] }, found);
        const { before, after, steps, branch } = prepared;
        return { ...foresee(before, after), told: steps[0]!.told, tip: branch.tip };
      } catch (error) {
        const { name, where } = error instanceof CatalogError ? error.data : {};
        if (typeof name !== 'string') throw error;
        const { places, old, oldName } = await read(draft);
        throw where === oldName
          ? withNearest(error, name, oldName, old)
          : withNearest(error, name, 'the draft', places);
      }
    },
    do: (draft, operation, seen, by) =>
      turn(async () => operateOnDraft(signed(by), await writing(), { draft, operations: [operation], seen })),
    undo: (draft, commit, by) =>
      turn(async () => (await undoOperation(signed(by), await writing(), { draft, commit })).undone),
    branches: branchesDesk(ports, reading, writing, turn),
  };
}

function shownAtDesk({ header, branch, state }: ReadDraft, steps: readonly LoggedStep[]): DeskDraft {
  const { settings, items, older, lineage, decisions } = state;
  const places = placesOf(settings, items);
  const old = placesOf(older?.settings ?? settings, older?.items ?? []);
  const links = linksOf(state);
  const records = new Map(lineage.map(r => [r.from, r]));
  const left = old.all
    .filter(i => !places.get(i.id))
    .map((item): LeftItem => {
      const { note = '' } = records.get(item.id) ?? {};
      const ends = links.filter(l => l.from === item.id && l.to === null);
      const heirs = links.flatMap(l => (l.from === item.id && l.to !== null ? [places.get(l.to)!] : []));
      return { item, heirs, reason: reasonsInWords(ends, settings.withdrawalReasons), note };
    });
  return {
    name: nameOfBranch(branch.ref),
    header,
    tip: branch.tip,
    settings,
    places,
    old,
    oldName: header.replaces ?? '',
    sources: id => links.flatMap(l => (l.to === id && l.from !== null ? [old.get(l.from)!] : [])),
    decisions,
    terms: [...new Set(items.flatMap(i => i.terms ?? []))].sort(),
    left,
    steps,
  };
}

function withNearest(error: unknown, name: string, where: string, { all }: Places<Item>): unknown {
  if (!(error instanceof CatalogError) || error.code !== 'UnknownItem') return error;
  if (all.some(i => i.number === name)) return error;
  const near = nearestNames(
    name,
    all.map(i => i.number),
  );
  const told = near.length > 0 ? `the nearest numbers are ${near.join(', ')}.` : 'look its number up in the outline.';
  return new CatalogError('UnknownItem', `There is no ${name} in ${where}; ${told}`, { name, near });
}
