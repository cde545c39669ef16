import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import express, { type ErrorRequestHandler, type Request, type Response, Router } from 'express';
import type { KnownPerson, PeopleSource, Person } from '../commands/people.ts';
import { LARGEST_UPLOAD } from '../commands/ports/upload-bounds.ts';
import type { Address } from './listen.ts';
import { firstValue } from './query-values.ts';
import { isSameOrigin } from './same-origin.ts';
import { newSessionId, Sessions } from './sessions.ts';
import { readUpload } from './upload.ts';

/*
 * GET a page with a form ─▶ cookie: a random id        POST ─▶ same origin? ─▶ small enough? ─▶ csrf = HMAC(id)? ─▶ route
 *                           field csrf: HMAC(id)                 403               413                403
 *
 * The token is a field of one form, once; from then on the cookie's id stands for the person, in memory.
 */

export interface PeopleParts {
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

/** A hidden field that every form must carry. */
export interface FormField {
  readonly name: string;
  readonly value: string;
}

interface State {
  readonly person: KnownPerson | undefined;
  readonly csrf: () => FormField;
}

const STATES = new WeakMap<Request, State>();
const LARGEST_FORM = 64 * 1024;
const LONGEST_TOKEN = 200;
/** Every id of ours is 32 bytes in base64url; anything else in the cookie is not one. */
const ID = /^[A-Za-z0-9_-]{43}$/;

/** Thrown by `requirePerson`; `askToSignIn` answers it with the form. */
export class NobodySignedIn extends Error {}

/** Who is signed in; undefined for a reader. */
export function personOf(request: Request): Person | undefined {
  const person = STATES.get(request)?.person;
  return person && { name: person.name, address: person.address };
}

/** Whether whoever is signed in showed a token that allows to publish. */
export function mayPublish(request: Request): boolean {
  return STATES.get(request)?.person?.publishes === true;
}

/** Who is signed in. Throws NobodySignedIn for a reader. */
export function requirePerson(request: Request): Person {
  const person = personOf(request);
  if (person === undefined) throw new NobodySignedIn('Sign in first.');
  return person;
}

/** The hidden field for a form on the page that answers this request. Call it before anything is sent. */
export function csrfField(request: Request): FormField {
  const state = STATES.get(request);
  if (state === undefined) throw new Error('people() has to stand before the page that asks for a form');
  return state.csrf();
}

/**
 * Stands behind the guards and before all pages: knows who is signed in, and lets a form through only if it comes from
 * a page of this viewer. Adds /sign-in and /sign-out. Forms arrive as `request.body`, name → value.
 */
export function people(parts: PeopleParts): Router {
  const router = Router();
  const sessions = new Sessions(parts.now);
  const secret = randomBytes(32);
  // Cookies know no ports: without it in the name, two viewers on one machine would sign each other out.
  const cookie = `fishplate-${new URL(parts.address.origin).port || '80'}`;
  const csrfOf = (id: string) => createHmac('sha256', secret).update(id).digest('base64url');
  const secure = parts.address.origin.startsWith('https:');
  const hand = (response: Response, id: string) =>
    response.cookie(cookie, id, { httpOnly: true, sameSite: 'strict', path: '/', secure });

  router.use(async (request, response, next) => {
    let id = readCookie(request.headers.cookie, cookie);
    const held = id === undefined ? undefined : sessions.personOf(id);
    const person = held && (await parts.source.holds(held.key)) ? held : undefined;
    if (held && !person) sessions.end(id!);
    STATES.set(request, {
      person,
      csrf: () => {
        if (id === undefined) {
          id = newSessionId();
          hand(response, id);
        }
        // A page with such a field must not be kept by a browser that somebody else uses next.
        response.setHeader('Cache-Control', 'no-store');
        return { name: 'csrf', value: csrfOf(id) };
      },
    });
    // Under `no-referrer`, which the guards set, browsers send forms with the origin `null`.
    response.setHeader('Referrer-Policy', 'same-origin');
    next();
  });

  const form = express.urlencoded({ extended: false, limit: LARGEST_FORM, parameterLimit: 200 });
  router.use((request, response, next) => {
    if (request.method === 'GET' || request.method === 'HEAD') return next();
    if (request.method !== 'POST') return refuse(response, 405, 'Nothing here is changed in this way. Use a form.');
    if (!isSameOrigin(request)) {
      return refuse(
        response,
        403,
        'This form came from a page of somebody else. Open the viewer and use its own form.',
      );
    }
    const withFile = request.is('multipart/form-data') !== false && parts.takesFiles?.(request.path) === true;
    if (!withFile && !request.is('application/x-www-form-urlencoded')) {
      return refuse(response, 415, 'Only forms are read here. Send it as one.');
    }
    // Megabytes of somebody without a name are not even held.
    if (withFile && personOf(request) === undefined) {
      return refuse(response, 403, 'Nobody is signed in here any more. Sign in, and send the file again.');
    }
    (withFile ? readUpload : form)(request, response, (error: unknown) => {
      if (error) {
        const large = (error as { status?: unknown }).status === 413;
        const sentence = large
          ? withFile
            ? `The file is larger than ${LARGEST_UPLOAD / 1024 / 1024} MB. Leave out its pictures, or split it.`
            : `More than ${LARGEST_FORM / 1024} kB were sent. Write less at a time.`
          : 'The form cannot be read. Go back, load the page again and send it once more.';
        return refuse(response, large ? 413 : 400, sentence);
      }
      const id = readCookie(request.headers.cookie, cookie);
      if (id !== undefined && isEqual(firstValue(request.body, 'csrf') ?? '', csrfOf(id))) return next();
      refuse(response, 403, 'The page with this form is out of date. Load it again and send the form once more.');
    });
  });

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
    hand(response, sessions.begin(person));
    response.redirect(303, back);
  });
  router.post('/sign-out', (request, response) => {
    endSession(request);
    response.clearCookie(cookie, { path: '/' });
    response.redirect(303, '/');
  });
  return router;

  function endSession(request: Request): void {
    const id = readCookie(request.headers.cookie, cookie);
    if (id !== undefined) sessions.end(id);
  }
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

function refuse(response: Response, status: number, sentence: string): void {
  if (status === 405) response.setHeader('Allow', 'GET, HEAD, POST');
  response.status(status).type('text/plain').send(`${sentence}\n`);
}
