import type { Request } from 'express';
import type { BriefingPage } from '../../commands/bundles/briefing-page.ts';
import { crosswalkCsv } from '../../commands/reading/crosswalk-csv.ts';
import { fileName, pageOf, valuesOf } from '../query-values.ts';
import type { Routes } from '../routes.ts';
import { type CrosswalkFilter, filterLines } from './crosswalk-filter.ts';
import { crosswalkPage } from './crosswalk-page.ts';

export type Briefings = (from: string, to: string) => Promise<BriefingPage>;

export function crosswalkRoutes({ get, show }: Routes, briefings: Briefings | undefined): void {
  get('/crosswalk/:from/:to', async asked => {
    const { from, to } = asked.request.params as { from: string; to: string };
    const page = pageOf(asked.request.query);
    const found = await crosswalkPage(asked.published, from, to, filterOf(asked.request), page);
    const shown = briefings ? found : { ...found, briefingHref: '' };
    await show(asked, 'crosswalk', shown, `${from} to ${to}`);
  });

  if (briefings) {
    get('/briefing/:from/:to', async ({ published, request, response }) => {
      const { from, to } = request.params as { from: string; to: string };
      // The names are checked first: a draft is none that is shown here.
      const names = [(await published.edition(from)).header.name, (await published.edition(to)).header.name] as const;
      const { html, style, script } = await briefings(...names);
      // A page for a folder has its style and its script in it; by their hashes these two may be there, and nothing else.
      response.setHeader(
        'Content-Security-Policy',
        `default-src 'none'; style-src ${style}; script-src ${script}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'`,
      );
      response.setHeader('Cache-Control', 'no-cache');
      response.type('html').send(html);
    });
  }

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
