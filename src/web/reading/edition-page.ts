import type { PublishedCatalog, PublishedEdition } from '../../commands/reading/published-catalog.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Item, ItemId } from '../../model/item.ts';
import { counted, inWords, MOMENT_WORDS } from '../../model/said-words.ts';
import { typeName } from '../../model/settings.ts';
import { anchorOf, editionLink, partLink, placeLink, type Query } from '../links.ts';
import { editionLine } from '../site.ts';
import { type Retired, retiredNeighbours } from './retired-neighbours.ts';

export interface EditionPage {
  readonly edition: string;
  readonly editionLine: string;
  readonly heading: string;
  readonly sentence: string;
  readonly outline: readonly OutlineLine[];
  /** Empty where the text stands on the pages of the parts. */
  readonly text: readonly TextBlock[];
  readonly types: readonly { readonly id: string; readonly name: string; readonly chosen: boolean }[];
  readonly type: string;
  readonly action: string;
  readonly whole: boolean;
  readonly wholeHref: string;
  readonly parts: { readonly before?: Named; readonly after?: Named; readonly up?: Named };
}

interface Named {
  readonly word: string;
  readonly href: string;
}

export interface OutlineLine extends Named {
  readonly number: string;
  readonly level: number;
  readonly size: string;
}

export interface TextBlock {
  readonly anchor: string;
  readonly number: string;
  readonly title: string;
  readonly href: string;
  /** Level of its heading, 2 to 6. */
  readonly heading: number;
  readonly text: string;
  readonly purpose: string;
  readonly outcome: string;
  readonly types: string;
  readonly verified: readonly string[];
  readonly caution: string;
  readonly references: readonly string[];
  readonly retired: readonly Retired[];
}

export interface EditionRequest {
  readonly type?: string | undefined;
  readonly part?: ItemId | undefined;
  /** All parts in one page, for paper. */
  readonly whole?: boolean;
}

/** Up to so many items the text stands under the outline; beyond, each part has a page. */
const SMALL = 120;

/** An edition's outline and text, for all installation types or for one. */
export async function editionPage(
  published: PublishedCatalog,
  name: string,
  request: EditionRequest,
): Promise<EditionPage> {
  const edition = await published.edition(name);
  const { settings, places, entries } = edition;
  const type = settings.installationTypes.find(t => t.id === request.type)?.id;
  if (request.type !== undefined && type === undefined) throw unknownType(edition, request.type);
  const shown = entries.filter(e => type === undefined || places.types(e.id).includes(type));
  const part = request.part === undefined ? undefined : partOf(edition, request.part);
  const query: Query = type === undefined ? [] : [['type', type]];
  const inPart = part === undefined ? shown : shown.filter(e => places.part(e.id) === part);
  const whole = part !== undefined || request.whole === true || entries.length <= SMALL;
  const items = await published.items(name);
  const retired = whole ? await retiredNeighbours(published, edition) : new Map<ItemId, Retired[]>();
  const tops = places.children(null);
  const at = part ? tops.indexOf(part) : -1;
  const neighbour = (entry: Entry | undefined) =>
    entry && { word: `${entry.number} ${entry.title}`.trim(), href: partLink(name, entry.id, query) };
  const [before, after] = [neighbour(tops[at - 1]), part ? neighbour(tops[at + 1]) : undefined];
  const sizes = requirementsBelow(edition, inPart);
  return {
    edition: edition.header.name,
    editionLine: editionLine(edition),
    heading: part ? `${part.number} ${part.title}`.trim() : `Edition ${edition.header.name}`,
    sentence: sentenceOf(edition, inPart, type, part),
    outline: inPart
      .filter(e => e !== part && e.level <= settings.fileLevel && !e.obliges)
      .map(e => ({
        number: e.number,
        word: e.title,
        level: e.level - (part ? 1 : 0),
        size: (sizes.get(e.id) ?? 0) > 0 ? String(sizes.get(e.id)) : '',
        href: whole ? `#${anchorOf(e.id)}` : linkInPart(edition, e, query),
      })),
    text: whole
      ? inPart
          .filter(e => e !== part)
          .map(e => blockOf(edition, e, items.get(e.id)!, retired.get(e.id) ?? [], part ? 1 : 0))
      : [],
    types: settings.installationTypes.map(t => ({ id: t.id, name: t.name, chosen: t.id === type })),
    type: type === undefined ? '' : typeName(settings, type),
    action: part ? partLink(name, part.id) : editionLink(name),
    whole,
    wholeHref: editionLink(name, [...query, ['whole', 'yes']]),
    parts: {
      ...(before ? { before } : {}),
      ...(after ? { after } : {}),
      ...(part ? { up: { word: `Edition ${edition.header.name}`, href: editionLink(name, query) } } : {}),
    },
  };
}

