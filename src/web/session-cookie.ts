import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Request, Response } from 'express';
import type { Address } from './listen.ts';

/** The cookie by which a browser is known again, and the secret that ties forms to it. */
export interface SessionCookie {
  idOf(request: Request): string | undefined;
  hand(response: Response, id: string): void;
  clear(response: Response): void;
  /** What a form of this browser carries. */
  csrfOf(id: string): string;
  /** Whether a form carries what a page for this browser gave it. */
  isOurs(request: Request, csrf: string): boolean;
}

/** Every id of ours is 32 bytes in base64url; anything else in the cookie is not one. */
const ID = /^[A-Za-z0-9_-]{43}$/;

export function sessionCookie(address: Address): SessionCookie {
  // Cookies know no ports: without it in the name, two viewers on one machine would sign each other out.
  const name = `fishplate-${new URL(address.origin).port || '80'}`;
  const secure = address.origin.startsWith('https:');
  const secret = randomBytes(32);
  const csrfOf = (id: string) => createHmac('sha256', secret).update(id).digest('base64url');
  const idOf = (request: Request) => readCookie(request.headers.cookie, name);
  return {
    idOf,
    hand: (response, id) => {
      response.cookie(name, id, { httpOnly: true, sameSite: 'strict', path: '/', secure });
    },
    clear: response => {
      response.clearCookie(name, { path: '/' });
    },
    csrfOf,
    isOurs: (request, csrf) => {
      const id = idOf(request);
      return id !== undefined && isEqual(csrf, csrfOf(id));
    },
  };
}

function readCookie(header: string | undefined, name: string): string | undefined {
  for (const pair of (header ?? '').split(';')) {
    const at = pair.indexOf('=');
    if (pair.slice(0, at).trim() === name && ID.test(pair.slice(at + 1).trim())) return pair.slice(at + 1).trim();
  }
  return undefined;
}

/** Hashed first: timingSafeEqual wants equal lengths, and a comparison of lengths would tell one. */
function isEqual(a: string, b: string): boolean {
  const hash = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(hash(a), hash(b));
}
