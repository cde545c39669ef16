import { InvalidArgumentError } from 'commander';
import type { ToldColumns } from '../carryover/jobs/columns.ts';

const ROLES = ['number', 'type', 'state', 'job', 'date', 'title', 'edition'];

/** `number=Item` put to the columns told before. */
export function toldColumn(pair: string, known: ToldColumns): ToldColumns {
  const at = pair.indexOf('=');
  const role = pair.slice(0, Math.max(at, 0));
  if (!ROLES.includes(role)) throw new InvalidArgumentError(`Write ROLE=HEADER with one of: ${ROLES.join(', ')}.`);
  return { ...known, [role]: pair.slice(at + 1) };
}
