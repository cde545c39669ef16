import type { IntakeDesk } from '../../commands/intake/intake-desk.ts';
import { countTable } from '../../commands/intake/intake-table.ts';
import { fileName, firstValue, pageOf } from '../query-values.ts';
import type { Answering, Routes } from '../routes.ts';
import { requirePerson } from '../signed-in.ts';
import { countsOf, type IntakeFilter, intakePage } from './intake-page.ts';

/** What came in from the work. Reports name people and places, so they are for people with a name. */
export function intakeRoutes({ get, show }: Routes, desk: IntakeDesk): void {
  const reading = async ({ request }: Answering) => {
    requirePerson(request);
    const found = await desk.reports((request.params as { draft: string }).draft);
    return { found, filter: filterOf(request.query, found.index.settings.levels.length) };
  };
  get('/desk/:draft/intake', async asked => {
    const { found, filter } = await reading(asked);
    const newest = asked.published.headers.at(-1)?.name ?? '';
    const page = intakePage(found, { filter, page: pageOf(asked.request.query), newest });
    await show(asked, 'intake', page, `Intake for ${page.edition}`);
  });

  get('/desk/:draft/intake/lines.csv', async asked => {
    const { found, filter } = await reading(asked);
    const name = found.index.header.name;
    const report = { edition: name, findings: found.findings, ...countsOf(found, filter).counts };
    asked.response
      .attachment(`${fileName('intake', name)}.csv`)
      .type('text/csv; charset=utf-8')
      .setHeader('Cache-Control', 'no-store')
      .send(countTable(report, 'intake.csv'));
  });
}

function filterOf(query: Answering['request']['query'], levels: number): IntakeFilter {
  const level = Number(firstValue(query, 'level', 2) ?? '0');
  return {
    cause: firstValue(query, 'cause', 200) ?? '',
    level: Number.isInteger(level) && level > 0 && level <= levels ? level : 0,
  };
}
