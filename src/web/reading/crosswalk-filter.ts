import type { PublishedCrosswalk } from '../../commands/reading/published-catalog.ts';
import { FATES } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import { FATE_MEANINGS, MARK_WORDS, marksIn } from '../../model/said-words.ts';
import type { Query } from '../links.ts';

/** What to show of a crosswalk. Within a list any value passes; an empty list lets everything through. */
export interface CrosswalkFilter {
  readonly fate: readonly string[];
  readonly mark: readonly string[];
  /** `old:<id>` or `new:<id>` of a part; parts of both editions: what went from the one to the other. */
  readonly part: readonly string[];
  readonly reason: readonly string[];
  /** `requirements`, or `headings`: what groups them. */
  readonly kind: readonly string[];
}

type Line = PublishedCrosswalk['lines'][number];

export function filterLines({ lines, joint }: PublishedCrosswalk, filter: CrosswalkFilter): Line[] {
  const passes = (wanted: readonly string[], has: () => readonly string[]) =>
    wanted.length === 0 || has().some(value => wanted.includes(value));
  const [oldParts, newParts] = ['old:', 'new:'].map(side => filter.part.filter(p => p.startsWith(side))) as [
    string[],
    string[],
  ];
  return lines.filter(
    line =>
      passes(filter.fate, () => [line.fate]) &&
      passes(filter.reason, () => [line.reason]) &&
      passes(filter.kind, () => [(line.from ?? line.to)?.obliges ? 'requirements' : 'headings']) &&
      passes(filter.mark, () => marksIn(line).map(m => m.code)) &&
      passes(oldParts, () => (line.from ? [`old:${joint.old.part(line.from.id)?.id}`] : [])) &&
      passes(newParts, () => (line.to ? [`new:${joint.new.part(line.to.id)?.id}`] : [])),
  );
}

export const FILTER_KEYS = [
  'fate',
  'mark',
  'part',
  'reason',
  'kind',
] as const satisfies readonly (keyof CrosswalkFilter)[];

/** The filter as it stands in an address. */
export function filterQuery(filter: CrosswalkFilter): Query {
  return FILTER_KEYS.flatMap(key => filter[key].map(value => [key, value] as const));
}

interface Option {
  readonly value: string;
  readonly word: string;
  readonly chosen: boolean;
}

export interface FilterOptions {
  readonly fate: readonly Option[];
  readonly mark: readonly Option[];
  readonly oldParts: readonly Option[];
  readonly newParts: readonly Option[];
  readonly reason: readonly Option[];
  readonly kind: readonly Option[];
}

const MOST_REASONS = 60;

interface Occurring {
  readonly fates: ReadonlySet<string>;
  readonly marks: ReadonlySet<string>;
  /** Most frequent first. */
  readonly reasons: readonly (readonly [reason: string, n: number])[];
}

const occurring = new WeakMap<PublishedCrosswalk, Occurring>();

/** Gathered once for each crosswalk: 100,000 lines are not read anew for each page of a hundred. */
function occurringIn(crosswalk: PublishedCrosswalk): Occurring {
  const known = occurring.get(crosswalk);
  if (known) return known;
  const { lines } = crosswalk;
  const reasons = new Map<string, number>();
  for (const { reason } of lines) if (reason !== '') reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
  const found = {
    fates: new Set(lines.map(l => l.fate)),
    marks: new Set(lines.flatMap(l => marksIn(l).map(m => m.code))),
    reasons: [...reasons].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).slice(0, MOST_REASONS),
  };
  occurring.set(crosswalk, found);
  return found;
}

/** What can be chosen: only what occurs, and what is chosen now. */
export function filterOptions(crosswalk: PublishedCrosswalk, filter: CrosswalkFilter): FilterOptions {
  const { joint } = crosswalk;
  const { fates, marks, reasons } = occurringIn(crosswalk);
  const parts = (side: 'old' | 'new', entries: readonly Entry[]) =>
    entries
      .filter(e => e.parent === null)
      .map(e => {
        const value = `${side}:${e.id}`;
        return { value, word: `${e.number} ${e.title}`.trim(), chosen: filter.part.includes(value) };
      });
  return {
    fate: FATES.filter(f => fates.has(f) || filter.fate.includes(f)).map(value => ({
      value,
      word: `${value}: ${FATE_MEANINGS[value]}`,
      chosen: filter.fate.includes(value),
    })),
    mark: MARK_WORDS.filter(m => marks.has(m.code) || filter.mark.includes(m.code)).map(m => ({
      value: m.code,
      word: `${m.word}: ${m.meaning}`,
      chosen: filter.mark.includes(m.code),
    })),
    oldParts: parts('old', joint.from.entries),
    newParts: parts('new', joint.to.entries),
    kind: [
      { value: 'requirements', word: 'requirements' },
      { value: 'headings', word: 'headings and work items' },
    ].map(kind => ({ ...kind, chosen: filter.kind.includes(kind.value) })),
    reason: reasons.map(([value, n]) => ({ value, word: `${value} (${n})`, chosen: filter.reason.includes(value) })),
  };
}
