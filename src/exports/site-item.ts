import { isPair } from '../content/links/marks.ts';
import type { Fate } from '../model/crosswalk.ts';
import type { Entry } from '../model/edition.ts';
import type { ItemId } from '../model/item.ts';
import { dutySentence, inWords, MOMENT_WORDS, marksIn } from '../model/said-words.ts';
import { levelName, typeName } from '../model/settings.ts';
import { diffWords, type TextChange } from '../text/word-diff.ts';
import type { Publication } from './publication.ts';
import { anchorOf, type SiteNames } from './site-names.ts';

/** One item of the published edition as its page shows it: what it says, and where it comes from. */
export interface SiteItem {
  readonly anchor: string;
  /** Of the heading, 2 to 6. */
  readonly heading: number;
  readonly number: string;
  readonly title: string;
  readonly kind: string;
  readonly purpose: string;
  readonly text: string;
  readonly outcome: string;
  readonly caution: string;
  /** Empty where it applies to what the item above applies to. */
  readonly types: string;
  readonly verified: readonly string[];
  readonly references: readonly string[];
  readonly fate: Fate;
  readonly sources: readonly SiteSource[];
  /** Editions before the one compared with, oldest first. */
  readonly earlier: readonly { readonly edition: string; readonly items: readonly Place[] }[];
}

interface Place {
  readonly number: string;
  readonly title: string;
  readonly href: string;
}

export interface SiteSource extends Place {
  readonly edition: string;
  readonly marks: readonly string[];
  readonly duty: string;
  /** Word by word; empty where the text is the same. */
  readonly changes: readonly TextChange[];
}

export function siteItem(publication: Publication, names: SiteNames, entry: Entry): SiteItem {
  const { joint, newItems } = publication;
  const item = newItems.get(entry.id)!;
  const own = joint.new.types(entry.id);
  const above =
    entry.parent === null ? joint.to.settings.installationTypes.map(t => t.id) : joint.new.types(entry.parent);
  const differs = own.length !== above.length || own.some(t => !above.includes(t));
  return {
    anchor: anchorOf(entry.id),
    heading: Math.min(entry.level + 1, 6),
    number: entry.number,
    title: entry.title,
    kind: item.kind ?? levelName(joint.to.settings, entry.level),
    purpose: item.purpose ?? '',
    text: item.text ?? '',
    outcome: item.outcome ?? '',
    caution: item.caution ?? '',
    types: differs ? inWords(own.map(t => typeName(joint.to.settings, t))) : '',
    verified: (item.verified ?? []).map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : '')),
    references: item.references ?? [],
    fate: joint.fateOfNew(entry.id),
    sources: sourcesOf(publication, names, entry),
    earlier: earlierOf(publication, names, entry.id),
  };
}

function sourcesOf(publication: Publication, names: SiteNames, entry: Entry): SiteSource[] {
  const { joint, line, oldItems, newItems } = publication;
  const at = line.findIndex(e => e.index.header.name === joint.from.header.name);
  return joint
    .arriving(entry.id)
    .filter(isPair)
    .map(link => {
      const old = joint.old.get(link.from)!;
      const marks = publication.marks(link);
      const [a, b] = [oldItems.get(old.id)?.text ?? '', newItems.get(entry.id)?.text ?? ''];
      return {
        edition: joint.from.header.name,
        number: old.number,
        title: old.title,
        href: names.old(at, old.id),
        marks: marksIn(marks).map(m => m.word),
        duty: marks.wording === 'substantive' ? dutySentence(marks, t => typeName(joint.from.settings, t)) : '',
        changes: a === b ? [] : diffWords(a, b),
      };
    });
}

/** Where the item stood before the edition that is compared with, each step by its own links. */
function earlierOf({ line, joint }: Publication, names: SiteNames, id: ItemId): SiteItem['earlier'] {
  const stages: { edition: string; items: Place[] }[] = [];
  let now = new Set([id]);
  for (let at = line.length - 1; at > 0 && now.size > 0; at--) {
    const step = line[at]!.step!.joint;
    now = new Set([...now].flatMap(i => step.arriving(i).flatMap(l => (l.from === null ? [] : [l.from]))));
    const edition = step.from.header.name;
    if (edition === joint.from.header.name || now.size === 0) continue;
    const items = [...now].map(i => {
      const { number, title } = step.old.get(i)!;
      return { number, title, href: names.old(at - 1, i) };
    });
    stages.unshift({ edition, items });
  }
  return stages;
}
