import { join } from 'node:path';
import ejs from 'ejs';
import type { CarryPage } from '../commands/bundles/carry-page.ts';
import { FATE_MEANINGS } from '../model/said-words.ts';
import type { CommentsPage } from './desk/comments-page.ts';
import type { DeskPage, ReleasePage } from './desk/desk-page.ts';
import type { IntakePage } from './desk/intake-page.ts';
import type { LossesPage } from './desk/losses-page.ts';
import type { PublishedPage, PublishPage } from './desk/publish-page.ts';
import type { ReviewPage } from './desk/review-page.ts';
import type { BranchesPage } from './drafts/draft-branches-page.ts';
import type { DraftItemPage } from './drafts/draft-item-page.ts';
import type { DraftLeftPage } from './drafts/draft-left-page.ts';
import type { DraftMergePage } from './drafts/draft-merge-page.ts';
import type { DraftOperationPage } from './drafts/draft-operation-page.ts';
import type { DraftWorkPage } from './drafts/draft-work-page.ts';
import type { ErrorPage } from './error-page.ts';
import type { MatchRecordPage, MatchWaitPage } from './matching/match-record-page.ts';
import type { MatchReviewPage } from './matching/match-review-page.ts';
import type { LookupPage } from './offline/offline-routes.ts';
import type { CrosswalkPage } from './reading/crosswalk-page.ts';
import type { EditionPage } from './reading/edition-page.ts';
import type { HomePage } from './reading/home-page.ts';
import type { ItemPage } from './reading/item-page.ts';
import type { NumberPage } from './reading/number-page.ts';
import type { SearchPage } from './reading/search-page.ts';
import type { SignInPage } from './sign-in.ts';
import type { Site } from './site.ts';

/** Each template with the values that it is given. */
export interface Pages {
  readonly home: HomePage;
  readonly search: SearchPage;
  readonly item: ItemPage;
  readonly number: NumberPage;
  readonly edition: EditionPage;
  readonly crosswalk: CrosswalkPage;
  readonly carry: CarryPage;
  readonly 'offline-lookup': LookupPage;
  readonly desk: DeskPage;
  readonly release: ReleasePage;
  readonly publish: PublishPage;
  readonly published: PublishedPage;
  readonly review: ReviewPage;
  readonly comments: CommentsPage;
  readonly intake: IntakePage;
  readonly 'draft-work': DraftWorkPage;
  readonly 'draft-left': DraftLeftPage;
  readonly 'draft-branches': BranchesPage;
  readonly 'draft-merge': DraftMergePage;
  readonly 'draft-item': DraftItemPage;
  readonly 'draft-operation': DraftOperationPage;
  readonly losses: LossesPage;
  readonly 'match-review': MatchReviewPage;
  readonly 'match-record': MatchRecordPage;
  readonly 'match-wait': MatchWaitPage;
  readonly 'match-review-error': ErrorPage;
  readonly 'sign-in': SignInPage;
  readonly error: ErrorPage;
}

export const VIEWS = join(import.meta.dirname, '..', '..', 'views');

/**
 * Fills a template. Its options are given outright: handed over with the values, as a view engine of express does it,
 * a key of the same name among the values would set them.
 */
export function render<K extends keyof Pages>(name: K, page: Pages[K], site: Site, title: string): Promise<string> {
  const values = { page, site, title, fateMeanings: FATE_MEANINGS };
  return ejs.renderFile(join(VIEWS, `${name}.ejs`), values, {
    cache: true,
    _with: false,
    localsName: 'v',
    views: [VIEWS],
  });
}
