import { commentsFolder, parseComments } from '../../format/comment-files.ts';
import type { Circulation, CommentRecord } from '../../model/comment.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import { locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import { nearestNames } from '../../text/nearest.ts';
import type { Ports } from '../ports/ports.ts';
import { allHeaders } from '../reading/read-crosswalk.ts';

/** All comments on a draft or an edition, by code, and how it was sent out. */
export interface ReadComments {
  readonly edition: string;
  readonly records: readonly CommentRecord[];
  readonly circulations: readonly Circulation[];
  readonly findings: readonly Finding[];
}

export async function readComments(catalog: Catalog, edition: string): Promise<ReadComments> {
  const { name } = await locate(catalog, edition);
  return { edition: name, ...parseComments(await readBeside(catalog, commentsFolder(name))) };
}

/**
 * The edition that a command means where it names none: the only draft, else the only edition with comments.
 *
 * @throws CatalogError BadArgument where that is not one
 */
export async function commentedEdition(catalog: Catalog, asked: string | undefined): Promise<string> {
  if (asked !== undefined) return (await locate(catalog, asked)).name;
  const names: string[] = [];
  for (const { name } of await allHeaders(catalog)) {
    if ((await readBeside(catalog, commentsFolder(name))).size > 0) names.push(name);
  }
  if (names.length === 1) return names[0]!;
  throw new CatalogError(
    'BadArgument',
    names.length === 0
      ? 'No edition has comments yet; read some with: fishplate comments read FORM --edition DRAFT'
      : `Several editions have comments; add --edition with one of: ${names.join(', ')}.`,
    { names },
  );
}

/** The comment with a code, in whatever case it is typed. */
export function commentCoded({ records, edition }: ReadComments, code: string): CommentRecord {
  const found = records.find(r => r.code.toLowerCase() === code.toLowerCase());
  if (found) return found;
  const near = nearestNames(
    code.toUpperCase(),
    records.map(r => r.code),
  );
  throw new CatalogError(
    'UnknownItem',
    `There is no comment ${code} on ${edition}${near.length > 0 ? `; the nearest are ${near.join(', ')}.` : '; list them with: fishplate comments list'}`,
    { code, near },
  );
}

/** Who writes, as records name people. */
export function authorText({ author: { name, email } }: Ports): string {
  return email === '' ? name : `${name} <${email}>`;
}
