import { type Zippable, zipSync } from 'fflate';

/** The first moment that a zip can tell; a real time would make two runs differ. */
const NO_TIME = new Date(1980, 0, 1);

/** Packs parts into a zip, in their order. Same parts, same bytes. */
export function writeZip(parts: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const all: Zippable = {};
  for (const [name, part] of parts) all[name] = [part, { level: 6, mtime: NO_TIME }];
  return zipSync(all);
}
