import type { Request } from 'express';
import { crosswalkCsv } from '../commands/crosswalk-csv.ts';
import { type CrosswalkFilter, filterLines } from './crosswalk-filter.ts';
import { crosswalkPage } from './crosswalk-page.ts';
import { fileName, pageOf, valuesOf } from './query-values.ts';
import type { Routes } from './routes.ts';

export function crosswalkRoutes({ get, show }: Routes): void {
  get('/crosswalk/:from/:to', async asked => {
    const { from, to } = asked.request.params as { from: string; to: string };
    const page = pageOf(asked.request.query);
    const found = await crosswalkPage(asked.published, from, to, filterOf(asked.request), page);
    await show(asked, 'crosswalk', found, `${from} to ${to}`);
  });

  get('/crosswalk/:from/:to/lines.csv', async ({ published, request, response }) => {
    const { from, to } = request.params as { from: string; to: string };
    const csv = crosswalkCsv(filterLines(await published.crosswalk(from, to), filterOf(request)));
    response
      .attachment(`${fileName('crosswalk', from, to)}.csv`)
      .type('text/csv; charset=utf-8')
      .send(csv);
  });
}

function filterOf({ query }: Request): CrosswalkFilter {
  const list = (key: keyof CrosswalkFilter) => valuesOf(query, key, 500).slice(0, 40);
  return { fate: list('fate'), mark: list('mark'), part: list('part'), reason: list('reason'), kind: list('kind') };
}
