import type { RequestHandler } from 'express';
import helmet from 'helmet';
import type { Address } from './listen.ts';

/** What pages may do beyond reading; nothing by default. */
export interface Allowed {
  /** Send forms. `people()` has to stand behind the guards then: it checks where a form comes from. */
  readonly forms?: boolean;
}

/** What is checked before any page is made. */
export function guards({ hosts }: Address, allowed: Allowed = {}): RequestHandler[] {
  return [
    helmet({
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          defaultSrc: ["'none'"],
          styleSrc: ["'self'"],
          scriptSrc: ["'self'"],
          connectSrc: ["'self'"],
          imgSrc: ["'self'", 'data:'],
          formAction: ["'self'"],
          baseUri: ["'none'"],
          frameAncestors: ["'none'"],
        },
      },
      // Plain http on loopback: a promise of https would lock the user out of every other server on this name.
      strictTransportSecurity: false,
    }),
    (request, response, next) => {
      if (hosts.has((request.headers.host ?? '').toLowerCase())) return next();
      refuse(response, 421, `This viewer answers only under its own address: ${[...hosts][0]}. Open it there.`);
    },
    (request, response, next) => {
      if (allowed.forms || request.method === 'GET' || request.method === 'HEAD') return next();
      response.setHeader('Allow', 'GET, HEAD');
      refuse(response, 405, 'This viewer is for reading only. Go back and follow a link.');
    },
    (request, response, next) => {
      if (request.originalUrl.length <= LONGEST_ADDRESS) return next();
      refuse(response, 414, `The address is longer than ${LONGEST_ADDRESS} characters. Look for fewer words.`);
    },
  ];
}

const LONGEST_ADDRESS = 4096;

function refuse(response: Parameters<RequestHandler>[1], status: number, sentence: string): void {
  response.status(status).type('text/plain').send(`${sentence}\n`);
}
