import type { Request } from 'express';
import type { ReviewState } from '../../commands/matching/held-review.ts';
import type { Given } from '../../commands/matching/match-answers.ts';
import type { DeskReview, MatchDesk } from '../../commands/matching/match-desk.ts';
import { type Person, writtenAs } from '../../commands/people.ts';
import { CatalogError } from '../../model/errors.ts';
import type { ErrorPage } from '../error-page.ts';
import { fileName, firstValue } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { csrfField, requirePerson } from '../signed-in.ts';
import { matchLink, questionLink } from './match-links.ts';
import { matchRecordPage, matchWaitPage } from './match-record-page.ts';
import { matchReviewPage, type Tried } from './match-review-page.ts';

/** Files beside the pages of a review. */
export const MATCH_FILES = ['/match-review.css', '/match-review.js'];

const LONGEST_REASON = 2000;
const FORMS = ['yes', 'no', 'withdrawn', 'instead', 'also'];
/** Reviews of matched links: one question a page. All of it is for people with a name, reading as well. */
export function matchRoutes({ get, post, show }: Routes, desk: MatchDesk): void {
  const patience = () => new Promise<undefined>(resolve => setTimeout(() => resolve(undefined), desk.patienceMs));
  const missing = (asked: Answering, sentence: string, href: string, word: string) => {
    const page: ErrorPage = { status: 404, heading: 'Not here', sentence, steps: [{ word, href }] };
    return show(asked, 'match-review-error', page, page.heading, 404);
  };
  /** Answers with a review, where there is one and it can be asked now. */
  const within =
    (answer: (asked: Answering, at: DeskReview, person: Person) => Promise<void>) => async (asked: Answering) => {
      const person = requirePerson(asked.request);
      const at = desk.reviews.find(r => r.key === (asked.request.params as { review: string }).review);
      if (!at) return missing(asked, 'There is no such review. The desk names those that there are.', '/desk', 'Desk');
      const state = at.state();
      if (state === 'open' || asked.request.method === 'POST') return answer(asked, at, person);
      await wait(asked, at, state);
    };
  const wait = async (asked: Answering, at: DeskReview, state: Exclude<ReviewState, 'open'>) => {
    asked.response.setHeader('Cache-Control', 'no-store');
    const page = matchWaitPage(at, state, asked.request.path);
    await show(asked, 'match-wait', page, page.heading, state === 'matching' ? 200 : 503);
  };
  /** Hands on what is there soon; else there is a page that says so, and by the next time it is there. */
  const soon = async <T>(asked: Answering, at: DeskReview, work: Promise<T>, then: (made: T) => Promise<void>) => {
    const made = await Promise.race([work.then(value => ({ value })), patience()]);
    if (made) return then(made.value);
    work.catch(() => {});
    await wait(asked, at, 'matching');
  };
  const ask = async (asked: Answering, at: DeskReview, person: Person, code?: string, tried?: Tried) => {
    const { response, request } = asked;
    const recorded = firstValue(request.query, 'recorded', 100) ?? '';
    const shown = { code, tried, recorded, by: nameOf(person), csrf: csrfField(request) };
    const found = await matchReviewPage(at, shown);
    response.setHeader('Cache-Control', 'no-store');
    if (found) return show(asked, 'match-review', found.page, found.title, tried ? 400 : 200);
    const sentence = 'There is no such question, or the matcher is sure of it by now. Go on with the next one.';
    return missing(asked, sentence, matchLink(at.key), 'Go on with the review');
  };
  const onward = async ({ response }: Answering, at: DeskReview, person: Person, after?: string) => {
    const next = await at.review.nextOpen(after, nameOf(person));
    response.redirect(303, next === undefined ? matchLink(at.key, 'done') : questionLink(at.key, next));
  };

  get(
    '/desk/match/:review',
    within((asked, at, person) => onward(asked, at, person)),
  );
  get(
    '/desk/match/:review/done',
    within((asked, at, person) => ask(asked, at, person)),
  );
  get(
    '/desk/match/:review/q/:code',
    within((asked, at, person) => ask(asked, at, person, (asked.request.params as { code: string }).code)),
  );
  post(
    '/desk/match/:review/q/:code',
    within(async (asked, at, person) => {
      const { code } = asked.request.params as { code: string };
      const form = formOf(asked.request);
      try {
        const given = await givenIn(at, code, form);
        await at.review.answer(code, given, form.because, nameOf(person), form.seen);
      } catch (error) {
        if (!(error instanceof CatalogError) || !REFUSALS.includes(error.code)) throw error;
        return ask(asked, at, person, code, { ...form, trouble: error.message });
      }
      await onward(asked, at, person, code);
    }),
  );
  post(
    '/desk/match/:review/undo',
    within(async (asked, at, person) => {
      const code = await at.review.undo(nameOf(person), firstValue(asked.request.body, 'asked', 100));
      asked.response.redirect(303, code === undefined ? matchLink(at.key) : questionLink(at.key, code));
    }),
  );
  post(
    '/desk/match/:review/rematch',
    within(async (asked, at) => {
      // What fails is told by the pages that ask the review next.
      const done = at.review.rematch().catch(() => {});
      await Promise.race([done, patience()]);
      asked.response.redirect(303, matchLink(at.key));
    }),
  );
  get(
    '/desk/match/:review/crosswalk.csv',
    within((asked, at) =>
      soon(asked, at, at.review.crosswalk(), async text => {
        const { from, to } = at.review.names;
        asked.response
          .attachment(`${fileName('crosswalk', from, to)}.csv`)
          .type('text/csv; charset=utf-8')
          .setHeader('Cache-Control', 'no-store')
          .send(text);
      }),
    ),
  );

  const showRecord = (asked: Answering, at: DeskReview, trouble: string) =>
    soon(asked, at, desk.lineage(at), async found => {
      const page = matchRecordPage(at, found, csrfField(asked.request), trouble);
      await show(asked, 'match-record', page, page.heading, trouble ? 400 : 200);
    });
  const ofEditions = (answer: Parameters<typeof within>[0]) =>
    within((asked, at, person) =>
      at.told.catalog === undefined
        ? missing(asked, 'These are tables, and no editions of a catalog.', matchLink(at.key), 'Go on with the review')
        : answer(asked, at, person),
    );
  get(
    '/desk/match/:review/record',
    ofEditions((asked, at) => showRecord(asked, at, '')),
  );
  post(
    '/desk/match/:review/record',
    ofEditions(async (asked, at, person) => {
      try {
        const { name } = await desk.record(at, firstValue(asked.request.body, 'seen', 100) ?? '', person);
        asked.response.redirect(303, `${matchLink(at.key, 'done')}?recorded=${encodeURIComponent(name)}`);
      } catch (error) {
        if (!(error instanceof CatalogError) || !['Changed', 'BadArgument', 'Busy'].includes(error.code)) throw error;
        await showRecord(asked, at, error.message);
      }
    }),
  );
}

