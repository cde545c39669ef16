import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { FATES, type Fate } from '../../model/crosswalk.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { capital, counted, type MarkWord, marksIn } from '../../model/said-words.ts';
import {
  briefingLink,
  crosswalkCsvLink,
  crosswalkLink,
  linesLink,
  lossesLink,
  placeLink,
  type Query,
} from '../links.ts';
import {
  type CrosswalkFilter,
  type FilterOptions,
  filterLines,
  filterOptions,
  filterQuery,
} from './crosswalk-filter.ts';
import { type CrosswalkPicture, crosswalkPicture } from './crosswalk-picture.ts';
import { changeSentence } from './home-page.ts';

export interface CrosswalkPage {
  readonly from: string;
  readonly to: string;
  readonly sentence: string;
  readonly over: string;
  /** Whether the whole is shown: its picture and counts, above the first lines. */
  readonly whole: boolean;
  readonly wholeHref: string;
  readonly picture: CrosswalkPicture;
  readonly counted: string;
  readonly fates: readonly Fate[];
  readonly parts: readonly { readonly name: string; readonly href: string; readonly cells: readonly Cell[] }[];
  readonly all: readonly Cell[];
  readonly fresh: string;
  readonly findings: readonly { readonly message: string; readonly href: string }[];
  readonly moreFindings: number;
  readonly options: FilterOptions;
  readonly filtered: boolean;
  readonly action: string;
  readonly shown: string;
  readonly lines: readonly Line[];
  readonly csvHref: string;
  readonly pages: { readonly before?: string; readonly after?: string; readonly said: string };
  /** Empty where it is read backwards. */
  readonly lossesHref: string;
  /** The same as slides; empty where there are none. */
  readonly briefingHref: string;
  readonly turned: { readonly word: string; readonly href: string };
}

interface Cell {
  readonly n: number;
  readonly href: string;
}

interface Line {
  readonly row: number;
  readonly fate: Fate;
  readonly old?: End;
  readonly new?: End;
  readonly marks: readonly MarkWord[];
  readonly reason: string;
  readonly note: string;
}

interface End {
  readonly number: string;
  readonly title: string;
  readonly href: string;
  readonly part: boolean;
}

/** Some ten screens of a phone. */
const A_PAGE = 50;
const MOST_FINDINGS = 50;

/** The crosswalk of two editions: the sentence, the picture, the counts, and the lines that pass the filter. */
export async function crosswalkPage(
  published: PublishedCatalog,
  from: string,
  to: string,
  filter: CrosswalkFilter,
  asked: number,
): Promise<CrosswalkPage> {
  const crosswalk = await published.crosswalk(from, to);
  if (from === to)
    throw new CatalogError('NoPath', `${from} is compared with itself; name two editions.`, {
      known: published.headers.map(h => h.name),
    });
  const { joint, statistics: s } = crosswalk;
  const found = filterLines(crosswalk, filter);
  const pages = Math.max(1, Math.ceil(found.length / A_PAGE));
  const page = Math.min(asked, pages);
  const query = filterQuery(filter);
  const atPage = (n: number) => `${crosswalkLink(from, to, [...query, ['page', String(n)]])}#lines`;
  const fates = FATES.filter(f => f !== 'new' && (f !== 'unaccounted' || s.whole.fates.unaccounted > 0)) as Exclude<
    Fate,
    'new'
  >[];
  const kind: Query = s.counted === 'requirements' ? [['kind', 'requirements']] : [];
  const cell = (n: number, fate: Fate, part?: string): Cell => ({
    n,
    href: linesLink([['fate', fate], ...(part ? [['part', part] as const] : []), ...kind]),
  });
  const partIds = new Map(joint.from.entries.filter(e => e.parent === null).map(e => [`${e.number} ${e.title}`, e.id]));
  return {
    from,
    to,
    sentence: changeSentence(crosswalk),
    over: crosswalk.path.length > 2 ? `Read over ${crosswalk.path.slice(1, -1).join(', ')}, step by step.` : '',
    whole: query.length === 0 && page === 1,
    wholeHref: crosswalkLink(from, to),
    picture: crosswalkPicture(crosswalk),
    counted: capital(s.counted),
    fates,
    parts: s.parts.map(p => {
      const key = `old:${partIds.get(`${p.number} ${p.title}`) ?? ''}`;
      return {
        name: `${p.number} ${p.title}`.trim(),
        href: linesLink([['part', key]]),
        cells: fates.map(fate => cell(p.fates[fate], fate, key)),
      };
    }),
    all: fates.map(fate => cell(s.whole.fates[fate], fate)),
    fresh: s.newByPart.map(p => `${`${p.number} ${p.title}`.trim()} ${p.new}`).join(', '),
    findings: crosswalk.findings.slice(0, MOST_FINDINGS).map(f => ({
      message: f.message,
      href: joint.old.get(f.subject) ? placeLink(from, joint.old.get(f.subject)!) : '',
    })),
    moreFindings: Math.max(0, crosswalk.findings.length - MOST_FINDINGS),
    options: filterOptions(crosswalk, filter),
    filtered: query.length > 0,
    action: `${crosswalkLink(from, to)}#lines`,
    shown: `${counted(found.length, 'line')}${query.length > 0 ? ` of ${crosswalk.lines.length.toLocaleString('en')}` : ''}`,
    lines: found.slice((page - 1) * A_PAGE, page * A_PAGE).map(l => ({
      row: l.row,
      fate: l.fate,
      ...(l.from ? { old: endOf(from, l.from) } : {}),
      ...(l.to ? { new: endOf(to, l.to) } : {}),
      marks: marksIn(l),
      reason: l.reason,
      note: l.note,
    })),
    csvHref: crosswalkCsvLink(from, to, query),
    pages: {
      ...(page > 1 ? { before: atPage(page - 1) } : {}),
      ...(page < pages ? { after: atPage(page + 1) } : {}),
      said: pages > 1 ? `Page ${page} of ${pages}` : '',
    },
    briefingHref: crosswalk.backwards ? '' : briefingLink(from, to),
    lossesHref: crosswalk.backwards ? '' : lossesLink(from, to),
    turned: { word: `Read from ${to} to ${from}`, href: crosswalkLink(to, from) },
  };
}

const endOf = (edition: string, entry: Entry): End => ({
  number: entry.number,
  title: entry.title,
  href: placeLink(edition, entry),
  part: !entry.obliges,
});
