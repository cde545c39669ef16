import type { PublishedCatalog, PublishedEdition } from '../commands/reading/published-catalog.ts';
import { dayOf } from '../model/day.ts';
import { dateWords } from '../model/said-words.ts';
import { crosswalkLink, editionLink } from './links.ts';
import { signInLink } from './sign-in.ts';

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
  /** Who is signed in; empty for a reader. */
  readonly person: string;
  /** Where a name is given, and changed; empty in a viewer for reading only. */
  readonly signIn: string;
  /** Whether a device may keep pages for when there is no network. */
  readonly offline: boolean;
}

export interface SiteRequest {
  /** Full address of the page. */
  readonly address: string;
  readonly now: Date;
  readonly person: string | undefined;
  /** Where to come back to after signing in. */
  readonly path: string;
  readonly writes: boolean;
  readonly offline: boolean;
}

export function siteOf(
  published: Pick<PublishedCatalog, 'headers'>,
  newest: PublishedEdition | undefined,
  { address, now, person = '', path, writes, offline }: SiteRequest,
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
  const readOn = dateWords(dayOf(now));
  const signIn = writes ? signInLink(path) : '';
  return { title, publisher, language, caution, links, address, readOn, person, signIn, offline };
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
