import { retentionOf } from '../content/lost.ts';
import { readText } from '../content/reading.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { Link } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import { type LightReading, lightReading, sizesOf } from './light-reading.ts';

/** The texts of the requirements of both editions; undefined where an item has none. */
export interface EditionTexts {
  from(id: ItemId): string | undefined;
  to(id: ItemId): string | undefined;
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
  valueNow(size: string): string | undefined;
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
  // An heir without a text is a work item or a heading: what stands below it follows as well.
  const after = heirs.flatMap(h => texts.to(h.id) ?? below(joint, h.id).flatMap(e => texts.to(e.id) ?? []));
  const now = after.map(lightReading);
  const reading = lightReading(text);
  const wordsNow = now.map(({ tokens }) => ` ${tokens.map(t => t.low).join(' ')} `);
  let changed: Map<string, string> | undefined;
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
      changed ??= changedSizes(text, after, reading);
      return changed.get(size);
    },
  };
}

function below(joint: Joint, id: ItemId): readonly Entry[] {
  return joint.new.children(id).flatMap(e => [e, ...below(joint, e.id)]);
}

function changedSizes(text: string, after: readonly string[], reading: LightReading): Map<string, string> {
  const { changed } = retentionOf(
    readText(text),
    after.map(t => readText(t)),
  );
  return new Map(
    changed.flatMap(c =>
      reading.quantities
        .filter(q => q.start >= c.start && q.end <= c.end)
        .flatMap(q => sizesOf(reading, q).map(size => [size, c.to] as const)),
    ),
  );
}
