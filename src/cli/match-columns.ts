import { InvalidArgumentError } from 'commander';

const ROLES = ['number', 'level', 'parent', 'title', 'text', 'id', 'purpose', 'outcome', 'applies_to'];

/** `number=Ref,text=Wording` as role → header. */
export function toldColumns(list: string): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  for (const pair of list.split(',')) {
    const at = pair.indexOf('=');
    const role = pair.slice(0, Math.max(at, 0)).trim();
    if (!ROLES.includes(role)) throw new InvalidArgumentError(`Write ROLE=HEADER with one of: ${ROLES.join(', ')}.`);
    told.set(role, pair.slice(at + 1).trim());
  }
  return told;
}
