import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Found } from '../../search/search-index.ts';

/*
 * server ──{id, edition, text}──▶ thread        An index of 100,000 items takes minutes to build and 0.3 s to ask. In
 *        ◀──{id, found}───────────              the server's own thread nobody else would be answered meanwhile.
 */

/** Looks words up in an edition; undefined where they cannot be looked up yet. */
export type FindWords = (edition: string, text: string, most: number) => Promise<Found | undefined>;

export interface SearchThread {
  readonly find: FindWords;
  /** Ends the thread; nothing is looked up any more. */
  close(): Promise<void>;
}

export interface ToSearch {
  readonly id: number;
  readonly edition: string;
  readonly text: string;
  readonly most: number;
}

export type FromSearch =
  | { readonly progress: string }
  | { readonly ready: true }
  | { readonly id: number; readonly found: Found }
  | { readonly id: number; readonly trouble: string };

interface Told {
  readonly progress: (message: string) => void;
  /** Where the end of the thread is told, should it fail. */
  readonly report: (line: string) => void;
}

/** The compiled thread; absent where the program runs from its sources, as in tests. */
const THREAD = join(import.meta.dirname, 'search-worker.js');
/** An edition that is published while the server runs is indexed when it is first asked for; nobody waits for that. */
const PATIENCE_MS = 10_000;

/**
 * Starts a thread that builds the search index of every edition and then answers; until it is ready nothing is found,
 * and said so. Undefined where there is no compiled thread to start. Should the thread fail, that is reported, and
 * `find` rejects: whoever asks may look words up some other way.
 */
export function searchThread(
  dir: string,
  { progress, report }: Told,
  thread: string = THREAD,
): SearchThread | undefined {
  if (!existsSync(thread)) return undefined;
  const worker = new Worker(thread, { workerData: { dir } });
  // A server that stops does not wait for an index.
  worker.unref();
  const asked = new Map<number, { resolve: (found: Found) => void; reject: (error: Error) => void }>();
  let ready = false;
  let ended: Error | undefined;
  let closing = false;
  let last = 0;
  const end = (error: Error) => {
    if (ended) return;
    ended = error;
    for (const { reject } of asked.values()) reject(error);
    asked.clear();
    if (!closing) report(`The thread that looks words up has ended: ${error.message}. Words are looked up without it.`);
  };
  worker.on('error', end);
  worker.on('exit', code => end(new Error(`exit code ${code}`)));
  worker.on('message', (message: FromSearch) => {
    if ('progress' in message) return progress(message.progress);
    if ('ready' in message) {
      ready = true;
      return;
    }
    const waiting = asked.get(message.id);
    asked.delete(message.id);
    if ('found' in message) waiting?.resolve(message.found);
    else waiting?.reject(new Error(message.trouble));
  });

  return {
    find: async (edition, text, most) => {
      if (ended) throw ended;
      if (!ready) return undefined;
      const id = ++last;
      const found = new Promise<Found>((resolve, reject) => asked.set(id, { resolve, reject }));
      worker.postMessage({ id, edition, text, most } satisfies ToSearch);
      return withinTime(found);
    },
    close: async () => {
      closing = true;
      await worker.terminate();
    },
  };
}

async function withinTime(found: Promise<Found>): Promise<Found | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<undefined>(resolve => {
    timer = setTimeout(() => resolve(undefined), PATIENCE_MS);
  });
  try {
    return await Promise.race([found, late]);
  } finally {
    clearTimeout(timer);
    found.catch(() => {});
  }
}
