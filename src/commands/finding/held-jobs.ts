import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { ItemId } from '../../model/item.ts';
import type { Catalog } from '../../store/open.ts';
import type { Ports } from '../ports/ports.ts';
import { type CitingJobs, itemKey, type JobsToRead, type ReadJobs } from './jobs-citing.ts';

/** What job lines cite, for a server that answers while they are still being read. */
export interface JobsCiting {
  /** Undefined as long as they are being read. */
  read(): Omit<ReadJobs, 'found'> | undefined;
  of(edition: string, item: ItemId): CitingJobs | undefined;
  /** When everything is read; never rejects. */
  readonly done: Promise<void>;
  close(): Promise<void>;
}

export interface ToRead {
  readonly dir: string;
  readonly jobs: JobsToRead;
}

export type FromJobs = { readonly progress: string } | { readonly jobs: ReadJobs } | { readonly failed: string };

/** The compiled thread; absent where the program runs from its sources, as in tests. */
const THREAD = join(import.meta.dirname, 'jobs-worker.js');

/**
 * Begins to read tables of jobs, in a thread where there is a compiled one: a workbook is unpacked in one piece, and a
 * million lines take ten seconds that others would wait for.
 *
 * @param report where it is told what was read, and what could not be
 */
export function holdJobs(
  ports: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  jobs: JobsToRead,
  report: (line: string) => void,
  thread: string = THREAD,
): JobsCiting {
  let known: ReadJobs | undefined;
  const { reading, close } = existsSync(thread)
    ? inThread(thread, { dir: catalog.dir, jobs }, ports.progress)
    : { reading: readHere(ports, catalog, jobs), close: async () => {} };
  const done = reading
    .catch((error: Error): ReadJobs => {
      const unread = jobs.inputs.map(file => ({ file, why: error.message }));
      return { found: new Map(), files: unread.length, lines: 0, unknown: 0, unread };
    })
    .then(read => {
      for (const { file, why } of read.unread) report(`Jobs: ${file} is not counted. ${why}`);
      const nothing = read.unknown > 0 ? `; ${read.unknown.toLocaleString('en')} of them name no item` : '';
      report(`Jobs: ${read.lines.toLocaleString('en')} lines read${nothing}.`);
      known = read;
    });
  return {
    read: () => known,
    of: (edition, item) => known?.found.get(itemKey(edition, item)),
    done,
    close,
  };
}

/** What reads the tables is loaded where it is used: a server with a thread does not wait for it. */
async function readHere(ports: Pick<Ports, 'files' | 'progress'>, catalog: Catalog, jobs: JobsToRead) {
  const { readJobsCiting } = await import('./read-jobs-citing.ts');
  return readJobsCiting(ports, catalog, jobs);
}

function inThread(thread: string, work: ToRead, progress: (message: string) => void) {
  const worker = new Worker(thread, { workerData: work });
  // A server that stops does not wait for a table.
  worker.unref();
  const reading = new Promise<ReadJobs>((resolve, reject) => {
    worker.on('error', reject);
    worker.on('exit', code => reject(new Error(`The thread that reads them has ended with code ${code}.`)));
    worker.on('message', (message: FromJobs) => {
      if ('progress' in message) progress(message.progress);
      else if ('jobs' in message) resolve(message.jobs);
      else reject(new Error(message.failed));
    });
  });
  const close = async () => {
    await worker.terminate();
  };
  return { reading, close };
}
