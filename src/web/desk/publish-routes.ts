import type { PeopleSource } from '../../commands/people.ts';
import type { ReleaseDesk } from '../../commands/releasing/release-desk.ts';
import { dayOf } from '../../model/day.ts';
import { CatalogError } from '../../model/errors.ts';
import { publishedLink } from '../links.ts';
import { firstValue } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, mayPublish, requirePerson } from '../signed-in.ts';
import { type PublishPageRequest, publishedPage, publishPage } from './publish-page.ts';

const LONGEST = 4000;
const LONGEST_TOKEN = 200;

/**
 * Publishing from the desk. Every other step here can be taken back; this one cannot, so it takes a token that was given
 * for it, typed once more, by the person who is signed in.
 */
export function publishRoutes({ get, post, show, now }: Routes, desk: ReleaseDesk, people: PeopleSource): void {
  const showPage = async (asked: Answering, more: Partial<PublishPageRequest> = {}) => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const { draft } = request.params as { draft: string };
    if (await desk.published(draft)) return response.redirect(303, publishedLink(draft));
    const page = publishPage(await desk.publication(draft), {
      may: mayPublish(request),
      csrf: csrfField(request),
      day: dayOf(now()),
      by: person.name,
      notes: '',
      override: '',
      ...more,
    });
    await show(asked, 'publish', page, `Publish ${page.draft}`, more.trouble ? 400 : 200);
  };
  get('/desk/:draft/publish', async asked => showPage(asked));

  post('/desk/:draft/publish', async asked => {
    const { request, response } = asked;
    const person = requirePerson(request);
    const { draft } = request.params as { draft: string };
    const typed = (name: string) =>
      (firstValue(request.body, name, LONGEST) ?? '').replace(/\r\n?/g, '\n').replace(/\n{3,}/g, '\n\n');
    const [notes, override, step] = [typed('notes'), typed('override'), firstValue(request.body, 'step', 10)];
    if (!mayPublish(request)) return showPage(asked, { trouble: 'Your token does not allow to publish.' });
    if (step === 'change') return showPage(asked, { notes, override });
    const { gate, header } = await desk.publication(draft);
    const trouble = missing(header.name, notes, override, gate.stops.length);
    if (trouble) return showPage(asked, { notes, override, trouble });
    if (step !== 'do') return showPage(asked, { notes, override, looked: true });
    const shown = await people.find(firstValue(request.body, 'token', LONGEST_TOKEN) ?? '');
    if (!shown?.publishes || shown.address.toLowerCase() !== person.address.toLowerCase()) {
      return showPage(asked, {
        notes,
        override,
        looked: true,
        trouble: 'This is not your token. Nothing was published.',
      });
    }
    const seen = firstValue(request.body, 'seen', 64) ?? '';
    try {
      await desk.publish(draft, { notes, seen, ...(override ? { override } : {}) }, person);
    } catch (error) {
      if (!(error instanceof CatalogError && (error.code === 'Changed' || error.code === 'BadCatalog'))) throw error;
      // What is published is published, even where the branches do not follow yet: that is told as an error.
      if (await desk.published(draft)) throw error;
      const why = 'The draft or what stops it has changed since you looked. Nothing was published; look again.';
      return showPage(asked, { notes, override, trouble: why });
    }
    response.redirect(303, publishedLink(header.name));
  });

  get('/desk/:edition/published', async asked => {
    requirePerson(asked.request);
    const { edition } = asked.request.params as { edition: string };
    const found = await desk.published(edition);
    if (!found)
      throw new CatalogError('UnknownEdition', `No edition ${edition} is published; see the drafts at the desk.`);
    await show(asked, 'published', publishedPage(found), `Edition ${found.header.name} is published`);
  });
}

function missing(draft: string, notes: string, override: string, stops: number): string {
  if (notes === '') return `Write the release notes: what is new in ${draft}, for those who will use it.`;
  if (stops > 0 && override === '') return 'Say why it is published although findings stop it, or settle them first.';
  return '';
}
