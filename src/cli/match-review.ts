import type { Command } from 'commander';
import { holdReview } from '../commands/matching/held-review.ts';
import { readMatchAnswers } from '../commands/matching/match-answers.ts';
import { type DeskReview, matchDesk } from '../commands/matching/match-desk.ts';
import type { ToldReview } from '../commands/matching/open-told-review.ts';
import { newToken, onePerson, type PeopleSource, peopleOf } from '../commands/people.ts';
import type { Ports } from '../commands/ports/ports.ts';
import { CatalogError } from '../model/errors.ts';
import { catalogFolder, portsOf, readingCatalog, writingCatalog } from './context.ts';
import { matchCommand } from './match-command.ts';
import { count, printFindings, printLines } from './print.ts';

export interface ReviewOptions {
  readonly answers?: readonly string[];
  readonly columns?: ReadonlyMap<string, string>;
  readonly port: number;
}

/** Serves the review of the links that have to be looked at, on loopback, until it is stopped. */
export async function serveReview(
  command: Command,
  tables: readonly string[],
  inCatalog: boolean,
  { answers, columns, port }: ReviewOptions,
): Promise<void> {
  const ports = portsOf(command);
  if (answers === undefined) {
    throw new CatalogError('BadArgument', 'Say where the answers go: --review --answers answers.csv');
  }
  const told: ToldReview = {
    tables,
    answers,
    ...(inCatalog ? { catalog: await catalogFolder(command) } : {}),
    ...(columns ? { columns } : {}),
  };
  await checkReview(ports, told);
  const at = deskReview(ports, '1', told);
  printFindings(await at.opened);
  const token = newToken(ports);
  const me = onePerson({ name: ports.author.name, address: ports.author.email }, token);
  const others = inCatalog ? peopleOf(await readingCatalog(command)) : undefined;
  const [{ matchReviewApp }, { listen }] = await Promise.all([
    import('../web/matching/match-review-app.ts'),
    import('../web/listen.ts'),
  ]);
  const viewer = await listen({ port, host: '127.0.0.1' }, address =>
    matchReviewApp({
      desk: matchDesk(ports, [at], inCatalog ? () => writingCatalog(command) : undefined),
      people: eitherOf(me, others),
      address,
      now: ports.now,
      report: line => process.stderr.write(`${line}\n`),
    }),
  );
  const { left, answered } = await at.review.progress();
  printLines([
    `${count(left, 'link')} to look at${answered > 0 ? `, ${answered} answered already` : ''}. Open ${viewer.address} and sign in as ${ports.author.name} with this token:`,
    `  ${token}`,
    `Each answer goes to ${at.review.file} at once; the same command goes on where you left. Stop with Ctrl+C.`,
  ]);
  await new Promise<void>(resolve => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await viewer.close();
  await at.close();
}

/** Refuses at once what can be seen at once; the tables themselves are read while a server listens already. */
export async function checkReview({ files }: Ports, { tables, catalog, answers }: ToldReview): Promise<void> {
  const file = answers.at(-1)!;
  for (const table of catalog === undefined ? tables : []) {
    if (!(await files.exists(table))) {
      throw new CatalogError('NoSuchFile', `There is no file ${table}; check the name.`);
    }
    if (!(await files.same(table, file))) continue;
    throw new CatalogError('OutputIsInput', `${file} is an input; name another file with --answers.`);
  }
  // Throws where answers would go into a table of another kind.
  await readMatchAnswers(files, file);
}

/** Begins to hold a review. */
export function deskReview(ports: Ports, key: string, told: ToldReview): DeskReview {
  return { ...holdReview(ports, told), key, command: matchCommand(told) };
}

/** The person at the machine, and whoever has a token of the catalog. */
function eitherOf(me: PeopleSource, others: PeopleSource | undefined): PeopleSource {
  if (!others) return me;
  return {
    find: async token => (await me.find(token)) ?? others.find(token),
    holds: async key => (await me.holds(key)) || others.holds(key),
  };
}
