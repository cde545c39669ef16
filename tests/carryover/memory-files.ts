import { Readable, Writable } from 'node:stream';
import type { Files } from '../../src/commands/ports/ports.ts';
import { CatalogError } from '../../src/model/errors.ts';

/** Files in memory, read in chunks of any size, so that borders of chunks can be moved through an input. */
export function memoryFiles(start: Record<string, string | Uint8Array>, chunk = 64 * 1024) {
  const held = new Map<string, Buffer>(Object.entries(start).map(([path, text]) => [path, Buffer.from(text)]));
  const get = (path: string) => {
    const bytes = held.get(path);
    if (!bytes) throw new CatalogError('NoSuchFile', `There is no file ${path}; check the name.`);
    return bytes;
  };
  const files: Files = {
    read: async path => get(path),
    stream: path => {
      const bytes = get(path);
      const pieces = Array.from({ length: Math.ceil(bytes.length / chunk) }, (_, at) =>
        bytes.subarray(at * chunk, (at + 1) * chunk),
      );
      return Readable.from(pieces, { objectMode: false });
    },
    write: async (path, bytes) => void held.set(path, Buffer.from(bytes)),
    create: async path => {
      const pieces: Buffer[] = [];
      const stream = new Writable({
        write: (piece: Buffer, _, done) => {
          pieces.push(Buffer.from(piece));
          done();
        },
      });
      return {
        stream,
        settle: async () => {},
        commit: async () => void held.set(path, Buffer.concat(pieces)),
        abandon: async () => {},
      };
    },
    exists: async path => held.has(path),
    makeFolder: async () => {},
    remove: async path => void held.delete(path),
    same: async (a, b) => a === b,
  };
  return { files, held, text: (path: string) => held.get(path)?.toString('utf8') };
}
