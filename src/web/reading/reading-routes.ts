import { entriesAt } from '../../commands/finding/search-editions.ts';
import { CatalogError } from '../../model/errors.ts';
import { firstValue } from '../query-values.ts';
import type { Routes } from '../routes.ts';
import { editionPage } from './edition-page.ts';
import { homePage } from './home-page.ts';
import { editionOfId } from './item-page.ts';
import { type BesideItem, noteRoutes, showItem } from './item-routes.ts';
import { numberPage } from './number-page.ts';
import { searchPage } from './search-page.ts';
import { suggestionsFor } from './suggestions.ts';

/** Looking up, items and editions. */
export function readingRoutes(routes: Routes, beside: BesideItem, carries = false): void {
  const { get, show } = routes;
  if (beside.notes) noteRoutes(routes, beside.notes, beside);
  get('/', async asked => {
    await show(asked, 'home', await homePage(asked.published, carries), '');
  });

  get('/search', async asked => {
    const query = firstValue(asked.request.query, 'q') ?? '';
    const page = await searchPage(asked.published, query);
    // An answer for want of an index is not one to find again without a network.
    if (page.later) asked.response.setHeader('Cache-Control', 'no-store');
    await show(asked, 'search', page, query === '' ? 'Look up' : query);
  });

  get('/suggest', async ({ published, request, response }) => {
    response.setHeader('Cache-Control', 'no-cache');
    response.json(await suggestionsFor(published, firstValue(request.query, 'q', 200) ?? ''));
  });

  get('/at/:edition/:number', async asked => {
    const { published, request } = asked;
    const { edition, number } = request.params as { edition: string; number: string };
    const { name } = (await published.edition(edition)).header;
    const entries = await entriesAt(published, name, number);
    if (entries.length > 1) {
      return show(asked, 'number', await numberPage(published, name, number, entries), `${number} in ${name}`);
    }
    const entry = entries[0]!;
    await showItem(routes, beside, asked, name, entry);
  });

  get('/item/:id', async asked => {
    const { published, request } = asked;
    const { id } = request.params as { id: string };
    const wanted = firstValue(request.query, 'in');
    const name =
      wanted === undefined ? await editionOfId(published, id) : (await published.edition(wanted)).header.name;
    const entry = (await published.edition(name)).places.get(id);
    if (!entry) {
      const known = await editionOfId(published, id);
      throw new CatalogError('UnknownItem', `Edition ${name} has no item ${id}; it stands in edition ${known}.`, {
        known: [known],
      });
    }
    await showItem(routes, beside, asked, name, entry);
  });

  for (const path of ['/edition/:edition', '/edition/:edition/part/:part']) {
    get(path, async asked => {
      const { published, request } = asked;
      const { edition, part } = request.params as { edition: string; part?: string };
      const wanted = {
        type: firstValue(request.query, 'type'),
        part,
        whole: firstValue(request.query, 'whole') === 'yes',
      };
      const { name } = (await published.edition(edition)).header;
      const found = await editionPage(published, name, wanted);
      await show(asked, 'edition', found, part ? `${found.heading} (${name})` : found.heading);
    });
  }
}
