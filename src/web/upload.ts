import express, { type Response as Answer, type Request } from 'express';
import { LARGEST_UPLOAD, type Upload } from '../commands/ports/upload-bounds.ts';

/** Files of a form, by the field that they were sent in; bodies hold texts only. */
const UPLOADS = new WeakMap<Request, ReadonlyMap<string, Upload>>();

/** Some kB for the fields beside the file. */
const LARGEST_BODY = LARGEST_UPLOAD + 64 * 1024;
const body = express.raw({ type: 'multipart/form-data', limit: LARGEST_BODY });

/**
 * Reads a form with a file, held in memory: `request.body` has its texts, as for any other form. The size is bounded
 * before anything is read of it. Node itself parses the parts, so no library has to.
 */
export function readUpload(request: Request, response: Answer, done: (error?: unknown) => void): void {
  body(request, response, async (error?: unknown) => {
    if (error) return done(error);
    try {
      const headers = { 'content-type': request.headers['content-type'] ?? '' };
      const form = await new Response(request.body as Buffer, { headers }).formData();
      const texts: [string, string][] = [];
      const files = new Map<string, Upload>();
      for (const [name, value] of form) {
        if (typeof value === 'string') texts.push([name, value]);
        else files.set(name, { name: value.name, bytes: new Uint8Array(await value.arrayBuffer()) });
      }
      request.body = Object.fromEntries(texts);
      UPLOADS.set(request, files);
      done();
    } catch (broken) {
      done(broken);
    }
  });
}

/** The file of a field; an empty one where none was chosen. */
export function uploadOf(request: Request, field: string): Upload {
  return UPLOADS.get(request)?.get(field) ?? { name: '', bytes: new Uint8Array() };
}
