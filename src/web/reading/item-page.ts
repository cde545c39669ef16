import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { MOMENT_WORDS } from '../../model/said-words.ts';
import { levelName, typeName } from '../../model/settings.ts';
import { editionLink, extendLink, itemLink, partLink, placeLink } from '../links.ts';
import { editionLine } from '../site.ts';
import { type Answer, answerOf } from './answer.ts';
import type { ItemJobs } from './item-jobs.ts';
import type { ItemLesson } from './item-lessons.ts';
import { type Life, lifeOf } from './item-life.ts';
import { type ItemLocal, itemLocal } from './item-local.ts';
import type { ItemNotes } from './item-notes.ts';
import { lineThrough } from './line-of-editions.ts';
import { type SideBySide, sideBySide } from './side-by-side.ts';

export interface ItemPage {
  readonly edition: string;
  readonly editionLine: string;
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly kind: string;
  readonly above: readonly { readonly word: string; readonly href: string }[];
  readonly answer: Answer;
  readonly text: string;
  readonly purpose: string;
  readonly outcome: string;
  readonly caution: string;
  readonly types: readonly string[];
  readonly verified: readonly { readonly when: string; readonly how: string }[];
  readonly references: readonly string[];
  readonly below: readonly { readonly number: string; readonly title: string; readonly href: string }[];
  readonly life: Life;
  /** Editions to compare with. */
  readonly others: readonly { readonly name: string; readonly chosen: boolean }[];
  readonly compared?: SideBySide;
  /** Which of both texts are shown. */
  readonly show: Shown;
  readonly shows: readonly { readonly word: string; readonly href: string; readonly chosen: boolean }[];
  /** Local rules and variances that touch it. */
  readonly local: readonly ItemLocal[];
  /** Lessons that cite it; absent where no lessons were given. */
  readonly lessons?: readonly ItemLesson[];
  /** Job lines that cite it; absent where no jobs were given, or none cites it. */
  readonly jobs?: ItemJobs;
  /** Absent in a viewer for reading only. */
  readonly notes?: ItemNotes;
  readonly idHref: string;
  /** Where the form for comparing leads. */
  readonly action: string;
}

/** Both texts with their changes marked, or one of them as it reads. */
export type Shown = 'marked' | 'old' | 'new';

export interface ItemRequest {
  /** The edition to compare with; the next or the one before where absent. */
  readonly beside?: string | undefined;
  readonly show?: string | undefined;
  /** Calendar date on which it is asked which local rules are in force. */
  readonly date: string;
}

/** The page of one item as it stands in an edition, beside what it is in another one. */
export async function itemPage(
  published: PublishedCatalog,
  name: string,
  entry: Entry,
  { beside, show: asked, date }: ItemRequest,
): Promise<ItemPage> {
  const edition = await published.edition(name);
  const { settings, places, header } = edition;
  const item = await published.item(name, entry.id);
  const line = lineThrough(published.headers, name);
  const at = line.indexOf(name);
  const other = beside ?? line[at + 1] ?? line[at - 1];
  if (other !== undefined && !line.includes(other)) {
    throw new CatalogError(
      'UnknownEdition',
      `${name} cannot be compared with ${other}; use one of: ${line.filter(e => e !== name).join(', ')}.`,
      { name: other, known: line },
    );
  }
  const compared =
    other === undefined || other === name ? undefined : await compare(published, line, name, other, entry);
  const part = places.part(entry.id) ?? entry;
  const action = placeLink(name, entry, places.withNumber(entry.number).length > 1);
  const show = asked === 'old' || asked === 'new' ? asked : 'marked';
  return {
    edition: header.name,
    editionLine: editionLine(edition),
    id: entry.id,
    number: entry.number,
    title: entry.title,
    kind: item.kind ?? levelName(settings, entry.level),
    above: [
      { word: `Edition ${header.name}`, href: editionLink(name) },
      ...[...places.ancestors(entry.id)].reverse().map(e => ({
        word: `${e.number} ${e.title}`.trim(),
        href: e.id === part.id ? partLink(name, e.id) : placeLink(name, e),
      })),
    ],
    answer: await answerOf(published, await published.trace(name, entry)),
    text: item.text ?? '',
    purpose: item.purpose ?? '',
    outcome: item.outcome ?? '',
    caution: item.caution ?? '',
    types: places.types(entry.id).map(type => typeName(settings, type)),
    verified: (item.verified ?? []).map(v => ({ when: MOMENT_WORDS[v.when], how: v.how ?? '' })),
    references: item.references ?? [],
    below: places.children(entry.id).map(e => ({ number: e.number, title: e.title, href: placeLink(name, e) })),
    life: await lifeOf(published, name, entry),
    local: await itemLocal(published, name, entry, date),
    others: line.filter(e => e !== name).map(e => ({ name: e, chosen: e === other })),
    ...(compared ? { compared } : {}),
    show,
    shows: compared ? waysToShow(compared, action, other!, show) : [],
    idHref: itemLink(entry.id),
    action,
  };
}

function waysToShow({ from, to, pairs }: SideBySide, action: string, other: string, show: Shown): ItemPage['shows'] {
  if (pairs.length === 0) return [];
  const ways = { marked: 'Both, changes marked', old: `${from} only`, new: `${to} only` };
  return (Object.keys(ways) as Shown[]).map(way => ({
    word: ways[way],
    href: `${extendLink(action, [['with', other], ...(way === 'marked' ? [] : [['show', way] as const])])}#beside`,
    chosen: way === show,
  }));
}

async function compare(
  published: PublishedCatalog,
  line: readonly string[],
  name: string,
  other: string,
  entry: Entry,
) {
  const forwards = line.indexOf(other) > line.indexOf(name);
  const crosswalk = await (forwards ? published.crosswalk(name, other) : published.crosswalk(other, name));
  return sideBySide(published, crosswalk, entry, forwards ? 'old' : 'new');
}

/** The newest edition that has an id; throws UnknownItem. */
export async function editionOfId(published: PublishedCatalog, id: string): Promise<string> {
  for (const { name } of [...published.headers].reverse()) {
    if ((await published.edition(name)).places.get(id)) return name;
  }
  throw new CatalogError(
    'UnknownItem',
    `No edition has an item with the id ${id}; look for it by its number or its words.`,
    { id },
  );
}
