import { randomBytes } from 'node:crypto';
import { parentPort, workerData } from 'node:worker_threads';
import { CatalogError } from '../../model/errors.ts';
import { realFiles } from '../ports/files.ts';
import type { FromReview, ToReview, Trouble } from './held-review.ts';
import { openToldReview, type ToldReview } from './open-told-review.ts';

/** The thread that holds a review: matches, then answers one call after the other. Started by held-review.ts only. */
const port = parentPort!;
const say = (message: FromReview) => port.postMessage(message);
const troubleOf = (error: unknown): Trouble =>
  error instanceof CatalogError
    ? { code: error.code, message: error.message, data: error.data }
    : { code: undefined, message: String((error as Error)?.stack ?? error), data: {} };

const review = openToldReview(
  {
    files: realFiles,
    now: () => new Date(),
    // Names come with each answer.
    author: { name: '', email: '' },
    random: bytes => randomBytes(bytes),
    progress: progress => say({ progress }),
  },
  workerData as ToldReview,
);

port.on('message', async ({ id, method, args }: ToReview) => {
  try {
    const call = (await review)[method] as (...given: readonly unknown[]) => unknown;
    say({ id, value: await call(...args) });
  } catch (error) {
    say({ id, trouble: troubleOf(error) });
  }
});

review.then(
  ({ findings }) => say({ opened: findings }),
  error => say({ failed: troubleOf(error) }),
);
