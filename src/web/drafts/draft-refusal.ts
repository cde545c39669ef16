import { CatalogError } from '../../model/errors.ts';

/** Whether an error says what somebody can do otherwise on the page that they came from. */
export function isRefusal(error: unknown): error is CatalogError {
  return error instanceof CatalogError && ['BadArgument', 'UnknownItem', 'UnknownNumber'].includes(error.code);
}

/** A refusal without what only somebody at a command line can do next. */
export function inPageWords({ message }: CatalogError): string {
  return message.replace(/[;,] [^;,]*\bwith: fishplate [^.]*\.?$/, '.').replace(/; (?:add|give) --.*$/, '.');
}
