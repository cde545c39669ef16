import { type ErrorRequestHandler, type Request, type RequestHandler, type Response, Router } from 'express';
import type { PeopleSource, Person } from '../commands/people.ts';
import { formGuard } from './form-guard.ts';
import type { Address } from './listen.ts';
import { firstValue } from './query-values.ts';
import { type SessionCookie, sessionCookie } from './session-cookie.ts';
import { newSessionId, Sessions } from './sessions.ts';
import { csrfField, type FormField, knowReader, NobodySignedIn, personOf } from './signed-in.ts';

/*
 * GET a page with a form ─▶ cookie: a random id, field csrf: HMAC(id)        POST ─▶ formGuard ─▶ route
 *
 * The token is a field of one form, once; from then on the cookie's id stands for the person, in memory.
 */

export interface SignInParts {
  readonly address: Address;
  readonly source: PeopleSource;
  readonly now: () => Date;
  /** Shows the form that asks for a token. */
  readonly showSignIn: (request: Request, response: Response, page: SignInPage, status: number) => Promise<void>;
  /** Paths whose forms carry a file; only people with a name may send one. */
  readonly takesFiles?: (path: string) => boolean;
}

export interface SignInPage {
  /** Who is signed in already. */
  readonly person?: Person;
  readonly csrf: FormField;
  /** The path to go to afterwards. */
  readonly back: string;
  /** What went wrong with the last try; empty at the first. */
  readonly trouble: string;
}

const LONGEST_TOKEN = 200;

/**
 * Stands behind the guards and before all pages: knows who is signed in, lets forms of this viewer through and no
 * others, and adds /sign-in and /sign-out.
 */
export function signIn(parts: SignInParts): Router {
  const router = Router();
  const sessions = new Sessions(parts.now);
  const cookie = sessionCookie(parts.address);
  router.use(readerOf(parts.source, sessions, cookie));
  router.use(formGuard(cookie, parts.takesFiles ?? (() => false)));

  const show = (request: Request, response: Response, trouble: string, back: string, status: number) => {
    const person = personOf(request);
    const page = { ...(person ? { person } : {}), csrf: csrfField(request), back, trouble };
    return parts.showSignIn(request, response, page, status);
  };
  router.get('/sign-in', async (request, response) => {
    await show(request, response, '', localPath(firstValue(request.query, 'back')), 200);
  });
  router.post('/sign-in', async (request, response) => {
    const back = localPath(firstValue(request.body, 'back'));
    const person = await parts.source.find(firstValue(request.body, 'token', LONGEST_TOKEN) ?? '');
    if (person === undefined) {
      await show(request, response, 'Nobody has this token, or it was revoked.', back, 403);
      return;
    }
    endSession(request);
    cookie.hand(response, sessions.begin(person));
    response.redirect(303, back);
  });
  router.post('/sign-out', (request, response) => {
    endSession(request);
    cookie.clear(response);
    response.redirect(303, '/');
  });
  return router;

  function endSession(request: Request): void {
    const id = cookie.idOf(request);
    if (id !== undefined) sessions.end(id);
  }
}

/** Finds out who asks. A token that was revoked ends its sessions at the next request. */
function readerOf(source: PeopleSource, sessions: Sessions, cookie: SessionCookie): RequestHandler {
  return async (request, response, next) => {
    let id = cookie.idOf(request);
    const held = id === undefined ? undefined : sessions.personOf(id);
    const person = held && (await source.holds(held.key)) ? held : undefined;
    if (held && !person) sessions.end(id!);
    knowReader(request, {
      person,
      csrf: () => {
        if (id === undefined) {
          id = newSessionId();
          cookie.hand(response, id);
        }
        // A page with such a field must not be kept by a browser that somebody else uses next.
        response.setHeader('Cache-Control', 'no-store');
        return { name: 'csrf', value: cookie.csrfOf(id) };
      },
    });
    // Under `no-referrer`, which the guards set, browsers send forms with the origin `null`.
    response.setHeader('Referrer-Policy', 'same-origin');
    next();
  };
}

/** Answers NobodySignedIn with the way to the form; stands before the handler of all other errors. */
export const askToSignIn: ErrorRequestHandler = (error, request, response, next) => {
  if (!(error instanceof NobodySignedIn)) return next(error);
  const back = request.method === 'GET' ? request.originalUrl : pathOf(request.headers.referer);
  response.redirect(303, signInLink(back));
};

export const signInLink = (back: string): string => `/sign-in?back=${encodeURIComponent(localPath(back))}`;

/** A path of this viewer, whatever was asked for: `//evil.example` and `/\evil.example` lead elsewhere. */
function localPath(path: string | undefined): string {
  return path !== undefined && /^\/(?![/\\])[^\p{Cc}\\]*$/u.test(path) ? path : '/';
}

function pathOf(referer: string | undefined): string {
  const url = referer !== undefined && URL.canParse(referer) ? new URL(referer) : undefined;
  return url ? url.pathname + url.search : '/';
}
