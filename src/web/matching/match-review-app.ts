import type { Express } from 'express';
import type { MatchDesk } from '../../commands/matching/match-desk.ts';
import type { PeopleSource } from '../../commands/people.ts';
import type { PublishedCatalog } from '../../commands/reading/published-catalog.ts';
import { dayOf } from '../../model/day.ts';
import { dateWords } from '../../model/said-words.ts';
import { appIn } from '../frame.ts';
import type { Address } from '../listen.ts';
import { signInLink } from '../sign-in.ts';
import { personOf } from '../signed-in.ts';
import { matchLink } from './match-links.ts';
import { MATCH_FILES, matchRoutes } from './match-review-routes.ts';

export interface ReviewParts {
  readonly desk: MatchDesk;
  readonly people: PeopleSource;
  readonly address: Address;
  readonly now: () => Date;
  readonly report: (line: string) => void;
}

/** One review without a viewer around it: the same pages as on the desk, and nothing else. */
export function matchReviewApp({ desk, people, address, now, report }: ReviewParts): Express {
  const [{ key, review }] = desk.reviews as MatchDesk['reviews'] & [MatchDesk['reviews'][number]];
  const { from, to } = review.names;
  return appIn(
    {
      address,
      now,
      report,
      people,
      assets: ['/style.css', '/desk.css', '/icon.svg', '/suggest.js', ...MATCH_FILES],
      published: async () => NOTHING,
      site: async ({ request }) => ({
        title: `Review of ${from} to ${to}`,
        publisher: '',
        language: 'en',
        caution: '',
        links: [],
        address: `${address.origin}${request.originalUrl}`,
        readOn: dateWords(dayOf(now())),
        person: personOf(request)?.name ?? '',
        signIn: signInLink(request.method === 'GET' ? request.originalUrl : '/'),
        offline: false,
      }),
      errorView: 'match-review-error',
    },
    routes => {
      for (const path of ['/', '/desk']) {
        routes.get(path, async ({ response }) => response.redirect(303, matchLink(key)));
      }
      matchRoutes(routes, desk);
    },
  );
}

/** Bare tables stand in no catalog, and the pages of a review ask for none. */
const NOTHING = { headers: [] as const, tags: '' } as unknown as PublishedCatalog;
