import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Templates } from '../exports/fill-template.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const VIEWS = join(ROOT, 'views');
/** Made by scripts/build-browser.mjs where its bundler is installed. */
const CARRY_ENGINE = join(ROOT, 'dist', 'browser', 'carry.js');

/**
 * The templates of the published site with the files that go beside its pages. `carry-engine.js` is among them only
 * where it was built; without it the site has no page that carries files over.
 */
export async function readBundleTemplates(): Promise<Templates> {
  const folder = join(VIEWS, 'site');
  const paths = (await readdir(folder)).sort().map(name => [name, join(folder, name)] as const);
  paths.push(['style.css', join(VIEWS, 'style.css')]);
  paths.push(['lunr.min.js', createRequire(import.meta.url).resolve('lunr/lunr.min.js')]);
  if (existsSync(CARRY_ENGINE)) paths.push(['carry-engine.js', CARRY_ENGINE]);
  return new Map(await Promise.all(paths.map(async ([name, path]) => [name, await readFile(path, 'utf8')] as const)));
}
