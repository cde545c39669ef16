import express, { type RequestHandler, type Response } from 'express';
import { LARGEST_UPLOAD } from '../commands/ports/upload-bounds.ts';
import { firstValue } from './query-values.ts';
import { isSameOrigin } from './same-origin.ts';
import type { SessionCookie } from './session-cookie.ts';
import { personOf } from './signed-in.ts';
import { readUpload } from './upload.ts';

const LARGEST_FORM = 64 * 1024;

/**
 * Lets a form through only if it comes from a page of this viewer. Forms arrive as `request.body`, name → value.
 *
 *   POST ─▶ same origin? ─▶ a form? ─▶ small enough? ─▶ csrf = HMAC(id)? ─▶ route
 *               403            415           413               403
 *
 * @param takesFiles paths whose forms carry a file; only people with a name may send one
 */
export function formGuard(cookie: SessionCookie, takesFiles: (path: string) => boolean): RequestHandler {
  const form = express.urlencoded({ extended: false, limit: LARGEST_FORM, parameterLimit: 200 });
  return (request, response, next) => {
    if (request.method === 'GET' || request.method === 'HEAD') return next();
    if (request.method !== 'POST') return refuse(response, 405, 'Nothing here is changed in this way. Use a form.');
    if (!isSameOrigin(request)) {
      return refuse(
        response,
        403,
        'This form came from a page of somebody else. Open the viewer and use its own form.',
      );
    }
    const withFile = request.is('multipart/form-data') !== false && takesFiles(request.path);
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
      if (cookie.isOurs(request, firstValue(request.body, 'csrf') ?? '')) return next();
      refuse(response, 403, 'The page with this form is out of date. Load it again and send the form once more.');
    });
  };
}

function refuse(response: Response, status: number, sentence: string): void {
  if (status === 405) response.setHeader('Allow', 'GET, HEAD, POST');
  response.status(status).type('text/plain').send(`${sentence}\n`);
}