const REFUSALS: readonly string[] = ['BadArgument', 'UnknownNumber', 'Changed', 'Busy'];

interface AnswerForm {
  readonly answer: string;
  readonly because: string;
  readonly number: string;
  readonly row?: number;
  /** The answer that stood on the page. */
  readonly seen: string;
}

function formOf({ body }: Request): AnswerForm {
  const row = firstValue(body, 'row') ?? '';
  return {
    answer: firstValue(body, 'answer') ?? '',
    because: firstValue(body, 'because', LONGEST_REASON) ?? '',
    number: firstValue(body, 'number', 200) ?? '',
    seen: firstValue(body, 'seen', 100) ?? '',
    ...(/^\d{1,9}$/.test(row) ? { row: Number(row) } : {}),
  };
}

/** What a form says. Throws BadArgument or UnknownNumber where it says nothing, or two things at once. */
async function givenIn({ review }: DeskReview, code: string, { answer, number, row }: AnswerForm): Promise<Given> {
  const refused = (sentence: string) => new CatalogError('BadArgument', sentence);
  const other = number !== '' || row !== undefined;
  // The key Enter in a field sends the form without a button: that is an answer only where another row is named.
  const kind = answer === '' && other ? 'instead' : answer;
  if (!FORMS.includes(kind)) throw refused('Nothing was answered yet; choose one of the buttons.');
  if (kind !== 'instead' && kind !== 'also') {
    if (number !== '') {
      throw refused(`You also wrote the number ${number}; take it out, or choose the button beside it.`);
    }
    return { kind: kind as 'yes' | 'no' | 'withdrawn' };
  }
  if (number === '') {
    if (row === undefined) throw refused('Choose another row, or write its number.');
    return { kind, row };
  }
  const side = (await review.question(code))?.kind === 'new' ? 'old' : 'new';
  const found = await review.rowsWithNumber(side, number);
  if (found.length > 1) {
    throw refused(`${found.length} rows print ${number}; choose one from the list, or answer this one in the file.`);
  }
  return { kind, row: found[0]! };
}

const nameOf = (person: Person) => (person.address === '' ? person.name : writtenAs(person));
