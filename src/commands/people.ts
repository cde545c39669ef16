import { createHash, timingSafeEqual } from 'node:crypto';
import type { PersonRecord } from '../format/people.ts';
import { dayOf } from '../model/day.ts';
import { CatalogError } from '../model/errors.ts';
import { nameAndAddress } from '../model/person.ts';
import type { Catalog } from '../store/open.ts';
import { changePeople, readPeople } from '../store/people.ts';
import type { Ports } from './ports/ports.ts';

/** Somebody whose name stands under what they decide. */
export interface Person {
  readonly name: string;
  readonly address: string;
}

/** A person with the key of the token that they showed: its hash, which tells nobody the token. */
export interface KnownPerson extends Person {
  readonly key: string;
  /** Whether the token allows to publish. */
  readonly publishes?: true;
}

/** Who may sign in. */
export interface PeopleSource {
  /** The person whose token this is; undefined for one that was never issued, or that was revoked. */
  find(token: string): Promise<KnownPerson | undefined>;
  /** Whether a token found earlier still holds. */
  holds(key: string): Promise<boolean>;
}

const TOKEN_BYTES = 32;

/** A token of 256 random bits, so that no slow hash is needed to keep it from being guessed. */
export function newToken(ports: Ports): string {
  return `fp-${Buffer.from(ports.random(TOKEN_BYTES)).toString('base64url')}`;
}

export const keyOf = (token: string): string => createHash('sha256').update(token.trim()).digest('hex');

/** `Name <address>` as two fields; throws BadArgument where either is missing. */
export function readPerson(text: string): Person {
  const who = nameAndAddress(text);
  if (who?.address) return who;
  throw new CatalogError('BadArgument', `${JSON.stringify(text)} names nobody; write it as "Name <address>".`);
}

export const writtenAs = ({ name, address }: Person): string => `${name} <${address}>`;

/** Gives a person a token. It is returned this once; the catalog keeps its hash only. */
export async function issueToken(
  ports: Ports,
  catalog: Catalog,
  who: Person,
  { publishes = false }: { readonly publishes?: boolean } = {},
): Promise<string> {
  const token = newToken(ports);
  const may = publishes ? { publishes } : {};
  const record: PersonRecord = { ...who, token: keyOf(token), created: dayOf(ports.now()), ...may };
  await changePeople(catalog, people => {
    const other = people.find(p => sameAddress(p, who) && p.name !== who.name && p.revoked === undefined);
    if (other) {
      throw new CatalogError(
        'BadArgument',
        `${who.address} is the address of ${other.name} already; give another one, or revoke that first with: fishplate people revoke ${other.address}`,
      );
    }
    return [...people, record];
  });
  return token;
}

/** Revokes every token of an address. Sessions begun with them end at their next request. */
export async function revokeTokens(ports: Ports, catalog: Catalog, address: string): Promise<number> {
  let revoked = 0;
  await changePeople(catalog, people => {
    const of = people.filter(p => sameAddress(p, { address }) && p.revoked === undefined);
    revoked = of.length;
    if (revoked === 0) {
      const known = [...new Set(people.filter(p => p.revoked === undefined).map(p => p.address))];
      throw new CatalogError(
        'BadArgument',
        `${address} has no token${known.length > 0 ? `; name one of: ${known.join(', ')}.` : '; nobody has one. Give one with: fishplate people add "Name <address>"'}`,
      );
    }
    return people.map(p => (of.includes(p) ? { ...p, revoked: dayOf(ports.now()) } : p));
  });
  return revoked;
}

/** The people of a catalog, read anew each time: a token revoked while a viewer runs lets nobody in any more. */
export function peopleOf(catalog: Catalog): PeopleSource {
  return {
    find: async token => findKey(await readPeople(catalog), keyOf(token)),
    holds: async key => findKey(await readPeople(catalog), key) !== undefined,
  };
}

/** One person with one token, for as long as a command runs. */
export function onePerson(who: Person, token: string): PeopleSource {
  const people = [{ ...who, token: keyOf(token) }];
  return {
    find: async shown => findKey(people, keyOf(shown)),
    holds: async key => findKey(people, key) !== undefined,
  };
}

/** Compares with every record in full, so that the time taken tells nothing of how near a guess came. */
function findKey(people: readonly Omit<PersonRecord, 'created'>[], key: string): KnownPerson | undefined {
  const asked = Buffer.from(key, 'hex');
  let found: KnownPerson | undefined;
  for (const { name, address, token, revoked, publishes } of people) {
    const may = publishes ? { publishes } : {};
    if (timingSafeEqual(Buffer.from(token, 'hex'), asked) && revoked === undefined) {
      found = { name, address, key, ...may };
    }
  }
  return found;
}

const sameAddress = (a: Pick<Person, 'address'>, b: Pick<Person, 'address'>) =>
  a.address.toLowerCase() === b.address.trim().toLowerCase();
