import { CatalogError } from '../../model/errors.ts';
import { joinBytes } from '../../tables/join-bytes.ts';
import type { ByteWriter, Files } from './ports.ts';

/** Handed on in pieces, as a disk would: a reader of tables then holds one piece and one unfinished record. */
const PIECE = 256 * 1024;

/** Files held in memory by name: of a page, where they are gone with it, or of a form that somebody sent. */
export function heldFiles(given: Iterable<readonly [name: string, bytes: Uint8Array]>) {
  const held = new Map(given);
  const get = (name: string) => {
    const bytes = held.get(name);
    if (bytes) return bytes;
    throw new CatalogError('NoSuchFile', `There is no file ${name}; choose it again.`, { name });
  };
  const files: Files = {
    read: async name => get(name),
    stream: async function* (name) {
      const bytes = get(name);
      for (let at = 0; at < bytes.length; at += PIECE) yield bytes.subarray(at, at + PIECE);
    },
    write: async (name, bytes) => void held.set(name, encoded(bytes)),
    create: async name => {
      const pieces: Uint8Array[] = [];
      return {
        stream: writerOf(pieces),
        settle: async () => {},
        commit: async () => void held.set(name, joinBytes(pieces)),
        abandon: async () => {},
      };
    },
    exists: async name => held.has(name),
    makeFolder: async () => {},
    remove: async name => void held.delete(name),
    same: async (a, b) => a === b,
  };
  return { files, held: held as ReadonlyMap<string, Uint8Array> };
}

/** Memory never asks to wait. */
function writerOf(pieces: Uint8Array[]): ByteWriter {
  return {
    write: (bytes, done) => {
      pieces.push(encoded(bytes));
      done?.();
      return true;
    },
    once: () => undefined,
    off: () => undefined,
    errored: null,
  };
}

function encoded(content: Uint8Array | string): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}
