/**
 * One reading for all who ask at the same time. Who asks while one runs gets the one after it: what was written in
 * between could be missing from the one that runs.
 */
export function readTogether<T>(read: () => Promise<T>): () => Promise<T> {
  let running: Promise<T> | undefined;
  let next: Promise<T> | undefined;
  const start = (): Promise<T> => {
    const mine = read().finally(() => {
      running = undefined;
    });
    running = mine;
    return mine;
  };
  return () => {
    if (!running) return start();
    next ??= running
      .catch(() => undefined)
      .then(() => {
        next = undefined;
        return start();
      });
    return next;
  };
}
