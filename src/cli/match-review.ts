import type { Command } from 'commander';
import { openMatchReview, type ReviewRequest } from '../commands/match-review.ts';
import { newToken, onePerson, type PeopleSource, peopleOf } from '../commands/people.ts';
import { CatalogError } from '../model/errors.ts';
import { portsOf, readingCatalog } from './context.ts';
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
  options: ReviewOptions,
): Promise<void> {
  const ports = portsOf(command);
  const file = options.answers?.at(-1);
  if (file === undefined) {
    throw new CatalogError('BadArgument', 'Say where the answers go: --review --answers answers.csv');
  }
  for (const table of tables) {
    if (await ports.files.same(table, file)) {
      throw new CatalogError('OutputIsInput', `${file} is an input; name another file with --answers.`);
    }
  }
  const earlier = options.answers!.slice(0, -1);
  const { editions, people } = inCatalog ? await ofCatalog(command, tables) : await ofTables(command, tables, options);
  const review = await openMatchReview(ports, { ...editions, earlier, file });
  printFindings(review.findings);
  const token = newToken(ports);
  const me = onePerson({ name: ports.author.name, address: ports.author.email }, token);
  const [{ matchReviewApp }, { listen }] = await Promise.all([
    import('../web/match-review-app.ts'),
    import('../web/listen.ts'),
  ]);
  const viewer = await listen({ port: options.port, host: '127.0.0.1' }, address =>
    matchReviewApp({
      review,
      people: eitherOf(me, people),
      address,
      now: ports.now,
      report: line => process.stderr.write(`${line}\n`),
      command: commandFor(
        tables,
        inCatalog ? command.optsWithGlobals<{ catalog: string }>().catalog : undefined,
        options,
      ),
    }),
  );
  const { left, answered } = await review.progress();
  printLines([
    `${count(left, 'link')} to look at${answered > 0 ? `, ${answered} answered already` : ''}. Open ${viewer.address} and sign in as ${ports.author.name} with this token:`,
    `  ${token}`,
    `Each answer goes to ${file} at once; the same command goes on where you left. Stop with Ctrl+C.`,
  ]);
  await new Promise<void>(resolve => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await viewer.close();
}

type Editions = Pick<ReviewRequest, 'from' | 'to' | 'known'>;

async function ofTables(command: Command, tables: readonly string[], { columns }: ReviewOptions) {
  const { readBareEditions } = await import('../commands/match-tables.ts');
  const request = { from: tables.slice(0, -1), to: tables.slice(-1), ...(columns ? { columns } : {}) };
  const editions: Editions = { ...(await readBareEditions(portsOf(command), request)), known: [] };
  return { editions, people: undefined };
}

async function ofCatalog(command: Command, names: readonly string[]) {
  const { readForMatching } = await import('../commands/match-editions.ts');
  const catalog = await readingCatalog(command);
  const editions: Editions = await readForMatching(catalog, names[0]!, names[1]!);
  return { editions, people: peopleOf(catalog) };
}

/** The person at the machine, and whoever has a token of the catalog. */
function eitherOf(me: PeopleSource, others: PeopleSource | undefined): PeopleSource {
  if (!others) return me;
  return {
    find: async token => (await me.find(token)) ?? others.find(token),
    holds: async key => (await me.holds(key)) || others.holds(key),
  };
}

/** What to run with the answers: a table of the crosswalk, or lineage of the catalog. */
function commandFor(
  tables: readonly string[],
  catalog: string | undefined,
  { answers, columns }: ReviewOptions,
): string {
  const told = columns ? ['--columns', [...columns].map(([role, header]) => `${role}=${header}`).join(',')] : [];
  const words = ['fishplate', 'match', ...tables, ...told, '--answers', ...answers!];
  const goal = catalog === undefined ? ['--out', 'crosswalk.csv'] : ['--catalog', catalog, '--record'];
  return [...words, ...goal]
    .map(word => (/^[\w./=,:@%+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`))
    .join(' ');
}
