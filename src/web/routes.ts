import type { Express, Request, Response } from 'express';
import type { PublishedCatalog } from '../commands/reading/published-catalog.ts';
import type { Pages } from './render.ts';

/** One request, and what is published at its moment. */
export interface Answering {
  readonly request: Request;
  readonly response: Response;
  readonly published: PublishedCatalog;
}

/** What a file of routes adds its pages with. */
export interface Routes {
  readonly get: (path: string, answer: (asked: Answering) => Promise<void>) => void;
  readonly post: (path: string, answer: (asked: Answering) => Promise<void>) => void;
  readonly show: <K extends keyof Pages>(
    asked: Answering,
    name: K,
    page: Pages[K],
    title: string,
    status?: number,
  ) => Promise<void>;
  readonly now: () => Date;
}

/** Routes whose answer failed go to the handler of errors: express 5 awaits what a handler returns. */
export function routesOf(
  app: Express,
  published: () => Promise<PublishedCatalog>,
  show: Routes['show'],
  now: Routes['now'],
): Routes {
  const add = (method: 'get' | 'post'): Routes['get'] => {
    return (path, answer) => {
      app[method](path, async (request, response) => answer({ request, response, published: await published() }));
    };
  };
  return { get: add('get'), post: add('post'), show, now };
}
