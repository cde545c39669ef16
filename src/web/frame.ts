import express, { type Express, type NextFunction, type Request, type Response } from 'express';
import type { PeopleSource } from '../commands/people.ts';
import type { PublishedCatalog } from '../commands/reading/published-catalog.ts';
import { type ErrorPage, errorPage, noSuchPage } from './error-page.ts';
import { guards } from './guard.ts';
import type { Address } from './listen.ts';
import { fileOfAsset } from './offline/offline-state.ts';
import { type Pages, render } from './render.ts';
import { type Routes, routesOf } from './routes.ts';
import { askToSignIn, signIn } from './sign-in.ts';
import type { Site } from './site.ts';

/** One request, and what is published at its moment. */
export interface Shown {
  readonly request: Request;
  readonly response: Response;
  /** Absent where the catalog itself cannot be read. */
  readonly published: PublishedCatalog | undefined;
}

/** What stands around the pages of a server, whatever they are about. */
export interface Frame {
  readonly address: Address;
  readonly now: () => Date;
  /** Where defects are told. */
  readonly report: (line: string) => void;
  /** Files beside the pages, by their addresses. */
  readonly assets: readonly string[];
  readonly published: () => Promise<PublishedCatalog>;
  /** Who may sign in; absent: the pages are for reading only. */
  readonly people?: PeopleSource;
  /** Paths whose forms carry a file. */
  readonly takesFiles?: (path: string) => boolean;
  readonly site: (shown: Shown, name: keyof Pages) => Promise<Site>;
  /** Sets headers before a page is sent. */
  readonly mark?: (shown: Shown, name: keyof Pages) => Promise<void>;
  /** The page that says what went wrong. */
  readonly errorView: 'error' | 'match-review-error';
}

/** The request handler that guards, lets people sign in, serves files and shows what went wrong around pages of its own. */
export function appIn(frame: Frame, add: (routes: Routes) => void): Express {
  const app = express();
  app.disable('x-powered-by');
  app.set('env', 'production');
  app.set('query parser', 'simple');
  app.use(guards(frame.address, { forms: frame.people !== undefined }));
  for (const asset of frame.assets) {
    app.get(asset, (_, response) => response.sendFile(fileOfAsset(asset), { maxAge: '1h' }));
  }

  const show = async <K extends keyof Pages>(shown: Shown, name: K, page: Pages[K], title: string, status = 200) => {
    const site = await frame.site(shown, name);
    await frame.mark?.(shown, name);
    const { response } = shown;
    // A page with a form has said already that it must not be kept.
    if (!response.hasHeader('Cache-Control')) {
      response.setHeader('Cache-Control', site.person === '' ? 'no-cache' : 'no-store');
    }
    response
      .status(status)
      .type('html')
      .send(await render(name, page, site, title));
  };
  const now = () => frame.published().catch(() => undefined);

  if (frame.people) {
    app.use(
      signIn({
        address: frame.address,
        source: frame.people,
        now: frame.now,
        ...(frame.takesFiles ? { takesFiles: frame.takesFiles } : {}),
        showSignIn: async (request, response, page, status) =>
          show({ request, response, published: await now() }, 'sign-in', page, 'Sign in', status),
      }),
    );
  }
  add(routesOf(app, frame.published, show, frame.now));

  const fail = async (request: Request, response: Response, found: ErrorPage) =>
    show({ request, response, published: await now() }, frame.errorView, found, found.heading, found.status);
  app.use((request: Request, response: Response) => fail(request, response, noSuchPage));
  app.use(askToSignIn);
  app.use((error: unknown, request: Request, response: Response, _next: NextFunction) => {
    const found = errorPage(error);
    if (found.status === 500) frame.report(`${request.originalUrl}: ${(error as Error)?.stack ?? error}`);
    return fail(request, response, found);
  });
  return app;
}
