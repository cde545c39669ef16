import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Templates } from '../../exports/fill-template.ts';
import { CARRY_ENGINE } from '../../exports/site-carry.ts';
import { PACKAGE_ROOT } from '../package-root.ts';

/** Templates of the published site. */
export const SITE_VIEWS = join(PACKAGE_ROOT, 'views', 'site');
/** Made by scripts/build-browser.mjs where its bundler is installed. */
export const CARRY_ENGINE_FILE = join(PACKAGE_ROOT, 'dist', 'browser', 'carry.js');

/**
 * The templates of the published site with the files that go beside its pages. `carry-engine.js` is among them only
 * where it was built; without it the site has no page that carries files over.
 */
export async function readBundleTemplates(): Promise<Templates> {
  const paths = (await readdir(SITE_VIEWS)).sort().map(name => [name, join(SITE_VIEWS, name)] as const);
  paths.push(['style.css', join(PACKAGE_ROOT, 'views', 'style.css')]);
  paths.push(['lunr.min.js', createRequire(import.meta.url).resolve('lunr/lunr.min.js')]);
  if (existsSync(CARRY_ENGINE_FILE)) paths.push([CARRY_ENGINE, CARRY_ENGINE_FILE]);
  return new Map(await Promise.all(paths.map(async ([name, path]) => [name, await readFile(path, 'utf8')] as const)));
}
