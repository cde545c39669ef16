import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { CatalogError, type ErrorCode } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { Ports } from '../ports/ports.ts';
import type { MatchReview } from './match-review.ts';
import { nameOfTables } from './name-of-tables.ts';
import type { ToldReview } from './open-told-review.ts';
import { REVIEW_METHODS, type ReviewCalls } from './review-calls.ts';

/*
 * server ──{id, method, args}──▶ thread      Matching takes seconds to minutes; in the server's own thread nobody
 *        ◀──{id, value | trouble}──          else would be answered meanwhile.
 */

/** A review that a server holds while people answer. */
export interface HeldReview {
  readonly told: ToldReview;
  readonly review: ReviewCalls & Pick<MatchReview, 'names' | 'file'>;
  /** Whether it can be asked at this moment; calls wait until it can. */
  state(): ReviewState;
  /** What there is to say of the tables, once it is open; rejects where it cannot be opened. */
  readonly opened: Promise<readonly Finding[]>;
  close(): Promise<void>;
}

export type ReviewState = 'matching' | 'open' | { readonly failed: string };

export interface ToReview {
  readonly id: number;
  readonly method: keyof ReviewCalls;
  readonly args: readonly unknown[];
}

export interface Trouble {
  readonly code: ErrorCode | undefined;
  readonly message: string;
  readonly data: Readonly<Record<string, unknown>>;
}

export type FromReview =
  | { readonly progress: string }
  | { readonly opened: readonly Finding[] }
  | { readonly failed: Trouble }
  | { readonly id: number; readonly value: unknown }
  | { readonly id: number; readonly trouble: Trouble };

/** The compiled thread; absent where the program runs from its sources, as in tests. */
const THREAD = join(import.meta.dirname, 'review-worker.js');

/** What may match anew. */
const LONG: readonly string[] = ['rematch', 'crosswalk', 'lineage'] satisfies (keyof ReviewCalls)[];

/** Begins to open a review, in a thread of its own where there is a compiled one. */
export function holdReview(ports: Ports, told: ToldReview, thread: string = THREAD): HeldReview {
  const [from, to] =
    told.catalog === undefined
      ? [nameOfTables(told.tables.slice(0, -1)), nameOfTables(told.tables.slice(-1))]
      : told.tables;
  const { call, opened, close } = existsSync(thread) ? inThread(ports, told, thread) : inHere(ports, told);
  let working = 0;
  let begun: ReviewState = 'matching';
  opened.then(
    () => {
      begun = 'open';
    },
    (error: Error) => {
      begun = { failed: error.message };
    },
  );
  const asked = async (method: keyof ReviewCalls, args: readonly unknown[]) => {
    const long = LONG.includes(method) ? 1 : 0;
    working += long;
    try {
      return await call(method, args);
    } finally {
      working -= long;
    }
  };
  const calls = Object.fromEntries(
    REVIEW_METHODS.map(method => [method, (...args: readonly unknown[]) => asked(method, args)]),
  ) as unknown as ReviewCalls;
  return {
    told,
    review: { names: { from: from!, to: to! }, file: told.answers.at(-1)!, ...calls },
    state: () => (begun === 'open' && working > 0 ? 'matching' : begun),
    opened,
    close,
  };
}

interface Asked {
  readonly call: (method: keyof ReviewCalls, args: readonly unknown[]) => Promise<unknown>;
  readonly opened: Promise<readonly Finding[]>;
  readonly close: () => Promise<void>;
}

function inHere(ports: Ports, told: ToldReview): Asked {
  // The matcher is loaded where it is used: a server with a thread does not wait for it.
  const review = import('./open-told-review.ts').then(({ openToldReview }) => openToldReview(ports, told));
  return {
    call: async (method, args) => ((await review)[method] as (...given: readonly unknown[]) => unknown)(...args),
    opened: review.then(r => r.findings),
    close: async () => {},
  };
}

function inThread(ports: Ports, told: ToldReview, thread: string): Asked {
  const worker = new Worker(thread, { workerData: told });
  // A server that stops does not wait for a matching.
  worker.unref();
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (error: Error) => void }>();
  let last = 0;
  let ended: Error | undefined;
  let open: (findings: readonly Finding[]) => void;
  let fail: (error: Error) => void;
  const opened = new Promise<readonly Finding[]>((resolve, reject) => {
    [open, fail] = [resolve, reject];
  });
  const end = (error: Error) => {
    ended ??= error;
    fail(ended);
    for (const { reject } of waiting.values()) reject(ended);
    waiting.clear();
  };
  worker.on('error', error => end(new Error(`The matching has ended: ${error.message}. Start the viewer again.`)));
  worker.on('exit', code => end(new Error(`The matching has ended with code ${code}. Start the viewer again.`)));
  worker.on('message', (message: FromReview) => {
    if ('progress' in message) return ports.progress(message.progress);
    if ('opened' in message) return open(message.opened);
    if ('failed' in message) return end(errorOf(message.failed));
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if ('trouble' in message) asked?.reject(errorOf(message.trouble));
    else asked?.resolve(message.value);
  });
  return {
    call: async (method, args) => {
      if (ended) throw ended;
      const id = ++last;
      const answer = new Promise<unknown>((resolve, reject) => waiting.set(id, { resolve, reject }));
      worker.postMessage({ id, method, args } satisfies ToReview);
      return answer;
    },
    opened,
    close: async () => {
      await worker.terminate();
    },
  };
}

const errorOf = ({ code, message, data }: Trouble) =>
  code ? new CatalogError(code, message, data) : new Error(message);
