import { randomBytes } from 'node:crypto';
import type { KnownPerson } from '../commands/people.ts';

const LASTS_MS = 12 * 60 * 60 * 1000;
const MOST = 1000;

/** Who is signed in, by a random session id; in memory only, so that a restart signs everybody out. */
export class Sessions {
  readonly #people = new Map<string, { readonly person: KnownPerson; readonly until: number }>();
  readonly #now: () => Date;

  constructor(now: () => Date) {
    this.#now = now;
  }

  /** Begins a session under a new id: an id that somebody planted in the browser beforehand is worth nothing. */
  begin(person: KnownPerson): string {
    const id = newSessionId();
    // The oldest goes first; a map keeps the order in which its entries came.
    if (this.#people.size >= MOST) this.#people.delete(this.#people.keys().next().value!);
    this.#people.set(id, { person, until: this.#now().getTime() + LASTS_MS });
    return id;
  }

  personOf(id: string): KnownPerson | undefined {
    const session = this.#people.get(id);
    if (session === undefined || session.until > this.#now().getTime()) return session?.person;
    this.end(id);
    return undefined;
  }

  end(id: string): void {
    this.#people.delete(id);
  }
}

export const newSessionId = (): string => randomBytes(32).toString('base64url');
