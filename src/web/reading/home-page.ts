import type { PublishedCatalog, PublishedCrosswalk } from '../../commands/reading/published-catalog.ts';
import type { Fate } from '../../model/crosswalk.ts';
import { counted, dateWords, inWords } from '../../model/said-words.ts';
import { crosswalkLink, editionLink } from '../links.ts';

export interface HomePage {
  readonly editions: readonly {
    readonly name: string;
    readonly href: string;
    readonly dates: string;
    readonly size: string;
    readonly from?: { readonly word: string; readonly href: string };
  }[];
  /** What can be looked up here, taken from the newest edition: `4.2.3, or Visible overflow`; absent where none is. */
  readonly example?: string;
  /** Whether files can be carried over here. */
  readonly carries: boolean;
  readonly newest?: { readonly sentence: string; readonly href: string; readonly word: string };
}

export async function homePage(published: PublishedCatalog, carries: boolean): Promise<HomePage> {
  const editions = [];
  for (const { name, replaces, dates } of [...published.headers].reverse()) {
    const { entries } = await published.edition(name);
    const requirements = entries.filter(e => e.obliges).length;
    editions.push({
      name,
      href: editionLink(name),
      size: requirements > 0 ? counted(requirements, 'requirement') : counted(entries.length, 'item'),
      dates: [
        dates.published && `published ${dateWords(dates.published)}`,
        dates.effective && `in force from ${dateWords(dates.effective)}`,
        dates.transitionEnds && `transition ends ${dateWords(dates.transitionEnds)}`,
      ]
        .filter(Boolean)
        .join(', '),
      ...(replaces === null
        ? {}
        : { from: { word: `What changed from ${replaces}`, href: crosswalkLink(replaces, name) } }),
    });
  }
  const newest = published.headers.at(-1);
  const entries = newest ? (await published.edition(newest.name)).entries : [];
  const shown = entries.find(e => e.obliges && e.number !== '' && e.title !== '');
  const example = shown ? { example: `${shown.number}, or ${shown.title}` } : {};
  if (!newest?.replaces) return { editions, ...example, carries: false };
  const crosswalk = await published.crosswalk(newest.replaces, newest.name);
  return {
    editions,
    ...example,
    carries,
    newest: {
      sentence: changeSentence(crosswalk),
      href: crosswalkLink(newest.replaces, newest.name),
      word: `The crosswalk from ${newest.replaces} to ${newest.name}`,
    },
  };
}

/** What an edition changed, in one sentence. */
export function changeSentence({ statistics: s }: Pick<PublishedCrosswalk, 'statistics'>): string {
  const one = s.counted.slice(0, -1);
  const told: readonly [Exclude<Fate, 'new'>, string][] = [
    ['kept', 'kept'],
    ['merged', 'merged'],
    ['split', 'split'],
    ['recombined', 'recombined'],
    ['withdrawn', 'withdrawn'],
    ['unaccounted', 'unaccounted for'],
  ];
  const fates = told
    .filter(([fate]) => s.whole.fates[fate] > 0)
    .map(([fate, word]) => `${s.whole.fates[fate]} ${word}`);
  const fresh = s.whole.new > 0 ? `; ${s.whole.new} ${s.whole.new === 1 ? 'is' : 'are'} new` : '';
  return `From ${s.from} to ${s.to}, ${counted(s.whole.old, one)} became ${s.whole.total.toLocaleString('en')}: ${inWords(fates)}${fresh}.`;
}
