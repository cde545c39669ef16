import type { EditionDates, EditionHeader } from '../model/edition.ts';
import { dateWords } from '../model/said-words.ts';
import { fateSymbols } from '../pictures/fate-drawing.ts';
import type { Publication } from './publication.ts';
import type { SiteNames } from './site-names.ts';

/** What every page of a bundle says around its own content. */
export interface BundleFrame {
  readonly title: string;
  readonly publisher: string;
  readonly language: string;
  readonly caution: string;
  readonly edition: string;
  readonly editionLine: string;
  readonly compared: string;
  readonly older: readonly { readonly edition: string; readonly file: string }[];
  /** Other pieces of the bundle that are written with it. */
  readonly links: readonly { readonly word: string; readonly href: string }[];
  readonly symbols: string;
}

export function bundleFrame(publication: Publication, names: SiteNames, links: BundleFrame['links']): BundleFrame {
  const { joint, line } = publication;
  const { title, publisher = '', language, caution = '' } = joint.to.settings;
  return {
    title,
    publisher,
    language,
    caution,
    edition: joint.to.header.name,
    editionLine: editionLine(joint.to.header),
    compared: `Compared with ${joint.from.header.name}`,
    older: line
      .slice(0, -1)
      .map((e, at) => ({ edition: e.index.header.name, file: names.edition(at) }))
      .reverse(),
    links,
    symbols: fateSymbols(),
  };
}

/** `Edition 2024, in force from 1 July 2024`; of a draft that it is one. */
export function editionLine({ name, erratum, state, dates }: EditionHeader): string {
  const which = `${state === 'draft' ? 'Draft' : 'Edition'} ${name}${erratum > 0 ? `, erratum ${erratum}` : ''}`;
  if (dates.effective) return `${which}, in force from ${dateWords(dates.effective)}`;
  return dates.published ? `${which}, published ${dateWords(dates.published)}` : which;
}

const DATE_WORDS: readonly (readonly [key: keyof EditionDates, words: string])[] = [
  ['commentOpens', 'comments from'],
  ['commentCloses', 'comments until'],
  ['published', 'published'],
  ['effective', 'in force from'],
  ['transitionEnds', 'transition until'],
  ['nextReview', 'next review'],
];

/** The dates that the edition's header tells, in their order; never one of the clock. */
export function datesIn(dates: EditionDates): { readonly what: string; readonly when: string }[] {
  return DATE_WORDS.flatMap(([key, what]) => (dates[key] ? [{ what, when: dateWords(dates[key]) }] : []));
}
