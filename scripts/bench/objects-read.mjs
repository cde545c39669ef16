// Which blobs a crosswalk reads, so that rivals can be made to read the very same ones.
import * as fs from 'node:fs/promises';
import * as git from 'isomorphic-git';

/**
 * Object names of the blobs that reading a crosswalk takes from a catalog with loose objects. `what` is readCrosswalk
 * (tables and changed texts) or readJoint (tables only).
 */
export async function blobsOfCrosswalk(what, dir, from, to) {
  const { openCatalog } = await import('../../dist/store/open.js');
  const reading = await import('../../dist/commands/reading/read-crosswalk.js');
  const read = new Set();
  const readFile = (path, ...rest) => {
    const object = /[\\/]objects[\\/]([0-9a-f]{2})[\\/]([0-9a-f]{38})$/.exec(String(path));
    if (object) read.add(object[1] + object[2]);
    return fs.readFile(path, ...rest);
  };
  const catalog = await openCatalog(dir, { ...fs, readFile });
  await reading[what](catalog, from, to);
  const blobs = [];
  for (const oid of read) {
    const { type } = await git.readObject({ ...catalog.repo.git, oid, format: 'content' });
    if (type === 'blob') blobs.push(oid);
  }
  return blobs;
}
