import type { Joint } from '../../crosswalk/joint.ts';
import type { Link } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import type { ItemId, TypeId } from '../../model/item.ts';
import { type LightReading, lightReading, sizesOf } from './light-reading.ts';
import type { TypeValue } from './type-values.ts';

/** What the requirements of both editions say. */
export interface EditionTexts extends BareTexts {
  /** The values of an old item that another one took the place of; see `changed-texts.ts`. */
  changed(id: ItemId): readonly ChangedText[];
}

/** Undefined where an item has no text. */
export interface BareTexts {
  from(id: ItemId): string | undefined;
  to(id: ItemId): string | undefined;
}

/** A stretch of an old text, and the words of the newer edition in its place. */
export interface ChangedText {
  readonly start: number;
  readonly end: number;
  readonly to: string;
  /** Where the newer edition states values by installation type in its place: all of them. */
  readonly byType?: readonly TypeValue[];
}

/** What an old requirement says, beside what became of it. */
export interface OldSaying {
  readonly entry: Entry;
  readonly reading: LightReading;
  readonly heirs: readonly Entry[];
  /** Its withdrawal, where nothing follows it. */
  readonly withdrawal: Link | undefined;
  /** Sizes of the values that it states. */
  readonly sizes: ReadonlySet<string>;
  /** Sizes and words of all that follows it. */
  readonly sizesNow: ReadonlySet<string>;
  readonly stemsNow: ReadonlySet<string>;
  /** Whether something that follows it says these words in a row, marks included ("2 / 6"). */
  saysNow(words: string): boolean;
  /** The new value that stands in the place of one, in the words of the newer edition. */
  valueNow(size: string): Pick<ChangedText, 'to' | 'byType'> | undefined;
}

/** The sayings of an older edition by id, each worked out when it is first asked for. */
export function oldSayings(joint: Joint, texts: EditionTexts): (id: ItemId) => OldSaying | undefined {
  const known = new Map<ItemId, OldSaying | undefined>();
  return id => {
    if (!known.has(id)) known.set(id, sayingOf(joint, texts, id));
    return known.get(id);
  };
}

function sayingOf(joint: Joint, texts: EditionTexts, id: ItemId): OldSaying | undefined {
  const [entry, text] = [joint.old.get(id), texts.from(id)];
  if (!entry || text === undefined) return undefined;
  const leaving = joint.leaving(id);
  const heirs = [...new Set(leaving.flatMap(l => l.to ?? []))].map(to => joint.new.get(to)!);
  const now = textsAfter(joint, texts, id).map(lightReading);
  const reading = lightReading(text);
  const wordsNow = now.map(({ tokens }) => ` ${tokens.map(t => t.low).join(' ')} `);
  let changed: Map<string, ChangedText> | undefined;
  return {
    entry,
    reading,
    heirs,
    withdrawal: heirs.length === 0 ? leaving.find(l => l.to === null) : undefined,
    sizes: new Set(reading.quantities.flatMap(q => sizesOf(reading, q))),
    sizesNow: new Set(now.flatMap(r => r.quantities.flatMap(q => sizesOf(r, q)))),
    stemsNow: new Set(now.flatMap(r => r.stems.filter(Boolean))),
    saysNow: words => wordsNow.some(text => text.includes(` ${words} `)),
    valueNow: size => {
      changed ??= changedSizes(texts.changed(id), reading);
      return changed.get(size);
    },
  };
}

/**
 * All that follows an old item, or what of it applies to an installation type. An heir without a text is a work item or a
 * heading: what stands below it follows as well.
 */
export function textsAfter(joint: Joint, texts: BareTexts, id: ItemId, type?: TypeId): readonly string[] {
  const heirs = [...new Set(joint.leaving(id).flatMap(l => l.to ?? []))];
  const holds = (heir: ItemId) => type === undefined || joint.new.types(heir).includes(type);
  const textOf = (heir: ItemId) => (holds(heir) ? (texts.to(heir) ?? []) : []);
  return heirs.flatMap(h => (texts.to(h) === undefined ? below(joint, h).flatMap(e => textOf(e.id)) : textOf(h)));
}

function below(joint: Joint, id: ItemId): readonly Entry[] {
  return joint.new.children(id).flatMap(e => [e, ...below(joint, e.id)]);
}

function changedSizes(changed: readonly ChangedText[], reading: LightReading): Map<string, ChangedText> {
  return new Map(
    changed.flatMap(c =>
      reading.quantities
        .filter(q => q.start >= c.start && q.end <= c.end)
        .flatMap(q => sizesOf(reading, q).map(size => [size, c] as const)),
    ),
  );
}
