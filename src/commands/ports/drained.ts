import type { ByteWriter } from './ports.ts';

/** Until a writer takes more, or has failed: one that failed emits no `drain`. Nothing is left listening. */
export function drained(stream: ByteWriter): Promise<void> {
  return new Promise(resolve => {
    const done = () => {
      stream.off('drain', done);
      stream.off('error', done);
      resolve();
    };
    stream.once('drain', done);
    stream.once('error', done);
  });
}
