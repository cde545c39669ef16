import { Inflate } from 'fflate';
import { CatalogError } from '../model/errors.ts';

/** What an office file may hold at most; beyond it the file is refused in one sentence. */
export interface ZipLimits {
  readonly parts: number;
  /** Of all parts together, unpacked. */
  readonly bytes: number;
}

export const ZIP_LIMITS: ZipLimits = { parts: 20_000, bytes: 600 * 2 ** 20 };

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packed: number;
  readonly size: number;
  readonly at: number;
}

/**
 * Opens an office file (docx, xlsx, pptx): its parts by name, in the order of the file.
 *
 * The central directory is read here and each part is inflated no further than the size that it declares, then checked
 * against its CRC-32: `unzipSync` trusts the header, so that one that lies about its size would come out cut off and
 * nobody would be told.
 *
 * @param path only for messages
 * @throws CatalogError BadFile: not a zip, encrypted, damaged, too large, or a name stands twice.
 */
export function openZip(bytes: Uint8Array, path: string, limits: ZipLimits = ZIP_LIMITS): Map<string, Uint8Array> {
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    throw refused(path, 'is encrypted or in an old binary format; save it without a password as .xlsx, .docx or .pptx');
  }
  const entries = directoryOf(bytes, path);
  if (entries.length > limits.parts) throw refused(path, `holds ${entries.length} parts, more than ${limits.parts}`);
  const total = entries.reduce((sum, e) => sum + e.size, 0);
  if (total > limits.bytes) {
    throw refused(path, `unpacks to ${megabytes(total)} MB, more than ${megabytes(limits.bytes)}; split it`);
  }
  const parts = new Map<string, Uint8Array>();
  for (const entry of entries) {
    if (entry.name.endsWith('/')) continue;
    if (parts.has(entry.name))
      throw refused(path, `holds ${entry.name} twice; open it in its program and save it again`);
    parts.set(entry.name, unpack(bytes, entry, path));
  }
  return parts;
}

/** What each part says to unpack to, in bytes, without unpacking any: enough to refuse a file that is too large. */
export function partSizes(bytes: Uint8Array, path: string): ReadonlyMap<string, number> {
  return new Map(directoryOf(bytes, path).map(entry => [entry.name, entry.size]));
}

function directoryOf(bytes: Uint8Array, path: string): Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end < 0) throw refused(path, 'is not an office file, or was cut off; open it in its program and save it again');
  const count = view.getUint16(end + 10, true);
  const entries: Entry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) throw damaged(path);
    const nameLength = view.getUint16(at + 28, true);
    const flags = view.getUint16(at + 8, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
    if (flags & 1) throw refused(path, 'is encrypted; save it without a password and run again');
    entries.push({
      name,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

/** Where the end record stands: a comment of up to 64 KB may follow it. */
function endOfDirectory(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 0xffff); at--) {
    if (view.getUint32(at, true) === 0x06054b50) return at;
  }
  return -1;
}

function unpack(bytes: Uint8Array, entry: Entry, path: string): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (entry.at + 30 > bytes.length || view.getUint32(entry.at, true) !== 0x04034b50) throw damaged(path);
  const start = entry.at + 30 + view.getUint16(entry.at + 26, true) + view.getUint16(entry.at + 28, true);
  const packed = bytes.subarray(start, start + entry.packed);
  if (packed.length !== entry.packed || (entry.method !== 0 && entry.method !== 8)) throw damaged(path);
  const part = entry.method === 0 ? packed.slice() : inflate(packed, entry.size, path);
  if (part.length !== entry.size || crc32(part) !== entry.crc) throw damaged(path);
  return part;
}

function inflate(packed: Uint8Array, size: number, path: string): Uint8Array {
  const part = new Uint8Array(size);
  let filled = 0;
  const inflater = new Inflate(piece => {
    if (filled + piece.length > size) throw damaged(path);
    part.set(piece, filled);
    filled += piece.length;
  });
  // In small steps: a step's whole output is made before it is seen, and 64 KB can become 64 MB at the most.
  try {
    for (let at = 0; at < packed.length || at === 0; at += 0x10000) {
      inflater.push(packed.subarray(at, at + 0x10000), at + 0x10000 >= packed.length);
    }
  } catch (trouble) {
    throw trouble instanceof CatalogError ? trouble : damaged(path);
  }
  return part.subarray(0, filled);
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) crc = CRC_TABLE[(crc ^ bytes[i]!) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

function startsWith(bytes: Uint8Array, magic: readonly number[]): boolean {
  return magic.every((b, i) => bytes[i] === b);
}

function megabytes(bytes: number): number {
  return Math.round(bytes / 2 ** 20);
}

function damaged(path: string): CatalogError {
  return refused(
    path,
    'is damaged (a part does not unpack to what its header says); open it in its program and save it again',
  );
}

function refused(path: string, what: string): CatalogError {
  return new CatalogError('BadFile', `${path} ${what}.`, { path });
}
