import { compareWording } from '../content/wording/wording.ts';
import type { Joint } from '../crosswalk/joint.ts';
import type { CirculatedItem } from '../model/comment.ts';
import type { Decision, Link } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import type { Item, ItemId } from '../model/item.ts';
import { capital, MOMENT_WORDS, sentence } from '../model/said-words.ts';
import { levelName, typeName } from '../model/settings.ts';

/** A line of the numbered draft. */
export interface PackLine {
  readonly line: number;
  readonly text: string;
}

/** Whether and how an item differs from what it was: the marks of ITU drafts. */
export type PackMark = 'NOC' | '(MOD)' | 'MOD' | 'ADD' | 'ADD*';

export const MARK_MEANINGS: Readonly<Record<PackMark | 'SUP' | 'SUP*', string>> = {
  ADD: 'new',
  'ADD*': 'taken from elsewhere',
  MOD: 'changed',
  '(MOD)': 'changed in spelling only',
  NOC: 'no change in words',
  SUP: 'withdrawn',
  'SUP*': 'withdrawn for some installation types',
};

export interface PackItem {
  readonly entry: Entry;
  readonly level: string;
  readonly part: string;
  readonly mark: PackMark;
  /** Its title first, then a line for each sentence. */
  readonly lines: readonly PackLine[];
  /** What it comes from, with the words as they were; without words where they are the same. */
  readonly old: readonly { readonly clause: string; readonly title: string; readonly text: string }[];
  readonly why: readonly string[];
}

export interface PackWithdrawal {
  /** As a comment cites it: `2018 2.1.3.5`. */
  readonly clause: string;
  readonly title: string;
  readonly text: string;
  readonly part: string;
  readonly mark: 'SUP' | 'SUP*';
  readonly why: readonly string[];
  readonly governs: string;
  /** Where the reader is pointed, in the draft. */
  readonly see: string;
}

export interface PackLink {
  /** Both ends, as a comment cites them: `2018 2.1.3.5, 2.1.1.7`. */
  readonly clause: string;
  readonly part: string;
  readonly oldTitle: string;
  readonly newTitle: string;
  readonly fate: string;
  readonly why: readonly string[];
}

/** A draft as reviewers get it. */
export interface CirculationPack {
  readonly title: string;
  readonly publisher: string;
  readonly caution: string;
  readonly language: string;
  /** The name of the draft, or of the edition where it is published. */
  readonly draft: string;
  readonly published: boolean;
  readonly replaces: string;
  readonly items: readonly PackItem[];
  readonly withdrawn: readonly PackWithdrawal[];
  readonly links: readonly PackLink[];
}

/**
 * The draft with its lines numbered, the old texts beside the new ones and the reason for each change; what is withdrawn,
 * and every link, so that either can be objected to.
 */
export function circulationPack(
  joint: Joint,
  texts: { readonly old: (id: ItemId) => Item | undefined; readonly new: (id: ItemId) => Item | undefined },
  decisions: readonly Decision[],
): CirculationPack {
  const { settings, header } = joint.to;
  const said = saidBy(joint, decisions);
  const partOf = (id: ItemId) => joint.new.part(id)?.number ?? '';
  const replaces = joint.from.header.name;
  let line = 0;
  const items = joint.to.entries.map((entry): PackItem => {
    const item = texts.new(entry.id);
    const lines = wordsOf(item, settings).map(text => ({ line: ++line, text }));
    const sources = joint.arriving(entry.id).filter(l => l.from !== null);
    const old = sources.map(link => {
      const before = joint.old.get(link.from!)!;
      const text =
        before.hash === entry.hash ? '' : wordsOf(texts.old(before.id), joint.from.settings).slice(1).join(' ');
      return { clause: `${replaces} ${before.number}`.trim(), title: before.title, text };
    });
    return {
      entry,
      level: levelName(settings, entry.level),
      part: partOf(entry.id),
      mark: markOf(joint, entry, sources, texts),
      lines,
      old,
      why: unique(joint.arriving(entry.id).flatMap(said)),
    };
  });
  const homes = homesOf(joint, partOf);
  const home = (id: ItemId) => homes.get(joint.old.part(id)?.id ?? '') ?? '';
  return {
    title: settings.title,
    publisher: settings.publisher ?? '',
    caution: settings.caution ?? '',
    language: settings.language,
    draft: header.name,
    published: header.state === 'published',
    replaces,
    items,
    withdrawn: joint.from.entries.flatMap(entry => {
      const links = joint.leaving(entry.id);
      const text = wordsOf(texts.old(entry.id), joint.from.settings).slice(1).join(' ');
      const shared = { clause: `${replaces} ${entry.number}`.trim(), title: entry.title, text };
      if (links.length === 0) {
        const why = ['No record says what becomes of it.'];
        return [{ ...shared, part: home(entry.id), mark: 'SUP' as const, why, governs: '', see: '' }];
      }
      return links
        .filter(l => l.to === null)
        .map((link): PackWithdrawal => {
          const see = link.pointsTo === undefined ? undefined : joint.new.get(link.pointsTo);
          return {
            ...shared,
            part: see ? partOf(see.id) : home(entry.id),
            mark: links.length > 1 || link.types ? 'SUP*' : 'SUP',
            why: said(link),
            governs: link.governs ?? '',
            see: see ? `${see.number} ${see.title}`.trim() : '',
          };
        });
    }),
    links: joint.crosswalk.links.flatMap((link): PackLink[] => {
      const [from, to] = [link.from && joint.old.get(link.from), link.to && joint.new.get(link.to)];
      if (!from || !to) return [];
      const clause = `${replaces} ${from.number}, ${to.number}`;
      const fate = joint.fateOfOld(from.id);
      return [{ clause, part: partOf(to.id), oldTitle: from.title, newTitle: to.title, fate, why: said(link) }];
    }),
  };
}

