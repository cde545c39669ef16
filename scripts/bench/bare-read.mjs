// A rival: the git library alone reads blobs and does nothing with them. node bare-read.mjs GITDIR LIST
import fs, { readFileSync } from 'node:fs';
import * as git from 'isomorphic-git';

const [gitdir, list] = process.argv.slice(2);
const oids = readFileSync(list, 'utf8').trim().split('\n');
const cache = {};
const lane = async () => {
  for (let oid = oids.pop(); oid !== undefined; oid = oids.pop()) await git.readBlob({ fs, gitdir, cache, oid });
};
await Promise.all(Array.from({ length: 16 }, lane));
