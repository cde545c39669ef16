import type { CommentsDesk } from '../../commands/comments/comments-desk.ts';
import type { MatchDesk } from '../../commands/matching/match-desk.ts';
import type { ReleaseDesk } from '../../commands/releasing/release-desk.ts';
import { CatalogError } from '../../model/errors.ts';
import { reviewLink } from '../links.ts';
import { reviewsOnDesk } from '../matching/match-review-page.ts';
import { firstValue, pageOf } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, requirePerson } from '../signed-in.ts';
import { deskPage, releasePage } from './desk-page.ts';
import { type ReviewFilter, type ReviewPageRequest, reviewPage, reviewQuery } from './review-page.ts';

interface AtDesk {
  readonly release: ReleaseDesk;
  readonly comments: CommentsDesk;
  readonly matches?: MatchDesk;
}

/** The desk of people with a name: a draft is not published, so nobody else reads any of it here. */
export function deskRoutes({ get, post, show }: Routes, { release: desk, comments, matches }: AtDesk): void {
  get('/desk', async asked => {
    requirePerson(asked.request);
    await show(
      asked,
      'desk',
      deskPage(await desk.drafts(), await comments.commented(), await reviewsOnDesk(matches)),
      'Desk',
    );
  });

  get('/desk/:draft', async asked => {
    requirePerson(asked.request);
    const { draft } = asked.request.params as { draft: string };
    const [gate, schedule] = [await desk.gate(draft), await desk.schedule(draft)];
    await show(asked, 'release', releasePage(gate, schedule, gate.replaces), `What stops ${draft}`);
  });

  const showReview = async (asked: Answering, refused?: ReviewPageRequest['refused']) => {
    requirePerson(asked.request);
    const { draft } = asked.request.params as { draft: string };
    const page = reviewPage(await desk.review(draft), {
      draft,
      filter: filterOf(asked),
      page: pageOf(asked.request.query),
      csrf: csrfField(asked.request),
      isDraft: (await desk.drafts()).includes(draft),
      ...(refused ? { refused } : {}),
    });
    await show(asked, 'review', page, `Review of ${draft}`, refused ? 400 : 200);
  };
  get('/desk/:draft/review', asked => showReview(asked));

  post('/desk/:draft/review/:item/:question', async asked => {
    const person = requirePerson(asked.request);
    const { draft, item, question } = asked.request.params as { draft: string; item: string; question: string };
    const answer = firstValue(asked.request.body, 'answer', 10) ?? '';
    const because = firstValue(asked.request.body, 'because', 2000) ?? '';
    try {
      await desk.answer(draft, { item, question, answer, because }, person);
    } catch (error) {
      if (!(error instanceof CatalogError && error.code === 'BadArgument')) throw error;
      return showReview(asked, { item, question, because, trouble: error.message });
    }
    asked.response.redirect(303, `${reviewLink(draft, reviewQuery(filterOf(asked)))}#list`);
  });
}

function filterOf({ request: { query } }: Answering): ReviewFilter {
  return { part: firstValue(query, 'part', 300) ?? '', state: firstValue(query, 'state', 10) ?? 'todo' };
}