/** What concerns one part of the draft. Line numbers are those of the whole. */
export function partOfPack(pack: CirculationPack, part: string): CirculationPack {
  const own = <T extends { readonly part: string }>(list: readonly T[]) => list.filter(x => x.part === part);
  return { ...pack, items: own(pack.items), withdrawn: own(pack.withdrawn), links: own(pack.links) };
}

/** Which line means which item, to be kept with the circulation. */
export function linesOfPack({ items }: CirculationPack): CirculatedItem[] {
  return items.map(({ entry: { id, number, level, hash }, lines }) => ({
    id,
    number,
    level,
    hash,
    first: lines[0]!.line,
    last: lines.at(-1)!.line,
  }));
}

function markOf(
  joint: Joint,
  entry: Entry,
  sources: readonly Link[],
  texts: Parameters<typeof circulationPack>[1],
): PackMark {
  if (sources.length === 0) return 'ADD';
  if (sources.length > 1) return 'MOD';
  const before = joint.old.get(sources[0]!.from!)!;
  if (joint.leaving(before.id).filter(l => l.to !== null).length > 1 && before.id !== entry.id) return 'ADD*';
  if (before.hash === entry.hash) return 'NOC';
  const [from, to] = [texts.old(before.id), texts.new(entry.id)];
  return from && to && compareWording(from, to) === 'editorial' ? '(MOD)' : 'MOD';
}

/** Everything that an item says, as lines: its title, each sentence, when it is verified, the caution. */
function wordsOf(item: Item | undefined, settings: Joint['to']['settings']): string[] {
  if (!item) return [''];
  const { title, outcome, text, verified = [], caution, references = [], appliesTo } = item;
  return [
    title,
    ...(outcome ? [`Outcome: ${outcome}`] : []),
    ...sentencesIn(text ?? '', settings.language),
    ...(appliesTo ? [`Applies to: ${appliesTo.map(t => typeName(settings, t)).join(', ')}.`] : []),
    ...verified.map(v => `${MOMENT_WORDS[v.when]}${v.how ? `: ${v.how}` : ''}.`),
    ...(caution ? [`Caution: ${caution}`] : []),
    ...references.map(r => `See ${r}`),
  ];
}

function sentencesIn(text: string, language: string): string[] {
  const segmenter = new Intl.Segmenter(language, { granularity: 'sentence' });
  return [...segmenter.segment(text)].map(s => s.segment.replace(/\s+/g, ' ').trim()).filter(s => s !== '');
}

/** Why, in the words of the record: the reason's meaning, the note, the decision. */
function saidBy(joint: Joint, decisions: readonly Decision[]): (link: Link) => string[] {
  const meanings = new Map(
    [...joint.from.settings.withdrawalReasons, ...joint.to.settings.withdrawalReasons].map(r => [r.code, r.meaning]),
  );
  return ({ reason, note, decision }) => {
    const decided = decisions.find(d => d.id === decision);
    return unique([
      ...(reason ? [meanings.get(reason) ?? reason] : []),
      ...(note ? [note] : []),
      ...(decided ? [`${decided.title}: ${decided.reason}`] : []),
    ]).map(text => sentence(capital(text)));
  };
}

/** The part of the draft that took over most of an old part: what is withdrawn of it concerns the same committee. */
function homesOf(joint: Joint, partOf: (id: ItemId) => string): Map<ItemId, string> {
  const counts = new Map<ItemId, Map<string, number>>();
  for (const { from, to } of joint.crosswalk.links) {
    if (from === null || to === null) continue;
    const old = joint.old.part(from)?.id ?? '';
    const own = counts.get(old) ?? new Map<string, number>();
    own.set(partOf(to), (own.get(partOf(to)) ?? 0) + 1);
    counts.set(old, own);
  }
  return new Map([...counts].map(([old, own]) => [old, [...own].sort((a, b) => b[1] - a[1])[0]![0]]));
}

function unique(texts: readonly string[]): string[] {
  return [...new Set(texts)];
}
