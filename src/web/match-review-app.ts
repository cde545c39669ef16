import { join } from 'node:path';
import express, { type Express, type NextFunction, type Request, type Response } from 'express';
import type { MatchReview } from '../commands/match-review.ts';
import { type PeopleSource, type Person, writtenAs } from '../commands/people.ts';
import type { Given } from '../commands/review-answers.ts';
import { CatalogError } from '../model/errors.ts';
import { dateWords } from '../model/said-words.ts';
import { type ErrorPage, errorPage, noSuchPage } from './error-page.ts';
import { guards } from './guard.ts';
import type { Address } from './listen.ts';
import { matchReviewPage, questionLink, type Tried } from './match-review-page.ts';
import { askToSignIn, csrfField, people, personOf, requirePerson, signInLink } from './people.ts';
import { firstValue } from './query-values.ts';
import { type Pages, render, VIEWS } from './render.ts';
import type { Site } from './site.ts';

export interface ReviewParts {
  readonly review: MatchReview;
  readonly people: PeopleSource;
  readonly address: Address;
  readonly now: () => Date;
  readonly report: (line: string) => void;
  /** The command that uses the answers, shown when all is answered. */
  readonly command: string;
}

const ASSETS = ['style.css', 'desk.css', 'icon.svg', 'match-review.css', 'match-review.js', 'suggest.js'];
const LONGEST_REASON = 2000;
const FORMS = ['yes', 'no', 'withdrawn', 'instead', 'also'];

/** The review of matched links as a request handler. All of it is for the person with the token, reading as well. */
export function matchReviewApp(parts: ReviewParts): Express {
  const { review } = parts;
  const app = express();
  app.disable('x-powered-by');
  app.set('env', 'production');
  app.set('query parser', 'simple');
  app.use(guards(parts.address, { forms: true }));
  for (const asset of ASSETS) {
    app.get(`/${asset}`, (_, response) => response.sendFile(join(VIEWS, asset), { maxAge: '1h' }));
  }

  const show = async <K extends keyof Pages>(
    { request, response }: Shown,
    name: K,
    page: Pages[K],
    title: string,
    status = 200,
  ) => {
    const site = siteOfReview(parts, request);
    response.setHeader('Cache-Control', 'no-store');
    response
      .status(status)
      .type('html')
      .send(await render(name, page, site, title));
  };
  app.use(
    people({
      address: parts.address,
      source: parts.people,
      now: parts.now,
      showSignIn: (request, response, page, status) => show({ request, response }, 'sign-in', page, 'Sign in', status),
    }),
  );

  const ask = async (shown: Shown, code: string | undefined, tried?: Tried) => {
    const found = await matchReviewPage(review, code, csrfField(shown.request), parts.command, tried);
    if (!found) return show(shown, 'match-review-error', noSuchQuestion, noSuchQuestion.heading, 404);
    return show(shown, 'match-review', found.page, found.title, tried ? 400 : 200);
  };
  const onward = async (response: Response, after?: string) => {
    const next = await review.nextOpen(after);
    response.redirect(303, next === undefined ? '/done' : questionLink(next));
  };

  app.get('/', async (request, response) => {
    requirePerson(request);
    await onward(response);
  });
  app.get('/done', async (request, response) => {
    requirePerson(request);
    await ask({ request, response }, undefined);
  });
  app.get('/q/:code', async (request, response) => {
    requirePerson(request);
    await ask({ request, response }, request.params.code);
  });
  app.post('/q/:code', async (request, response) => {
    const person = requirePerson(request);
    const { code } = request.params as { code: string };
    const form = formOf(request);
    try {
      await review.answer(code, await givenIn(review, code, form), form.because, nameOf(person));
    } catch (error) {
      if (!(error instanceof CatalogError) || !['BadArgument', 'UnknownNumber'].includes(error.code)) throw error;
      return ask({ request, response }, code, { ...form, trouble: error.message });
    }
    await onward(response, code);
  });
  app.post('/undo', async (request, response) => {
    requirePerson(request);
    const code = await review.undo();
    response.redirect(303, code === undefined ? '/' : questionLink(code));
  });
  app.post('/rematch', async (request, response) => {
    requirePerson(request);
    await review.rematch();
    await onward(response);
  });

  const fail = (request: Request, response: Response, found: ErrorPage) =>
    show({ request, response }, 'match-review-error', found, found.heading, found.status);
  app.use((request: Request, response: Response) => fail(request, response, noSuchPage));
  app.use(askToSignIn);
  app.use((error: unknown, request: Request, response: Response, _next: NextFunction) => {
    const found = errorPage(error);
    if (found.status === 500) parts.report(`${request.path}: ${(error as Error)?.stack ?? error}`);
    return fail(request, response, found);
  });
  return app;
}

interface Shown {
  readonly request: Request;
  readonly response: Response;
}

interface AnswerForm {
  readonly answer: string;
  readonly because: string;
  readonly number: string;
  readonly row?: number;
}

function formOf({ body }: Request): AnswerForm {
  const row = firstValue(body, 'row') ?? '';
  return {
    answer: firstValue(body, 'answer') ?? '',
    because: firstValue(body, 'because', LONGEST_REASON) ?? '',
    number: firstValue(body, 'number', 200) ?? '',
    ...(/^\d{1,9}$/.test(row) ? { row: Number(row) } : {}),
  };
}

/** What a form says. Throws BadArgument or UnknownNumber where it says nothing, or two things at once. */
async function givenIn(review: MatchReview, code: string, { answer, number, row }: AnswerForm): Promise<Given> {
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
  const found = review.rowsWithNumber(side, number);
  if (found.length > 1) {
    throw refused(`${found.length} rows print ${number}; choose one from the list, or answer this one in the file.`);
  }
  return { kind, row: found[0]! };
}

const nameOf = (person: Person) => (person.address === '' ? person.name : writtenAs(person));

const noSuchQuestion: ErrorPage = {
  status: 404,
  heading: 'Not here',
  sentence: 'There is no such question, or the matcher is sure of it by now. Go on with the next one.',
  steps: [],
};

function siteOfReview({ review, address, now }: ReviewParts, request: Request): Site {
  return {
    title: `Review of ${review.names.from} to ${review.names.to}`,
    publisher: '',
    language: 'en',
    caution: '',
    links: [],
    address: `${address.origin}${request.originalUrl}`,
    readOn: dateWords(now().toISOString().slice(0, 10)),
    person: personOf(request)?.name ?? '',
    signIn: signInLink(request.method === 'GET' ? request.originalUrl : '/'),
    offline: false,
  };
}
