import type { CommentsDesk, TypedAnswer } from '../../commands/comments/comments-desk.ts';
import { CatalogError } from '../../model/errors.ts';
import { inPageWords, isRefusal } from '../drafts/draft-refusal.ts';
import { commentsLink } from '../links.ts';
import { fileName, firstValue, pageOf } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, requirePerson } from '../signed-in.ts';
import { uploadOf } from '../upload.ts';
import { type CommentsFilter, commentsQuery } from './comments-filter.ts';
import { type CommentsPageRequest, commentsPage } from './comments-page.ts';

/** Comments on a draft or an edition: they name people, so they are for people with a name. */
export function commentRoutes({ get, post, show }: Routes, desk: CommentsDesk): void {
  const showList = async (asked: Answering, more: Partial<CommentsPageRequest> = {}) => {
    requirePerson(asked.request);
    const listed = await desk.list(editionIn(asked));
    const { query } = asked.request;
    const request = { filter: filterOf(asked), page: pageOf(query), csrf: csrfField(asked.request), ...more };
    const status = more.refused || more.formTrouble || more.packTrouble ? 400 : 200;
    await show(asked, 'comments', commentsPage(listed, request), `Comments on ${listed.edition}`, status);
  };
  get('/desk/:draft/comments', asked => showList(asked));

  post('/desk/:draft/comments/answer/:code', async asked => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const { code } = request.params as { code: string };
    const value = (key: keyof TypedAnswer, longest: number) => firstValue(request.body, key, longest) ?? '';
    const typed = {
      disposition: value('disposition', 20),
      because: value('because', 2000),
      change: value('change', 100),
      about: value('about', 100),
      seen: value('seen', 20),
    };
    try {
      await desk.answer(editionIn(asked), code, typed, person);
    } catch (error) {
      if (!(error instanceof CatalogError && error.code === 'BadArgument')) throw error;
      return showList(asked, { refused: { ...typed, code, trouble: error.message } });
    }
    const page = pageOf(request.query);
    const query = [...commentsQuery(filterOf(asked)), ...(page > 1 ? [['page', String(page)] as const] : [])];
    response.redirect(303, `${commentsLink(editionIn(asked), query)}#list`);
  });

  post('/desk/:draft/comments/forms', async asked => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const edition = editionIn(asked);
    const form = uploadOf(request, 'form');
    const commenter = firstValue(request.body, 'by', 100) ?? '';
    try {
      if (firstValue(request.body, 'do', 10) === 'fill') {
        const { bytes } = await desk.fill(edition, form, commenter);
        const [, stem = 'form', ending = ''] = /^(.*?)(\.[^.]*)?$/.exec(form.name) ?? [];
        response.attachment(`${fileName(stem, 'answered')}${ending}`).send(Buffer.from(bytes));
        return;
      }
      const withObservations = firstValue(request.body, 'observations', 5) === 'yes';
      const read = await desk.read(edition, form, { commenter, withObservations }, person);
      const nothing = read.added.length + read.mended.length + read.known === 0;
      const [first] = read.findings;
      return showList(asked, nothing && first ? { formTrouble: first.message } : { read });
    } catch (error) {
      if (!(error instanceof CatalogError && ['BadFile', 'BadTable', 'BadArgument'].includes(error.code))) throw error;
      return showList(asked, { formTrouble: error.message });
    }
  });

  post('/desk/:draft/comments/pack', async asked => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const edition = editionIn(asked);
    const each = firstValue(request.body, 'each', 5) === 'yes';
    try {
      const { bytes, round } = await desk.pack(edition, each, person);
      response
        .attachment(`${fileName(edition, 'round', String(round))}.zip`)
        .setHeader('Cache-Control', 'no-store')
        .send(Buffer.from(bytes));
    } catch (error) {
      if (!isRefusal(error)) throw error;
      return showList(asked, { packTrouble: inPageWords(error) });
    }
  });

  get('/desk/:draft/comments/reply/:format', async asked => {
    requirePerson(asked.request);
    const by = firstValue(asked.request.query, 'by', 300) ?? '';
    const format = (asked.request.params as { format: string }).format === 'csv' ? 'csv' : 'docx';
    const bytes = await desk.reply(editionIn(asked), by, format);
    asked.response
      .attachment(`${fileName('reply', by)}.${format}`)
      .setHeader('Cache-Control', 'no-store')
      .send(Buffer.from(bytes));
  });
}

const editionIn = ({ request }: Answering) => (request.params as { draft: string }).draft;

function filterOf({ request: { query } }: Answering): CommentsFilter {
  const value = (key: string, longest: number) => firstValue(query, key, longest) ?? '';
  return { state: value('state', 10), type: value('type', 10), by: value('by', 300), item: value('item', 400) };
}
