import type { Request } from 'express';
import type { KnownPerson, Person } from '../commands/people.ts';

/** A hidden field that every form must carry. */
export interface FormField {
  readonly name: string;
  readonly value: string;
}

/** What is known of the reader of one request. */
export interface SignedIn {
  readonly person: KnownPerson | undefined;
  readonly csrf: () => FormField;
}

const READERS = new WeakMap<Request, SignedIn>();

/** Thrown by `requirePerson`; `askToSignIn` answers it with the form. */
export class NobodySignedIn extends Error {}

/** Says who asks; the first thing that is done with a request. */
export function knowReader(request: Request, known: SignedIn): void {
  READERS.set(request, known);
}

/** Who is signed in; undefined for a reader. */
export function personOf(request: Request): Person | undefined {
  const person = READERS.get(request)?.person;
  return person && { name: person.name, address: person.address };
}

/** Whether whoever is signed in showed a token that allows to publish. */
export function mayPublish(request: Request): boolean {
  return READERS.get(request)?.person?.publishes === true;
}

/** Who is signed in. Throws NobodySignedIn for a reader. */
export function requirePerson(request: Request): Person {
  const person = personOf(request);
  if (person === undefined) throw new NobodySignedIn('Sign in first.');
  return person;
}

/** The hidden field for a form on the page that answers this request. Call it before anything is sent. */
export function csrfField(request: Request): FormField {
  const state = READERS.get(request);
  if (state === undefined) throw new Error('signIn() has to stand before the page that asks for a form');
  return state.csrf();
}