function partOf({ places, header }: PublishedEdition, id: ItemId): Entry {
  const part = places.get(id);
  if (part && part.parent === null) return part;
  throw new CatalogError('UnknownItem', `Edition ${header.name} has no part ${id}; choose one from its outline.`, {
    id,
  });
}

function unknownType({ settings, header }: PublishedEdition, type: string): CatalogError {
  const known = settings.installationTypes.map(t => t.id);
  return new CatalogError(
    'BadArgument',
    `Edition ${header.name} has no installation type ${type}; ${known.length > 0 ? `use one of: ${known.join(', ')}.` : 'leave the type out.'}`,
  );
}

function linkInPart(edition: PublishedEdition, entry: Entry, query: Query): string {
  const part = edition.places.part(entry.id) ?? entry;
  const page = partLink(edition.header.name, part.id, query);
  return part === entry ? page : `${page}#${anchorOf(entry.id)}`;
}

function requirementsBelow({ places }: PublishedEdition, entries: readonly Entry[]): Map<ItemId, number> {
  const sizes = new Map<ItemId, number>();
  for (const entry of entries) {
    if (!entry.obliges) continue;
    for (const { id } of places.ancestors(entry.id)) sizes.set(id, (sizes.get(id) ?? 0) + 1);
  }
  return sizes;
}

function sentenceOf(
  edition: PublishedEdition,
  shown: readonly Entry[],
  type: string | undefined,
  part: Entry | undefined,
) {
  const requirements = shown.filter(e => e.obliges).length;
  const what = requirements > 0 ? counted(requirements, 'requirement') : counted(shown.length, 'item');
  const of = part ? `Part of edition ${edition.header.name}` : editionLine(edition);
  return `${of}: ${what}${type === undefined ? '' : ` that apply to ${typeName(edition.settings, type)}`}.`;
}

function blockOf(
  edition: PublishedEdition,
  entry: Entry,
  item: Item,
  retired: readonly Retired[],
  up: number,
): TextBlock {
  const { places, settings } = edition;
  // Types are said where they change; said at every requirement they would drown it.
  const types = places.types(entry.id);
  const above = entry.parent === null ? settings.installationTypes.map(t => t.id) : places.types(entry.parent);
  const same = types.length === above.length && types.every(t => above.includes(t));
  return {
    anchor: anchorOf(entry.id),
    number: entry.number,
    title: entry.title,
    href: placeLink(edition.header.name, entry, places.withNumber(entry.number).length > 1),
    heading: Math.min(6, Math.max(2, entry.level + 1 - up)),
    text: item.text ?? '',
    purpose: item.purpose ?? '',
    outcome: item.outcome ?? '',
    types: same ? '' : inWords(types.map(t => typeName(settings, t))),
    verified: (item.verified ?? []).map(v => MOMENT_WORDS[v.when] + (v.how ? `: ${v.how}` : '')),
    caution: item.caution ?? '',
    references: item.references ?? [],
    retired,
  };
}
