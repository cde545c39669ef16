/**
 * Does work one after the other: two that begin at the same moment would both build on the same state, and one of them
 * be refused or lost. One that fails does not keep the next from its turn.
 */
export function inTurn(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return work => {
    const mine = last.then(work);
    last = mine.catch(() => {});
    return mine;
  };
}
