import type { DraftDesk } from '../../commands/drafts/draft-desk.ts';
import { CatalogError } from '../../model/errors.ts';
import { branchesLink, workLink } from '../links.ts';
import { firstValue } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, requirePerson } from '../signed-in.ts';
import { type BranchesRequest, branchesPage } from './draft-branches-page.ts';
import { draftMergePage, type MergeRequest, takesIn } from './draft-merge-page.ts';
import { inPageWords, isRefusal } from './draft-refusal.ts';

/** Branches of a draft: what each changes, beginning one, and merging one by items. For people with a name only. */
export function branchesRoutes({ get, post, show }: Routes, { branches: desk }: DraftDesk): void {
  const showList = async (asked: Answering, more: Partial<BranchesRequest> = {}) => {
    requirePerson(asked.request);
    const listed = await desk.list((asked.request.params as { draft: string }).draft);
    const merged = firstValue(asked.request.query, 'merged', 100);
    const known = listed.branches.some(b => b.name === merged);
    const page = branchesPage({
      ...listed,
      csrf: csrfField(asked.request),
      ...(merged !== undefined && known ? { merged } : {}),
      ...more,
    });
    await show(asked, 'draft-branches', page, `Branches of ${listed.draft}`, more.trouble ? 400 : 200);
  };
  get('/desk/:draft/branches', asked => showList(asked));

  post('/desk/:draft/branches', async asked => {
    requirePerson(asked.request);
    const { draft } = asked.request.params as { draft: string };
    const name = firstValue(asked.request.body, 'name', 100) ?? '';
    try {
      if (name === '') throw new CatalogError('BadArgument', 'Give the branch a name, for example roofs.');
      await desk.begin(draft, name);
    } catch (error) {
      if (!(isRefusal(error) || (error instanceof CatalogError && error.code === 'EditionExists'))) throw error;
      return showList(asked, { name, trouble: inPageWords(error) });
    }
    asked.response.redirect(303, workLink(name));
  });

  const showMerge = async (asked: Answering, request: Omit<MergeRequest, 'csrf'>) => {
    const { draft, branch } = asked.request.params as { draft: string; branch: string };
    const page = draftMergePage(await desk.look(draft, branch, request.takes), {
      ...request,
      csrf: csrfField(asked.request),
    });
    await show(asked, 'draft-merge', page, `Merge ${page.branch} into ${page.into}`, page.trouble ? 400 : 200);
  };
  get('/desk/:draft/branches/:branch', async asked => {
    requirePerson(asked.request);
    await showMerge(asked, { takes: new Map() });
  });

  post('/desk/:draft/branches/:branch', async asked => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const { draft, branch } = request.params as { draft: string; branch: string };
    const takes = takesIn(request.body as Record<string, unknown>);
    const step = firstValue(request.body, 'step', 10);
    if (step === 'change') return showMerge(asked, { takes, change: true });
    if (step !== 'do') return showMerge(asked, { takes, pressed: true });
    const [ours = '', theirs = ''] = (firstValue(request.body, 'seen', 200) ?? '').split(' ');
    try {
      if (!(await desk.merge(draft, branch, takes, { ours, theirs }, person))) {
        return showMerge(asked, { takes, pressed: true });
      }
    } catch (error) {
      if (!(error instanceof CatalogError && error.code === 'Changed')) throw error;
      return showMerge(asked, { takes, anew: true });
    }
    const { draft: of } = await desk.list(draft);
    response.redirect(303, of === draft ? branchesLink(of, [['merged', branch]]) : workLink(draft, [['done', 'yes']]));
  });
}
