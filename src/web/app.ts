import { join } from 'node:path';
import express, { type Express, type NextFunction, type Request, type Response } from 'express';
import { crosswalkCsv } from '../commands/crosswalk-csv.ts';
import type { PublishedCatalog } from '../commands/published-catalog.ts';
import { entriesAt } from '../commands/search-editions.ts';
import { CatalogError } from '../model/errors.ts';
import { type CrosswalkFilter, filterLines } from './crosswalk-filter.ts';
import { crosswalkPage } from './crosswalk-page.ts';
import { editionPage } from './edition-page.ts';
import { type ErrorPage, errorPage, noSuchPage } from './error-page.ts';
import { guards } from './guard.ts';
import { homePage } from './home-page.ts';
import { editionOfId, itemPage } from './item-page.ts';
import type { Address } from './listen.ts';
import { numberPage } from './number-page.ts';
import { firstValue, pageOf, valuesOf } from './query-values.ts';
import { type Pages, render, VIEWS } from './render.ts';
import { searchPage } from './search-page.ts';
import { siteOf } from './site.ts';
import { suggestionsFor } from './suggestions.ts';

export interface ViewerParts {
  /** What is published at this moment. */
  readonly published: () => Promise<PublishedCatalog>;
  readonly address: Address;
  readonly now: () => Date;
  /** Where defects are told. */
  readonly report: (line: string) => void;
}

/** The viewer as a request handler: every page of it is made here, on request, from what is published then. */
export function viewerApp(parts: ViewerParts): Express {
  const app = express();
  app.disable('x-powered-by');
  app.set('env', 'production');
  app.set('query parser', 'simple');
  app.use(guards(parts.address));
  for (const asset of ['style.css', 'desk.css', 'icon.svg', 'suggest.js']) {
    app.get(`/${asset}`, (_, response) => response.sendFile(join(VIEWS, asset), { maxAge: '1h' }));
  }

  const show = async <K extends keyof Pages>(
    { request, response, published }: Shown,
    name: K,
    page: Pages[K],
    title: string,
    status = 200,
  ) => {
    const newest = published?.headers.at(-1);
    const site = siteOf(
      published ?? { headers: [] },
      // A damaged edition must not keep the page from saying that it is damaged.
      newest && (await published?.edition(newest.name).catch(() => undefined)),
      `${parts.address.origin}${request.originalUrl}`,
      parts.now(),
    );
    response.setHeader('Cache-Control', 'no-cache');
    response
      .status(status)
      .type('html')
      .send(await render(name, page, site, title));
  };
  const page = (path: string, answer: (shown: Answering) => Promise<void>) =>
    app.get(path, async (request, response) => answer({ request, response, published: await parts.published() }));

  page('/', async shown => {
    await show(shown, 'home', await homePage(shown.published), '');
  });

  page('/search', async shown => {
    const query = firstValue(shown.request.query, 'q') ?? '';
    await show(shown, 'search', await searchPage(shown.published, query), query === '' ? 'Look up' : query);
  });

  page('/suggest', async ({ published, request, response }) => {
    response.setHeader('Cache-Control', 'no-cache');
    response.json(await suggestionsFor(published, firstValue(request.query, 'q', 200) ?? ''));
  });

  page('/at/:edition/:number', async shown => {
    const { published, request } = shown;
    const { edition, number } = request.params as { edition: string; number: string };
    const { name } = (await published.edition(edition)).header;
    const entries = await entriesAt(published, name, number);
    if (entries.length > 1) {
      return show(shown, 'number', await numberPage(published, name, number, entries), `${number} in ${name}`);
    }
    const entry = entries[0]!;
    const found = await itemPage(published, name, entry, itemRequest(request));
    await show(shown, 'item', found, `${entry.number} ${entry.title} (${name})`);
  });

  page('/item/:id', async shown => {
    const { published, request } = shown;
    const { id } = request.params as { id: string };
    const asked = firstValue(request.query, 'in');
    const name = asked === undefined ? await editionOfId(published, id) : (await published.edition(asked)).header.name;
    const entry = (await published.edition(name)).places.get(id);
    if (!entry) {
      const known = await editionOfId(published, id);
      throw new CatalogError('UnknownItem', `Edition ${name} has no item ${id}; it stands in edition ${known}.`, {
        known: [known],
      });
    }
    const found = await itemPage(published, name, entry, itemRequest(request));
    await show(shown, 'item', found, `${entry.number} ${entry.title} (${name})`);
  });

  for (const path of ['/edition/:edition', '/edition/:edition/part/:part']) {
    page(path, async shown => {
      const { published, request } = shown;
      const { edition, part } = request.params as { edition: string; part?: string };
      const asked = {
        type: firstValue(request.query, 'type'),
        part,
        whole: firstValue(request.query, 'whole') === 'yes',
      };
      const { name } = (await published.edition(edition)).header;
      const found = await editionPage(published, name, asked);
      await show(shown, 'edition', found, part ? `${found.heading} (${name})` : found.heading);
    });
  }

  page('/crosswalk/:from/:to', async shown => {
    const { published, request } = shown;
    const { from, to } = request.params as { from: string; to: string };
    const found = await crosswalkPage(published, from, to, filterOf(request), pageOf(request.query));
    await show(shown, 'crosswalk', found, `${from} to ${to}`);
  });

  page('/crosswalk/:from/:to/lines.csv', async ({ published, request, response }) => {
    const { from, to } = request.params as { from: string; to: string };
    const csv = crosswalkCsv(filterLines(await published.crosswalk(from, to), filterOf(request)));
    const safe = (name: string) => name.replace(/[^A-Za-z0-9.-]/g, '_');
    response
      .attachment(`crosswalk-${safe(from)}-${safe(to)}.csv`)
      .type('text/csv; charset=utf-8')
      .send(csv);
  });

  const fail = async (request: Request, response: Response, found: ErrorPage) => {
    const published = await parts.published().catch(() => undefined);
    await show({ request, response, published }, 'error', found, found.heading, found.status);
  };
  app.use((request: Request, response: Response) => fail(request, response, noSuchPage));
  app.use((error: unknown, request: Request, response: Response, _next: NextFunction) => {
    const found = errorPage(error);
    if (found.status === 500) parts.report(`${request.originalUrl}: ${(error as Error)?.stack ?? error}`);
    return fail(request, response, found);
  });
  return app;
}

interface Shown {
  readonly request: Request;
  readonly response: Response;
  /** Absent where the catalog itself cannot be read. */
  readonly published: PublishedCatalog | undefined;
}

interface Answering extends Shown {
  readonly published: PublishedCatalog;
}

const itemRequest = ({ query }: Request) => ({ beside: firstValue(query, 'with'), show: firstValue(query, 'show') });

function filterOf({ query }: Request): CrosswalkFilter {
  const list = (key: keyof CrosswalkFilter) => valuesOf(query, key, 500).slice(0, 40);
  return { fate: list('fate'), mark: list('mark'), part: list('part'), reason: list('reason'), kind: list('kind') };
}
