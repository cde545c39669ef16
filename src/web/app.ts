import type { Express } from 'express';
import type { ServedCarry } from '../commands/bundles/carry-page.ts';
import type { Desk } from '../commands/desk.ts';
import type { JobsCiting } from '../commands/finding/held-jobs.ts';
import type { LessonsCiting } from '../commands/finding/lessons-citing.ts';
import type { PublishedCatalog } from '../commands/reading/published-catalog.ts';
import { commentRoutes } from './desk/comments-routes.ts';
import { deskRoutes } from './desk/desk-routes.ts';
import { intakeRoutes } from './desk/intake-routes.ts';
import { lossesRoutes } from './desk/losses-routes.ts';
import { publishRoutes } from './desk/publish-routes.ts';
import { branchesRoutes } from './drafts/draft-branches-routes.ts';
import { draftRoutes } from './drafts/draft-routes.ts';
import { appIn, type Frame } from './frame.ts';
import type { Address } from './listen.ts';
import { MATCH_FILES, matchRoutes } from './matching/match-review-routes.ts';
import { offlineRoutes, PATIENCE_MS } from './offline/offline-routes.ts';
import { KEPT_FILES, markKept, offlineStates } from './offline/offline-state.ts';
import { carryRoutes } from './reading/carry-routes.ts';
import { type Briefings, crosswalkRoutes } from './reading/crosswalk-routes.ts';
import { readingRoutes } from './reading/reading-routes.ts';
import { personOf } from './signed-in.ts';
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
  /** What job lines cite items; absent: no item says. */
  readonly jobs?: JobsCiting;
  /** Pages that a device keeps for when there is no network; absent: none are kept. */
  readonly offline?: { readonly patienceMs?: number };
  /** What people with a name may do; absent: the viewer is for reading only. */
  readonly desk?: Desk;
}

/** The viewer as a request handler: every page of it is made here, on request, from what is published then. */
export function viewerApp(parts: ViewerParts): Express {
  const { desk } = parts;
  const states = parts.offline && offlineStates();
  const frame: Frame = {
    address: parts.address,
    now: parts.now,
    report: parts.report,
    assets: [...KEPT_FILES, ...(desk?.matches ? MATCH_FILES : [])],
    published: parts.published,
    ...(desk ? { people: desk.people } : {}),
    takesFiles: path => /^\/desk\/[^/]+\/comments\/forms$/.test(path),
    site: async ({ request, published }, name) => {
      const newest = published?.headers.at(-1);
      const person = personOf(request);
      return siteOf(
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
    },
    mark: async ({ request, response, published }, name) => {
      const state = published && (await states?.(published).catch(() => undefined));
      if (state) markKept(response, name, state, personOf(request) !== undefined);
    },
    errorView: 'error',
  };
  return appIn(frame, routes => {
    const beside = {
      ...(desk ? { notes: desk.notes } : {}),
      ...(parts.lessons ? { lessons: parts.lessons } : {}),
      ...(parts.jobs ? { jobs: parts.jobs } : {}),
    };
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
      publishRoutes(routes, desk.release, desk.people);
      deskRoutes(routes, desk);
      // Behind the drafts, one of which may be called `match`.
      if (desk.matches) matchRoutes(routes, desk.matches);
    }
  });
}
