import type { Evidence } from '../../model/duty-evidence.ts';
import type { ItemContent } from '../../model/item.ts';
import { MOMENT_WORDS } from '../../model/said-words.ts';
import { words } from '../../text/words.ts';
import type { DutyVerdict } from '../duty/compare-duty.ts';
import { type Quantity, quantitiesLately } from '../quantities/quantities.ts';
import { sameValue } from '../quantities/same-value.ts';

/**
 * What stands beside the texts: when and how an item is verified, and what it refers to.
 *
 *   old: before covering              new: at completion             other moments: nobody can say which asks more
 *   old: names nothing                new: before covering           absent is unknown: told, and the texts decide
 *   old: before covering, by tape     new: before covering, by rule  how is told, and the texts decide
 *   old: by document, 10 dates        new: by document, 2 dates      never "the same" over a value of its own
 *
 * @param own one of the old items, of which the verdict is; what its siblings named came from there
 */
export function withBesides(
  { duty, evidence }: DutyVerdict,
  own: ItemContent,
  from: readonly ItemContent[],
  to: readonly ItemContent[],
): DutyVerdict {
  const besides = [compare(VERIFICATION, own, from, to), compare(REFERENCES, own, from, to)].filter(
    b => b !== undefined,
  );
  const told = (decides: boolean) => besides.flatMap(b => (b.decides === decides ? [b.evidence] : []));
  const deciding = told(true);
  const leavesDoubt =
    duty === 'same' && besides.length > 0 && (saysNothingElse(from, to) || otherValues(own, from, to));
  return {
    duty: deciding.length > 0 || leavesDoubt ? 'unclear' : duty,
    evidence: [...deciding, ...evidence, ...told(false)],
  };
}

/** Of items without texts, how they are verified is all that is known of what they ask. */
const saysNothingElse = (from: readonly ItemContent[], to: readonly ItemContent[]) =>
  [...from, ...to].every(i => !i.text && !i.outcome && !i.caution);

/** Whether both say how it is verified, by values that their texts do not state and the other does not name. */
function otherValues(own: ItemContent, from: readonly ItemContent[], to: readonly ItemContent[]): boolean {
  if (!own.verified || to.every(i => !i.verified)) return false;
  const values = (texts: readonly (string | undefined)[]) => texts.flatMap(t => quantitiesLately(t ?? ''));
  const how = (items: readonly ItemContent[]) => values(items.flatMap(i => i.verified ?? []).map(v => v.how));
  const text = (items: readonly ItemContent[]) => values(items.flatMap(i => [i.text, i.outcome, i.caution]));
  const isNew = (all: readonly Quantity[], texts: readonly Quantity[], others: readonly Quantity[]) =>
    all.some(q => !texts.some(t => statesBound(t, q)) && !others.some(o => sameValue(o, q)));
  return isNew(how([own]), text([own]), how(to)) || isNew(how(to), text(to), how(from));
}

/** "by rule: 30 mm" looks for the "at least 30 mm" of the text. */
const statesBound = (text: Quantity, { dimension, low, high }: Quantity) =>
  text.dimension === dimension && [low, high].some(b => Number.isFinite(b) && (b === text.low || b === text.high));

/** A moment or a reference, as it is compared and as it is told. */
interface Stated {
  readonly key: string;
  readonly how: string;
  readonly words: string;
}

interface Kind {
  /** Absent is unknown; empty is a statement. */
  readonly of: (item: ItemContent) => readonly Stated[] | undefined;
  readonly differs: string;
  readonly named: string;
  readonly added: string;
  readonly gone: string;
  readonly otherwise: string;
}

const VERIFICATION: Kind = {
  of: ({ verified }) =>
    verified?.map(({ when, how }) => ({
      key: when,
      how: folded(how ?? ''),
      words: [MOMENT_WORDS[when].toLowerCase(), how].filter(Boolean).join(', '),
    })),
  differs: 'verified at other moments',
  named: 'verification named',
  added: 'verification added',
  gone: 'verification no longer named',
  otherwise: 'verified in other words',
};

const REFERENCES: Kind = {
  of: ({ references }) => references?.map(r => ({ key: folded(r), how: '', words: r })),
  differs: 'other references',
  named: 'references named',
  added: 'references named',
  gone: 'references no longer named',
  otherwise: 'other references',
};

function compare(
  kind: Kind,
  own: ItemContent,
  from: readonly ItemContent[],
  to: readonly ItemContent[],
): { readonly decides: boolean; readonly evidence: Evidence } | undefined {
  const [mine, all, now] = [stated(kind, [own]), stated(kind, from), stated(kind, to)];
  const beside = (decides: boolean, what: string, before: readonly Stated[], after: readonly Stated[]) => ({
    decides,
    evidence: { direction: 'unclear' as const, what, from: listed(before), to: listed(after) },
  });
  const has = (list: readonly Stated[], { key }: Stated) => list.some(s => s.key === key);
  if (mine && now && !(mine.every(s => has(now, s)) && now.every(s => has(all!, s))))
    return beside(true, kind.differs, mine, now);
  const says = (list: readonly Stated[] | undefined, { words }: Stated) =>
    list?.some(s => folded(s.words) === folded(words)) ?? false;
  const gone = mine?.filter(s => !says(now, s)) ?? [];
  const come = now?.filter(s => !says(all, s)) ?? [];
  // One way of verifying may be written as two.
  if (mine && now && byKey(mine) === byKey(now)) return undefined;
  if (gone.length === 0) return come.length > 0 ? beside(false, mine ? kind.added : kind.named, [], come) : undefined;
  if (!now) return beside(false, kind.gone, gone, []);
  return beside(false, kind.otherwise, gone, come.length > 0 ? come : now);
}

function stated(kind: Kind, items: readonly ItemContent[]): readonly Stated[] | undefined {
  const each = items.flatMap(i => kind.of(i) ?? []);
  return items.some(i => kind.of(i) !== undefined) ? each : undefined;
}

const listed = (all: readonly Stated[]) => [...new Set(all.map(s => s.words))].join('; ');

function byKey(all: readonly Stated[]): string {
  const keys = [...new Set(all.map(s => s.key))].sort();
  return JSON.stringify(keys.map(key => [key, ...all.flatMap(s => (s.key === key && s.how) || [])].join(' ')));
}

const folded = (text: string) => words(text).join(' ');
