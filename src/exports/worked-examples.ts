import { isPair } from '../content/links/marks.ts';
import type { Fate } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import { capital, dutySentence, inWords, sentence } from '../model/said-words.ts';
import { typeName } from '../model/settings.ts';
import { type CrosswalkLine, crosswalkLines } from './crosswalk-lines.ts';
import { reasonOf } from './disposition.ts';
import type { Publication } from './publication.ts';

/** One real row as a lesson: what it said, what it says, and why. */
export interface WorkedExample {
  /** The kind of change, e.g. `merged`. */
  readonly kind: string;
  readonly fate: Fate;
  readonly headline: string;
  readonly before: readonly Said[];
  readonly after: readonly Said[];
  /** Sentences. */
  readonly why: readonly string[];
  /** Whether the lineage says why. */
  readonly recorded: boolean;
}

export interface Said {
  readonly number: string;
  readonly title: string;
  readonly text: string;
}

/** Longer texts together do not fit beside each other on a slide. */
const LONGEST = 900;

/**
 * A worked example for each kind of change that the two editions have, among requirements: the shortest one whose record
 * says why, else the shortest. Shortest since it is read from the back of a room; never picked by hand.
 */
export function workedExamples(publication: Publication): WorkedExample[] {
  const { joint, marks } = publication;
  const groups = groupLines(crosswalkLines(joint, marks));
  return KINDS.flatMap(({ kind, fate, suits }) => {
    const found = groups
      .filter(group => group.every(l => (l.from ?? l.to)?.obliges) && suits(group))
      .map(group => exampleOf(publication, kind, fate, group))
      .filter(e => lengthOf(e) <= LONGEST && [...e.before, ...e.after].every(s => s.text !== ''));
    found.sort((a, b) => Number(b.recorded) - Number(a.recorded) || lengthOf(a) - lengthOf(b));
    return found.slice(0, 1);
  });
}

type Group = readonly CrosswalkLine[];

const sole = (group: Group, suits: (line: CrosswalkLine) => boolean) =>
  group.length === 1 && group[0]!.from !== undefined && group[0]!.to !== undefined && suits(group[0]!);
const sides = (group: Group) => [new Set(group.map(l => l.from)).size, new Set(group.map(l => l.to)).size] as const;
const joined = (group: Group) => group.every(l => l.from && l.to);
const plain = (l: CrosswalkLine) => l.appliesTo === 'same';

const KINDS: readonly { readonly kind: string; readonly fate: Fate; readonly suits: (group: Group) => boolean }[] = [
  {
    kind: 'renumbered, the same words',
    fate: 'kept',
    suits: g => sole(g, l => plain(l) && l.renumbered === true && l.wording === 'same'),
  },
  { kind: 'stricter', fate: 'kept', suits: g => sole(g, l => plain(l) && l.duty === 'stricter') },
  { kind: 'relaxed', fate: 'kept', suits: g => sole(g, l => plain(l) && l.duty === 'relaxed') },
  { kind: 'merged', fate: 'merged', suits: g => joined(g) && sides(g)[0] > 1 && sides(g)[1] === 1 },
  { kind: 'split', fate: 'split', suits: g => joined(g) && sides(g)[0] === 1 && sides(g)[1] > 1 },
  { kind: 'recombined', fate: 'recombined', suits: g => joined(g) && sides(g)[0] > 1 && sides(g)[1] > 1 },
  { kind: 'withdrawn', fate: 'withdrawn', suits: g => g.length === 1 && g[0]!.fate === 'withdrawn' },
  { kind: 'new', fate: 'new', suits: g => g.length === 1 && g[0]!.fate === 'new' },
];

function groupLines(lines: readonly CrosswalkLine[]): Group[] {
  const groups = new Map<number, CrosswalkLine[]>();
  for (const line of lines) groups.set(line.row, [...(groups.get(line.row) ?? []), line]);
  return [...groups.values()];
}

function exampleOf(publication: Publication, kind: string, fate: Fate, group: Group): WorkedExample {
  const { oldItems, newItems, joint } = publication;
  const said = (entries: Iterable<Entry | undefined>, items: Publication['oldItems']) =>
    [...new Set(entries)].flatMap(e =>
      e ? [{ number: e.number, title: e.title, text: items.get(e.id)?.text ?? '' }] : [],
    );
  const [before, after] = [
    said(
      group.map(l => l.from),
      oldItems,
    ),
    said(
      group.map(l => l.to),
      newItems,
    ),
  ];
  const [a, b] = [joint.from.header.name, joint.to.header.name];
  const numbers = (all: readonly Said[]) => inWords(all.map(s => s.number || s.title));
  const headline =
    after.length === 0
      ? `${numbers(before)} of ${a} was withdrawn in ${b}.`
      : before.length === 0
        ? `${numbers(after)} is new in ${b}.`
        : `${numbers(before)} of ${a} became ${numbers(after)} in ${b}.`;
  const recorded = group.some(l => l.note !== '' || l.reason !== '');
  return { kind, fate, headline, before, after, why: whyOf(publication, group), recorded };
}

/** What the records say, each sentence once; then what became of the duty, where one link tells it. */
function whyOf(publication: Publication, group: Group): string[] {
  const links = group.flatMap(l => l.link ?? []);
  const reasons = links.map(l => (l.reason || l.to === null ? capital(reasonOf(publication, l)) : ''));
  const pair = links.length === 1 && isPair(links[0]!) ? links[0] : undefined;
  const duty = pair
    ? `Duty: ${dutySentence(publication.marks(pair), t => typeName(publication.joint.from.settings, t)).toLowerCase()}`
    : '';
  const recorded = [...reasons, ...group.map(l => l.note)];
  return [...new Set([...recorded, duty].filter(Boolean).map(sentence))];
}

function lengthOf({ before, after }: WorkedExample): number {
  return [...before, ...after].reduce((sum, s) => sum + s.title.length + s.text.length, 0);
}
