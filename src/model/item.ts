/** The printed or minted identity of an item. It never changes meaning; the printed number may. */
export type ItemId = string;

/** The code of an installation type, as the catalog's settings list it. */
export type TypeId = string;

/** The three moments at which a requirement can be verified; much of installed work gets buried. */
export const VERIFICATION_MOMENTS = ['before-covering', 'at-completion', 'by-document'] as const;
export type VerificationMoment = (typeof VERIFICATION_MOMENTS)[number];

export interface Verification {
  readonly when: VerificationMoment;
  readonly how?: string;
}

/**
 * What an item says. It is the part of an item that a content hash covers: number, parent and place are left out, so
 * that a renumbered or moved item with the same words has the same hash.
 *
 * Absent is unknown; empty is a statement. `appliesTo` absent inherits from the parent (at the root: all types).
 */
export interface ItemContent {
  readonly title: string;
  readonly text?: string;
  readonly purpose?: string;
  readonly outcome?: string;
  readonly appliesTo?: readonly TypeId[];
  readonly verified?: readonly Verification[];
  readonly caution?: string;
  readonly references?: readonly string[];
  readonly terms?: readonly string[];
}

/** The fields of {@link ItemContent} in the order in which they are written. */
export const CONTENT_FIELDS = [
  'title',
  'text',
  'purpose',
  'outcome',
  'appliesTo',
  'verified',
  'caution',
  'references',
  'terms',
] as const satisfies readonly (keyof ItemContent)[];

/** Any node of an edition's outline. `level` counts from 1 (top). `number` may be empty and need not be unique. */
export interface Item extends ItemContent {
  readonly id: ItemId;
  readonly number: string;
  readonly level: number;
  readonly parent: ItemId | null;
  /** The name of the item's level where it differs from the one that the settings give that level. */
  readonly kind?: string;
  /** Further parents under which the item is printed as well. */
  readonly alsoAt?: readonly ItemId[];
}

/** The content of an item without its identity and place. */
export function contentOf(item: ItemContent): ItemContent {
  const content: Record<string, unknown> = {};
  for (const field of CONTENT_FIELDS) if (item[field] !== undefined) content[field] = item[field];
  return content as unknown as ItemContent;
}
