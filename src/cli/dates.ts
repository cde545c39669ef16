import { CatalogError } from '../model/errors.ts';

/** A calendar date as people type it for us: year-month-day and no other order, since 03/04 is two dates. */
export function isoDate(text: string): string {
  const parsed = new Date(`${text}T00:00:00Z`);
  if (/^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(parsed.getTime()) && parsed.toISOString().startsWith(text))
    return text;
  throw new CatalogError('BadArgument', `${text} is not a date; write it as year-month-day, for example 2024-07-01.`);
}
