import { CatalogError } from '../model/errors.ts';

const SHOWN = 10;

/** @param known the names of tables that there are */
export function noTable(name: string, known: readonly string[]): CatalogError {
  const more = known.length > SHOWN ? ` and ${known.length - SHOWN} more` : '';
  const there = known.length === 0 ? 'it has none at all' : `it has ${known.slice(0, SHOWN).join(', ')}${more}`;
  return new CatalogError('BadTable', `The database has no table ${name}; ${there}; name one with --table.`, { name });
}

/** @param kind what the engine calls it */
export function noKey(name: string, kind: string): CatalogError {
  const sentence =
    kind === 'table'
      ? `${name} has no primary key, so nothing tells its lines apart for good; give it one and run again.`
      : `${name} is a ${kind} and no table; name the table behind it with --table.`;
  return new CatalogError('BadTable', sentence, { name, kind });
}
