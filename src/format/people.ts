import { z } from 'zod';
import { CatalogError } from '../model/errors.ts';

/** A token that was issued to a person. The token itself is kept nowhere: only its SHA-256, in hexadecimal. */
export interface PersonRecord {
  readonly name: string;
  readonly address: string;
  readonly token: string;
  /** Days, as 2024-02-01. */
  readonly created: string;
  readonly revoked?: string;
  /** Whether the person may publish from the viewer: the one step there that nobody can take back. */
  readonly publishes?: true;
}

const people = z.strictObject({
  people: z.array(
    z.strictObject({
      name: z.string().min(1).max(200),
      address: z.string().min(1).max(200),
      token: z.string().regex(/^[0-9a-f]{64}$/),
      created: z.iso.date(),
      revoked: z.iso.date().optional(),
      publishes: z.literal(true).optional(),
    }),
  ),
});

/** Throws BadCatalog where the file is not what we wrote: a token that cannot be read must let nobody in. */
export function parsePeople(text: string, path: string): PersonRecord[] {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    value = undefined;
  }
  const { success, data } = people.safeParse(value);
  if (success) {
    return data.people.map(({ revoked, publishes, ...rest }) => ({
      ...rest,
      ...(revoked === undefined ? {} : { revoked }),
      ...(publishes ? { publishes } : {}),
    }));
  }
  throw new CatalogError(
    'BadCatalog',
    `${path} is damaged, so nobody can sign in; remove it and give each person a new token with: fishplate people add "Name <address>"`,
    { path },
  );
}

export function writePeople(records: readonly PersonRecord[]): string {
  return `${JSON.stringify({ people: records }, null, 2)}\n`;
}
