import { InvalidArgumentError } from 'commander';
import { ITEM_COLUMNS } from '../commands/importing/item-columns.ts';

/** `number=Ref,text=Wording` as role → header. A comma inside a header stays: what follows it is no `ROLE=`. */
export function toldItemColumns(list: string): ReadonlyMap<string, string> {
  const told = new Map<string, string>();
  for (const pair of list.split(/,(?=[^,=]*=)/)) {
    const at = pair.indexOf('=');
    const role = pair.slice(0, Math.max(at, 0)).trim();
    if (!ITEM_COLUMNS.some(known => known === role))
      throw new InvalidArgumentError(`Write ROLE=HEADER with one of: ${ITEM_COLUMNS.join(', ')}.`);
    told.set(role, pair.slice(at + 1).trim());
  }
  return told;
}
