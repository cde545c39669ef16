import express, { type Express, type NextFunction, type Request, type Response } from 'express';
import type { ServedCarry } from '../commands/carry-page.ts';
import type { CommentsDesk } from '../commands/comments-desk.ts';
import type { DraftDesk } from '../commands/draft-desk.ts';
import type { IntakeDesk } from '../commands/intake-desk.ts';
import type { LessonsCiting } from '../commands/lessons-citing.ts';
import type { LossesDesk } from '../commands/losses-desk.ts';
import type { NotesDesk } from '../commands/notes-desk.ts';
import type { PeopleSource } from '../commands/people.ts';
import type { PublishedCatalog } from '../commands/published-catalog.ts';
import type { ReleaseDesk } from '../commands/release-desk.ts';
import { carryRoutes } from './carry-routes.ts';
import { commentRoutes } from './comments-routes.ts';
import { type Briefings, crosswalkRoutes } from './crosswalk-routes.ts';
import { deskRoutes } from './desk-routes.ts';
import { branchesRoutes } from './draft-branches-routes.ts';
import { draftRoutes } from './draft-routes.ts';
import { type ErrorPage, errorPage, noSuchPage } from './error-page.ts';
import { guards } from './guard.ts';
import { intakeRoutes } from './intake-routes.ts';
import type { Address } from './listen.ts';
import { lossesRoutes } from './losses-routes.ts';
import { offlineRoutes, PATIENCE_MS } from './offline-routes.ts';
import { fileOfAsset, KEPT_FILES, markKept, offlineStates } from './offline-state.ts';
import { askToSignIn, people, personOf } from './people.ts';
import { readingRoutes } from './reading-routes.ts';
import { type Pages, render } from './render.ts';
import { routesOf } from './routes.ts';
import { siteOf } from './site.ts';

export interface ViewerParts {
  /** What is published at this moment. */
  readonly published: () => Promise<PublishedCatalog>;
  readonly address: Address;
  readonly now: () => Date;
  /** Where defects are told. */
  readonly report: (line: string) => void;
  /** Slides of two editions; absent: none are offered. */
  readonly briefings?: Briefings;
  /** Carrying files over in the browser; absent: it is not offered. */
  readonly carry?: ServedCarry;
  /** Where lessons cite items; absent: no item says. */
  readonly lessons?: LessonsCiting;
  /** Pages that a device keeps for when there is no network; absent: none are kept. */
  readonly offline?: { readonly patienceMs?: number };
  /** What people with a name may do; absent: the viewer is for reading only. */
  readonly desk?: Desk;
}

export interface Desk {
  readonly people: PeopleSource;
  readonly losses: LossesDesk;
  readonly release: ReleaseDesk;
  readonly notes: NotesDesk;
  readonly comments: CommentsDesk;
  readonly intake: IntakeDesk;
  readonly work: DraftDesk;
}

/** The viewer as a request handler: every page of it is made here, on request, from what is published then. */
export function viewerApp(parts: ViewerParts): Express {
  const { desk } = parts;
  const app = express();
  app.disable('x-powered-by');
  app.set('env', 'production');
  app.set('query parser', 'simple');
  app.use(guards(parts.address, { forms: desk !== undefined }));
  for (const asset of KEPT_FILES) {
    app.get(asset, (_, response) => response.sendFile(fileOfAsset(asset), { maxAge: '1h' }));
  }
  const states = parts.offline && offlineStates();

  const show = async <K extends keyof Pages>(
    { request, response, published }: Shown,
    name: K,
    page: Pages[K],
    title: string,
    status = 200,
  ) => {
    const newest = published?.headers.at(-1);
    const person = personOf(request);
    const site = siteOf(
      published ?? { headers: [] },
      // A damaged edition must not keep the page from saying that it is damaged.
      newest && (await published?.edition(newest.name).catch(() => undefined)),
      {
        address: `${parts.address.origin}${request.originalUrl}`,
        now: parts.now(),
        person: person?.name,
        path: request.method === 'GET' ? request.originalUrl : '/',
        writes: desk !== undefined,
        // The page that promises to send nothing starts no worker either.
        offline: states !== undefined && person === undefined && name !== 'carry',
      },
    );
    const state = published && (await states?.(published).catch(() => undefined));
    if (state) markKept(response, name, state, person !== undefined);
    // A page with a form has said already that it must not be kept.
    if (!response.hasHeader('Cache-Control')) response.setHeader('Cache-Control', person ? 'no-store' : 'no-cache');
    response
      .status(status)
      .type('html')
      .send(await render(name, page, site, title));
  };
  const now = () => parts.published().catch(() => undefined);

  if (desk) {
    app.use(
      people({
        address: parts.address,
        source: desk.people,
        now: parts.now,
        takesFiles: path => /^\/desk\/[^/]+\/comments\/forms$/.test(path),
        showSignIn: async (request, response, page, status) =>
          show({ request, response, published: await now() }, 'sign-in', page, 'Sign in', status),
      }),
    );
  }
  const routes = routesOf(app, parts.published, show, parts.now);
  const beside = { ...(desk ? { notes: desk.notes } : {}), ...(parts.lessons ? { lessons: parts.lessons } : {}) };
  readingRoutes(routes, beside, parts.carry !== undefined);
  if (parts.carry) carryRoutes(routes, parts.carry);
  crosswalkRoutes(routes, parts.briefings);
  if (states) offlineRoutes(routes, states, parts.offline?.patienceMs ?? PATIENCE_MS);
  if (desk) {
    lossesRoutes(routes, desk.losses);
    commentRoutes(routes, desk.comments);
    intakeRoutes(routes, desk.intake);
    draftRoutes(routes, desk.work);
    branchesRoutes(routes, desk.work);
    deskRoutes(routes, desk.release, desk.comments);
  }

  const fail = async (request: Request, response: Response, found: ErrorPage) =>
    show({ request, response, published: await now() }, 'error', found, found.heading, found.status);
  app.use((request: Request, response: Response) => fail(request, response, noSuchPage));
  app.use(askToSignIn);
  app.use((error: unknown, request: Request, response: Response, _next: NextFunction) => {
    const found = errorPage(error);
    if (found.status === 500) parts.report(`${request.originalUrl}: ${(error as Error)?.stack ?? error}`);
    return fail(request, response, found);
  });
  return app;
}

interface Shown {
  readonly request: Request;
  readonly response: Response;
  /** Absent where the catalog itself cannot be read. */
  readonly published: PublishedCatalog | undefined;
}
