import { CatalogError } from '../model/errors.ts';

const SHOWN = 10;

/** Tables that a run leaves beside theirs, with or without a schema in front. */
const OURS = /^(?:[^.]*\.)?fishplate_|_carried(?:_(?:outcome|heir|case|rule|answer|work|outcome_work|duty|fold|job))?$/;

/** @param known the names of tables that there are; ours are none that anybody means */
export function noTable(name: string, known: readonly string[]): CatalogError {
  const carried = known.some(n => /(?:^|\.)fishplate_runs$/.test(n));
  const theirs = carried ? known.filter(n => !OURS.test(n)) : known;
  const more = theirs.length > SHOWN ? ` and ${theirs.length - SHOWN} more` : '';
  const there = theirs.length === 0 ? 'it has none at all' : `it has ${theirs.slice(0, SHOWN).join(', ')}${more}`;
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
