import type { PublishedCatalog, PublishedEdition } from '../commands/published-catalog.ts';
import { dateWords } from '../model/said-words.ts';
import { crosswalkLink, editionLink } from './links.ts';

/** What every page says around its own content. */
export interface Site {
  readonly title: string;
  readonly publisher: string;
  readonly language: string;
  readonly caution: string;
  readonly links: readonly { readonly word: string; readonly href: string }[];
  /** Full address of the page, for paper. */
  readonly address: string;
  readonly readOn: string;
}

export function siteOf(
  published: Pick<PublishedCatalog, 'headers'>,
  newest: PublishedEdition | undefined,
  address: string,
  now: Date,
): Site {
  const { title = 'Catalog', publisher = '', language = 'en', caution = '' } = newest?.settings ?? {};
  const name = newest?.header.name;
  const before = newest?.header.replaces;
  const links =
    name === undefined
      ? []
      : [
          { word: `Edition ${name}`, href: editionLink(name) },
          ...(before && published.headers.some(h => h.name === before)
            ? [{ word: `${before} to ${name}`, href: crosswalkLink(before, name) }]
            : []),
        ];
  return { title, publisher, language, caution, links, address, readOn: dateWords(now.toISOString().slice(0, 10)) };
}

/** `Edition 2024, in force from 1 July 2024`. */
export function editionLine({ header }: Pick<PublishedEdition, 'header'>): string {
  const { effective, published } = header.dates;
  const erratum = header.erratum > 0 ? `, erratum ${header.erratum}` : '';
  const date = effective
    ? `, in force from ${dateWords(effective)}`
    : published
      ? `, published ${dateWords(published)}`
      : '';
  return `Edition ${header.name}${erratum}${date}`;
}
