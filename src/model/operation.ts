import type { Decision, Extent } from './crosswalk.ts';
import type { EditionDates } from './edition.ts';
import type { ItemContent, ItemId, TypeId } from './item.ts';

/** What a rewording may change: everything that an item says besides its title and what it applies to. */
export type Wording = Partial<Omit<ItemContent, 'title' | 'appliesTo'>>;

/** Where an item is put: under which parent (null: at the top), and after which sibling. */
export interface Place {
  readonly under: ItemId | null;
  /** null = before all siblings; absent = after all of them. */
  readonly after?: ItemId | null;
}

/** An item that does not exist yet. Its id is minted before the operation is applied, so that applying it is a pure step. */
export interface NewItem extends ItemContent {
  readonly id: ItemId;
}

/**
 * One thing done to a draft, as a plain value. `id` names an item of the draft, `from` one of the edition that the
 * draft replaces. `note` says why; it stands in the lineage of every old item that the operation touches.
 */
export type Operation = { readonly note?: string } & (
  | { readonly op: 'reword'; readonly id: ItemId; readonly to: Wording }
  | { readonly op: 'retitle'; readonly id: ItemId; readonly title: string }
  | ({ readonly op: 'move'; readonly id: ItemId } & Place)
  | {
      readonly op: 'combine';
      readonly ids: readonly ItemId[];
      /** The one that goes on, with what is said here; absent fields keep what all of them said. */
      readonly into: ItemId;
      readonly to?: Wording & { readonly title?: string };
    }
  | {
      readonly op: 'split';
      readonly id: ItemId;
      /** What the item itself keeps. */
      readonly keeps: Wording & { readonly title?: string; readonly appliesTo?: readonly TypeId[] };
      /** What it gives away, each a sibling after it. */
      readonly gives: readonly NewItem[];
    }
  | {
      readonly op: 'withdraw';
      readonly id: ItemId;
      readonly reason: string;
      /** Only for these installation types; absent = as a whole, with everything below. */
      readonly types?: readonly TypeId[];
      readonly governs?: string;
      /** The day on which somebody read what governs, ISO 8601. */
      readonly governsChecked?: string;
      readonly pointsTo?: ItemId;
      readonly decision?: string;
    }
  | {
      readonly op: 'incorporate';
      readonly id: ItemId;
      readonly text: string;
      readonly source: string;
      readonly edition: string;
      readonly permission: string;
    }
  | ({ readonly op: 'add'; readonly item: NewItem } & Place)
  | {
      readonly op: 'applies-to';
      readonly id: ItemId;
      readonly types: readonly TypeId[];
      /** Why it ends for the types that it loses. */
      readonly reason?: string;
    }
  | {
      readonly op: 'rename';
      readonly what: 'type' | 'level' | 'term';
      readonly name: string;
      readonly to: string;
    }
  | {
      readonly op: 'set-days';
      /** Days by milestone, ISO 8601; an empty one is taken away. */
      readonly days: EditionDates;
    }
  | { readonly op: 'renumber' }
  | { readonly op: 'decide'; readonly decision: Decision }
  | {
      readonly op: 'link';
      readonly from: ItemId;
      readonly to: ItemId;
      readonly fromExtent: Extent;
      readonly toExtent: Extent;
    }
  | { readonly op: 'unlink'; readonly from: ItemId; readonly to: ItemId }
  | ({ readonly op: 'restore'; readonly from: ItemId } & Place)
);

/** The operation of one kind. */
export type OperationOf<K extends Operation['op']> = Extract<Operation, { readonly op: K }>;
