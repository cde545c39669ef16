import { CatalogError, type ErrorCode } from '../model/errors.ts';
import { editionLink, numberLink } from './links.ts';

/** What went wrong, as a page that ends in the next step. */
export interface ErrorPage {
  readonly status: number;
  readonly heading: string;
  readonly sentence: string;
  readonly steps: readonly { readonly word: string; readonly href: string }[];
}

const NOT_FOUND: readonly ErrorCode[] = ['UnknownEdition', 'UnknownNumber', 'UnknownItem', 'NoPath'];

export function errorPage(error: unknown): ErrorPage {
  if (error instanceof CatalogError) {
    const status = NOT_FOUND.includes(error.code) ? 404 : error.code === 'BadArgument' ? 400 : 500;
    return {
      status,
      heading: status === 404 ? 'Not here' : status === 400 ? 'This cannot be asked' : 'The catalog cannot be read',
      sentence: error.message,
      steps: stepsOf(error),
    };
  }
  const status = (error as { status?: unknown } | undefined)?.status;
  if (status === 400 || error instanceof URIError) {
    return {
      status: 400,
      heading: 'This cannot be asked',
      sentence: 'The address is not written as addresses are. Go back, or start from the first page.',
      steps: [],
    };
  }
  return {
    status: 500,
    heading: 'A defect',
    sentence:
      'The viewer failed at this page. Nothing in the catalog was changed. Please report the address and what is printed where the viewer was started.',
    steps: [],
  };
}

export const noSuchPage: ErrorPage = {
  status: 404,
  heading: 'Not here',
  sentence: 'There is no such page. Look for a number or for words, or start from the first page.',
  steps: [],
};

function stepsOf({ code, data }: CatalogError) {
  const list = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);
  const { edition } = data;
  if (code === 'UnknownNumber' && typeof edition === 'string') {
    return list(data.nearest).map(number => ({ word: `${edition} ${number}`, href: numberLink(edition, number) }));
  }
  return list(data.known).map(name => ({ word: `Edition ${name}`, href: editionLink(name) }));
}
