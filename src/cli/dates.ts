import { InvalidArgumentError } from 'commander';
import { isDay } from '../model/day.ts';
import { CatalogError } from '../model/errors.ts';

/** A calendar date as people type it for us. */
export function isoDate(text: string): string {
  if (isDay(text)) return text;
  throw new CatalogError('BadArgument', `${text} is not a date; write it as year-month-day, for example 2024-07-01.`);
}

/** The same where commander reads the option and names it in its sentence. */
export function dateOption(text: string): string {
  if (isDay(text)) return text;
  throw new InvalidArgumentError('Write it as year-month-day, for example 2024-07-01.');
}
