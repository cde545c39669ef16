import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Templates } from '../exports/fill-template.ts';

const VIEWS = join(import.meta.dirname, '..', '..', 'views');

/** The templates of the published site with the files that go beside its pages. */
export async function readBundleTemplates(): Promise<Templates> {
  const folder = join(VIEWS, 'site');
  const paths = (await readdir(folder)).sort().map(name => [name, join(folder, name)] as const);
  paths.push(['style.css', join(VIEWS, 'style.css')]);
  paths.push(['lunr.min.js', createRequire(import.meta.url).resolve('lunr/lunr.min.js')]);
  return new Map(await Promise.all(paths.map(async ([name, path]) => [name, await readFile(path, 'utf8')] as const)));
}
