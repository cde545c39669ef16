import { CatalogError } from '../model/errors.ts';

const REF = /^([0-9a-f]{40}) (refs\/\S+)$/;
const PEELED = /^\^[0-9a-f]{40}$/;

/**
 * The refs of a packed-refs file, name → object. A line that git would not write is refused, as native git refuses it:
 * to pass over it would make a published edition disappear without a word.
 *
 * @throws CatalogError BadCatalog, with the line.
 */
export function parsePackedRefs(text: string): Map<string, string> {
  const refs = new Map<string, string>();
  const lines = text.split('\n');
  // A file that was cut off ends in the middle of a line.
  if (lines.at(-1) !== '') throw damaged(lines.length);
  for (const [at, line] of lines.slice(0, -1).entries()) {
    const [, oid, name] = REF.exec(line) ?? [];
    if (name !== undefined) refs.set(name, oid!);
    else if (!line.startsWith('#') && !PEELED.test(line)) throw damaged(at + 1);
  }
  return refs;
}

/** The file without one ref, and without the line behind it that says what its tag names. */
export function withoutRef(text: string, ref: string): string {
  const lines = text.split('\n');
  const at = lines.findIndex(line => REF.exec(line)?.[2] === ref);
  if (at >= 0) lines.splice(at, lines[at + 1]?.startsWith('^') ? 2 : 1);
  return lines.join('\n');
}

function damaged(line: number): CatalogError {
  return new CatalogError(
    'BadCatalog',
    `The catalog's file packed-refs is damaged at line ${line}, so its editions cannot be told; restore that file from a backup, or push the editions again from a clone into a new catalog.`,
    { line },
  );
}
