import type { Item, ItemId, TypeId } from './item.ts';
import type { Settings } from './settings.ts';

/** Dates of an edition, ISO 8601 calendar dates (2024-03-01). */
export interface EditionDates {
  readonly commentOpens?: string;
  readonly commentCloses?: string;
  /** The day from which the text is to stay as it is. */
  readonly finalised?: string;
  readonly published?: string;
  readonly effective?: string;
  readonly transitionEnds?: string;
  readonly nextReview?: string;
}

/** What the tag of an edition says about itself. */
export interface EditionHeader {
  readonly name: string;
  /** 0 for the edition as published; n for its nth erratum, which changes lineage and nothing else. */
  readonly erratum: number;
  readonly replaces: string | null;
  readonly dates: EditionDates;
  readonly state: 'published' | 'draft';
}

/**
 * One line of the frozen table of an edition: enough to say where an item stands and whether its words changed,
 * without reading any text. `hash` covers the item's content (see ItemContent). `appliesTo` is the item's own.
 */
export interface Entry {
  readonly id: ItemId;
  readonly number: string;
  readonly parent: ItemId | null;
  readonly level: number;
  readonly title: string;
  readonly hash: string;
  readonly appliesTo?: readonly TypeId[];
  readonly alsoAt?: readonly ItemId[];
  /** Whether the item obliges, i.e. is a requirement. */
  readonly obliges: boolean;
}

/** An edition without its texts. Entries stand in document order, a parent before its children. */
export interface EditionIndex {
  readonly header: EditionHeader;
  readonly settings: Settings;
  readonly entries: readonly Entry[];
  /** Object name of the tree that it was read from: a branch of a draft has the draft's name. Absent: from tables. */
  readonly tree?: string;
}

/** An edition with everything that it says. Items stand in document order, a parent before its children. */
export interface Edition {
  readonly header: EditionHeader;
  readonly settings: Settings;
  readonly items: readonly Item[];
}

/** Whether an item obliges: its level says so or, where the level is silent, it has a text. */
export function isRequirement(settings: Settings, item: Item): boolean {
  return settings.levels[item.level - 1]?.obliges ?? item.text !== undefined;
}
