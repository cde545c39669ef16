import type { Request } from 'express';
import { auditCsv } from '../../commands/audit/audit-table.ts';
import type { LossesDesk } from '../../commands/audit/losses-desk.ts';
import type { Verdict } from '../../commands/audit/settle-one-loss.ts';
import { CatalogError } from '../../model/errors.ts';
import { lossesLink } from '../links.ts';
import { fileName, firstValue, pageOf, valuesOf } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { signInLink } from '../sign-in.ts';
import { csrfField, personOf, requirePerson } from '../signed-in.ts';
import { filterLosses, type LossesFilter, lossesQuery } from './losses-filter.ts';
import { lossesPage } from './losses-page.ts';

interface Between {
  readonly from: string;
  readonly to: string;
}

/** The losses between two editions: everybody reads them, people with a name settle them. */
export function lossesRoutes({ get, post, show }: Routes, desk: LossesDesk): void {
  const reading = async ({ request, published }: Answering) => {
    const { from, to } = request.params as unknown as Between;
    // A draft is not published: who has no name here learns no more of it than on any other page.
    const known = (edition: string) => published.headers.some(h => h.name === edition);
    for (const edition of [from, to]) if (!known(edition) && !personOf(request)) await published.edition(edition);
    return { from, to, known, report: await desk.read(from, to) };
  };
  const showList = async (asked: Answering, refused?: Verdict & { readonly trouble: string }) => {
    const { request } = asked;
    const { from, to, known, report } = await reading(asked);
    const person = personOf(request);
    const page = lossesPage(report, {
      filter: filterOf(request),
      page: pageOf(request.query),
      person,
      csrf: person && csrfField(request),
      done: firstValue(request.query, 'done'),
      refused,
      here: lossesLink(from, to, lossesQuery(filterOf(request))),
      signIn: signInLink,
      published: known,
    });
    await show(asked, 'losses', page, `Losses from ${from} to ${to}`, refused ? 400 : 200);
  };

  get('/losses/:from/:to', asked => showList(asked));

  get('/losses/:from/:to/lines.csv', async asked => {
    const { from, to, report } = await reading(asked);
    asked.response
      .attachment(`${fileName('losses', from, to)}.csv`)
      .type('text/csv; charset=utf-8')
      .send(auditCsv({ ...report, lines: filterLosses(report, filterOf(asked.request)) }));
  });

  /** Does what a form asks; what cannot be done is said on the page, with what was typed. */
  const keep = async (asked: Answering, said: Verdict, work: (between: Between) => Promise<void>) => {
    const { request, response } = asked;
    const { from, to } = request.params as unknown as Between;
    try {
      await work({ from, to });
    } catch (error) {
      if (!(error instanceof CatalogError && error.code === 'BadArgument')) throw error;
      return showList(asked, { ...said, trouble: error.message });
    }
    response.redirect(303, `${lossesLink(from, to, [...lossesQuery(filterOf(request)), ['done', said.key]])}#done`);
  };
  post('/losses/:from/:to/:key', async asked => {
    const person = requirePerson(asked.request);
    const { params, body } = asked.request as Request<{ key: string }>;
    const said = {
      key: params.key,
      verdict: firstValue(body, 'verdict', 20) ?? '',
      because: firstValue(body, 'because', 2000) ?? '',
    };
    await keep(asked, said, ({ from, to }) => desk.settle(from, to, said, person));
  });
  post('/losses/:from/:to/:key/sign', async asked => {
    const person = requirePerson(asked.request);
    const { key } = asked.request.params as { key: string };
    await keep(asked, { key, verdict: '', because: '' }, ({ from, to }) => desk.sign(from, to, key, person));
  });
}

function filterOf({ query }: Request): LossesFilter {
  const list = (key: keyof LossesFilter) => valuesOf(query, key, 500).slice(0, 40);
  return { state: list('state'), kind: list('kind'), part: list('part') };
}
