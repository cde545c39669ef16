import type { Command } from 'commander';
import { briefingPages } from '../commands/bundles/briefing-page.ts';
import { servedCarry } from '../commands/bundles/carry-page.ts';
import { deskOf } from '../commands/desk.ts';
import { lessonsCiting } from '../commands/finding/lessons-citing.ts';
import { searchThread } from '../commands/finding/search-thread.ts';
import { publishedCatalog } from '../commands/reading/published-catalog.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { portNumber } from './port-number.ts';
import { printLines } from './print.ts';
import { heldJobs, type JobsOptions, jobsOptions } from './serve-jobs.ts';
import { heldMatches, matchOptions, type ToldMatch } from './serve-matches.ts';

interface ServeOptions extends JobsOptions {
  readonly port: number;
  readonly host: string;
  readonly address?: string;
  readonly lessons?: readonly string[];
  readonly lessonsEdition?: string;
}

export function addServe(program: Command): void {
  const serve = program.command('serve');
  serve
    .description('Show the catalog in a browser: look up, editions, items, crosswalks, losses')
    .option('--port <port>', 'where to listen; 0 takes any free port', portNumber, 4180)
    .option('--host <address>', 'the address to listen on; anything but loopback lets others in', '127.0.0.1')
    .option('--address <address>', 'where others reach it, through a proxy that speaks https and passes Host on')
    .option('--lessons <file...>', 'lessons, read once: the page of an item says which of them cite it')
    .option('--lessons-edition <edition>', 'what a lesson means that does not say its edition (default: the newest)');
  jobsOptions(serve);
  const matches = matchOptions(serve);
  serve
    .addHelpText(
      'after',
      `
Examples:
  fishplate serve
  fishplate serve --port 0 --catalog works.git
  fishplate serve --address https://catalog.example
  fishplate serve --lessons course/*.md course/*.docx --lessons-edition 2018
  fishplate serve --jobs orders/*.csv orders/spring.xlsx --jobs-edition 2018
  fishplate serve --match 2018.csv 2024.csv --answers answers.csv

Phones keep pages for use without a network only where they reach the viewer over https.

Everybody reads; people with a token settle losses, leave notes, answer comments and work on drafts: fishplate people add "Name <address>"`,
    )
    .action(async (options: ServeOptions, command: Command) => {
      const threads: { close(): Promise<void> }[] = [];
      try {
        await serveUntilStopped(options, command, matches, threads);
      } finally {
        // Where nothing can be served, a thread that goes on would keep the command from ending.
        for (const thread of threads) await thread.close();
      }
    });
}

async function serveUntilStopped(
  options: ServeOptions,
  command: Command,
  matches: readonly ToldMatch[],
  threads: { close(): Promise<void> }[],
): Promise<void> {
  const catalog = await readingCatalog(command);
  const report = (line: string) => process.stderr.write(`${line}\n`);
  const ports = portsOf(command);
  const held = await heldMatches(ports, catalog, matches, { writing: () => writingCatalog(command), report });
  threads.push(...(held?.reviews ?? []));
  const jobs = await heldJobs(ports, catalog, options, report);
  if (jobs) threads.push(jobs);
  const words = searchThread(catalog.dir, { progress: ports.progress, report });
  if (words) threads.push(words);
  const published = publishedCatalog(catalog, words?.find);
  // What cannot be read is said here, and not on every page.
  const { headers } = await published();
  const { lessons: files, lessonsEdition: meant = headers.at(-1)?.name } = options;
  const lessons = files && meant !== undefined ? await lessonsCiting(ports, catalog, files, meant) : undefined;
  // Express and the templates are loaded here, so that no other command waits for them.
  const [{ viewerApp }, { listen }] = await Promise.all([import('../web/app.ts'), import('../web/listen.ts')]);
  const desk = deskOf(ports, catalog, () => writingCatalog(command), held);
  const carry = servedCarry(catalog);
  const viewer = await listen(options, address =>
    viewerApp({
      published,
      address,
      now: ports.now,
      report,
      desk,
      briefings: briefingPages(catalog),
      offline: {},
      ...(carry ? { carry } : {}),
      ...(lessons ? { lessons } : {}),
      ...(jobs ? { jobs } : {}),
    }),
  );
  if (!viewer.loopback) {
    process.stderr.write(
      `Warning: ${options.host} can be reached from other machines; everybody who reaches it can read this catalog.\n`,
    );
  }
  const outside = options.address === undefined ? '' : `, reached as ${options.address}`;
  printLines([`Serving ${catalog.dir} at ${viewer.address}${outside}`, 'Stop with Ctrl+C.']);
  await new Promise<void>(resolve => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await viewer.close();
}
