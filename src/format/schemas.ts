import { z } from 'zod';
import { BASES, EXTENTS } from '../model/crosswalk.ts';
import { VERIFICATION_MOMENTS } from '../model/item.ts';
import { NUMBER_STYLES } from '../model/settings.ts';

/**
 * The catalog's files as schemas (catalog/README.md is their description for people). Unknown fields are refused: a
 * misspelt `apliesTo` that is silently dropped would widen a requirement to all installation types.
 */

const id = z.string().min(1).max(400);
const text = z.string().max(100_000);
const name = z
  .string()
  .regex(/^[A-Za-z0-9](?:[A-Za-z0-9_-]|\.(?!\.|$|lock$)){0,59}$/, 'letters, digits, - and _, dots inside');
const date = z.iso.date();
const nonEmptyTypes = z.array(id).min(1, 'names no installation type; leave it out to inherit, or name some');

const content = {
  title: text,
  text: text.optional(),
  purpose: text.optional(),
  outcome: text.optional(),
  appliesTo: nonEmptyTypes.optional(),
  verified: z.array(z.strictObject({ when: z.enum(VERIFICATION_MOMENTS), how: text.optional() })).optional(),
  caution: text.optional(),
  references: z.array(text).optional(),
  terms: z.array(text).optional(),
};

/** One item as it stands in a file, its deeper items nested in order. */
export interface StoredItem {
  id: string;
  number?: string | undefined;
  kind?: string | undefined;
  alsoAt?: string[] | undefined;
  title: string;
  text?: string | undefined;
  purpose?: string | undefined;
  outcome?: string | undefined;
  appliesTo?: string[] | undefined;
  verified?: { when: (typeof VERIFICATION_MOMENTS)[number]; how?: string | undefined }[] | undefined;
  caution?: string | undefined;
  references?: string[] | undefined;
  terms?: string[] | undefined;
  items?: StoredItem[] | undefined;
}

export const storedItem: z.ZodType<StoredItem> = z.strictObject({
  id,
  number: text.optional(),
  kind: text.optional(),
  alsoAt: z.array(id).optional(),
  ...content,
  get items() {
    return z.array(storedItem).optional();
  },
});

/** One entry of the outline: an id, or an id with entries below it. */
export type OutlineEntry = string | { id: string; items: OutlineEntry[] };

export const outline: z.ZodType<OutlineEntry[]> = z.array(
  z.union([
    id,
    z.strictObject({
      id,
      get items() {
        return outline;
      },
    }),
  ]),
);

export const settings = z.strictObject({
  title: text,
  publisher: text.optional(),
  language: z.string().min(2),
  levels: z
    .array(z.strictObject({ name: text.min(1), obliges: z.boolean().optional() }))
    .min(1)
    .max(20),
  fileLevel: z.int().min(1).max(20),
  numbering: z.strictObject({
    levels: z.array(
      z.strictObject({
        style: z.enum(NUMBER_STYLES),
        prefix: text.optional(),
        separator: text.optional(),
        suffix: text.optional(),
        pad: z.int().min(1).max(9).optional(),
      }),
    ),
    numbersUnique: z.boolean(),
  }),
  installationTypes: z.array(z.strictObject({ id, name: text })),
  withdrawalReasons: z.array(
    z.strictObject({ code: id, meaning: text, governedElsewhere: z.literal(true).optional() }),
  ),
  caution: text.optional(),
});

const ending = {
  reason: text.optional(),
  governs: text.optional(),
  governsChecked: date.optional(),
  pointsTo: id.optional(),
  decision: id.optional(),
};

export const lineageFile = z.array(
  z.strictObject({
    from: id.nullable(),
    heirs: z.array(z.strictObject({ to: id, fromExtent: z.enum(EXTENTS), toExtent: z.enum(EXTENTS) })),
    notSame: z.literal(true).optional(),
    withdrawnFor: nonEmptyTypes.optional(),
    alsoEnds: z
      .array(z.strictObject({ types: nonEmptyTypes, ...ending, reason: text }))
      .min(1)
      .optional(),
    ...ending,
    note: text.optional(),
    by: text.optional(),
    date: date.optional(),
    basis: z.enum(BASES),
  }),
);

export const decision = z.strictObject({
  id: name,
  title: text,
  reason: text,
  authority: text,
  governs: text.optional(),
  scope: text,
  date: date.optional(),
});

export const dates = z.strictObject({
  commentOpens: date.optional(),
  commentCloses: date.optional(),
  finalised: date.optional(),
  published: date.optional(),
  effective: date.optional(),
  transitionEnds: date.optional(),
  nextReview: date.optional(),
});

export const editionFile = z.strictObject({
  name,
  replaces: name.nullable(),
  dates,
  /** SHA-256 of the frozen table's file, in hex. */
  table: z.string(),
});

export const draftFile = z.strictObject({ name, replaces: name.nullable(), dates });

export { name as editionName };
