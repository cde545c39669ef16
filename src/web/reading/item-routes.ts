import type { JobsCiting } from '../../commands/finding/held-jobs.ts';
import type { LessonsCiting } from '../../commands/finding/lessons-citing.ts';
import type { NotesDesk, ToldNote } from '../../commands/intake/notes-desk.ts';
import { dayOf } from '../../model/day.ts';
import type { Entry } from '../../model/edition.ts';
import { CatalogError } from '../../model/errors.ts';
import { itemLink } from '../links.ts';
import { firstValue } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { signInLink } from '../sign-in.ts';
import { csrfField, personOf, requirePerson } from '../signed-in.ts';
import { itemJobs } from './item-jobs.ts';
import { itemLessons } from './item-lessons.ts';
import { itemNotes } from './item-notes.ts';
import { itemPage } from './item-page.ts';

/** What stands on the page of an item besides the catalog; absent parts are not shown. */
export interface BesideItem {
  readonly notes?: NotesDesk;
  readonly lessons?: LessonsCiting;
  readonly jobs?: JobsCiting;
}

/** The page of an item, with what people tell about it where the viewer takes that. */
export async function showItem(
  { show, now }: Routes,
  { notes: desk, lessons, jobs }: BesideItem,
  asked: Answering,
  edition: string,
  entry: Entry,
  refused?: ToldNote & { readonly trouble: string },
): Promise<void> {
  const { published, request } = asked;
  const page = await itemPage(published, edition, entry, {
    beside: firstValue(request.query, 'with'),
    show: firstValue(request.query, 'show'),
    date: dayOf(now()),
  });
  const person = personOf(request);
  const notes =
    desk &&
    (await itemNotes(desk, {
      edition,
      item: entry.id,
      person,
      csrf: person && csrfField(request),
      signIn: signInLink(itemLink(entry.id, edition)),
      done: firstValue(request.query, 'noted') === 'yes',
      refused,
    }));
  const title = `${entry.number} ${entry.title} (${edition})`;
  const citing = jobs && itemJobs(jobs, page.life);
  // What is only half known is not to be found again without a network.
  if (jobs && !jobs.read()) asked.response.setHeader('Cache-Control', 'no-store');
  const beside = {
    ...(notes ? { notes } : {}),
    ...(lessons ? { lessons: itemLessons(lessons, page.life) } : {}),
    ...(citing ? { jobs: citing } : {}),
  };
  await show(asked, 'item', { ...page, ...beside }, title, refused ? 400 : 200);
}

export function noteRoutes(routes: Routes, desk: NotesDesk, beside: BesideItem): void {
  routes.post('/item/:id/notes', async asked => {
    const { published, request, response } = asked;
    const person = requirePerson(request);
    const { id } = request.params as { id: string };
    const { header, places } = await published.edition(firstValue(request.query, 'in') ?? '');
    const entry = places.get(id);
    if (!entry) {
      throw new CatalogError('UnknownItem', `Edition ${header.name} has no item ${id}; look for it by its number.`);
    }
    const told = {
      kind: firstValue(request.body, 'kind', 40) ?? '',
      cause: firstValue(request.body, 'cause', 100) ?? '',
      text: firstValue(request.body, 'text', 4000) ?? '',
    };
    try {
      await desk.keep(header.name, id, told, person);
    } catch (error) {
      if (!(error instanceof CatalogError && error.code === 'BadArgument')) throw error;
      return showItem(routes, beside, asked, header.name, entry, { ...told, trouble: error.message });
    }
    const back = itemLink(id, header.name);
    response.redirect(303, `${back}&noted=yes#notes`);
  });
}
