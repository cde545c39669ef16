import type { Finding } from './finding.ts';

/** Why something could not be done. Each code has a recipe in DEVELOPERS.md only where the sentence is not enough. */
export type ErrorCode =
  | 'NotACatalog'
  | 'NotEmpty'
  | 'UnknownEdition'
  | 'UnknownNumber'
  | 'UnknownItem'
  | 'EditionExists'
  | 'NoPath'
  | 'BadTable'
  | 'BadCatalog'
  | 'BadArgument'
  | 'RowsNotPlaced'
  | 'RepositoryKind'
  | 'Busy'
  | 'Changed'
  | 'NoSuchFile'
  | 'BadFile'
  | 'WriteFailed'
  | 'OutputIsInput'
  | 'AlreadyCarried';

/**
 * Something that cannot be done, in one sentence that ends in what the reader can do next. The command line prints it
 * and exits with 2; the viewer shows it as a page. A defect is a plain `Error` instead and exits with 70.
 */
export class CatalogError extends Error {
  readonly code: ErrorCode;
  readonly data: Readonly<Record<string, unknown>>;
  readonly findings: readonly Finding[];

  constructor(
    code: ErrorCode,
    sentence: string,
    data: Readonly<Record<string, unknown>> = {},
    findings: readonly Finding[] = [],
  ) {
    super(sentence);
    this.name = 'CatalogError';
    this.code = code;
    this.data = data;
    this.findings = findings;
  }
}
