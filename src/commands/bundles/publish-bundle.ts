import { join } from 'node:path';
import { BUNDLE_PIECES, type BundlePiece, writeBundle } from '../../exports/bundle.ts';
import type { Templates } from '../../exports/fill-template.ts';
import type { Publication } from '../../exports/publication.ts';
import { CARRY_ENGINE } from '../../exports/site-carry.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Finding } from '../../model/finding.ts';
import type { Catalog } from '../../store/open.ts';
import { writeTogether } from '../ports/commit-all.ts';
import type { Ports } from '../ports/ports.ts';
import { readCarryData } from './bundle-carry.ts';
import { readPublication } from './bundle-source.ts';
import { readBundleTemplates } from './bundle-templates.ts';

export interface BundleRequest {
  readonly from: string;
  readonly to: string;
  /** The folder that the bundle is written to; files of other names in it are left alone. */
  readonly out: string;
  /** Absent: all. */
  readonly only?: readonly BundlePiece[];
  /** The address below which data name the catalog's items. */
  readonly base?: string;
}

export interface BundleReport {
  readonly out: string;
  readonly files: readonly { readonly path: string; readonly bytes: number }[];
  readonly findings: readonly Finding[];
}

/** Writes what is published on the day of an edition. Either all files stand in the folder, or none is touched. */
export async function publishBundle(ports: Ports, catalog: Catalog, request: BundleRequest): Promise<BundleReport> {
  const { from, to, out, only = BUNDLE_PIECES } = request;
  ports.progress(`Reading ${from} and ${to}`);
  const read = await readPublication(catalog, from, to, only.includes('site'));
  const templates = await readBundleTemplates();
  const carry = only.includes('site') ? await carryOf(ports, catalog, read, templates) : undefined;
  const publication = {
    ...read,
    ...(carry ? { carry } : {}),
    ...(request.base === undefined ? {} : { base: addressIn(request.base) }),
  };
  ports.progress('Writing the bundle');
  const files = await writeBundle(publication, templates, only);
  const encoded = [...files].map(
    ([path, content]) => [path, typeof content === 'string' ? new TextEncoder().encode(content) : content] as const,
  );
  await writeTogether(
    ports.files,
    encoded.map(([path, bytes]) => [join(out, path), bytes] as const),
  );
  return {
    out,
    files: encoded.map(([path, bytes]) => ({ path, bytes: bytes.length })),
    findings: publication.findings,
  };
}

/** The site has a page that carries files over where the program's part for browsers was built. */
async function carryOf(ports: Ports, catalog: Catalog, publication: Publication, templates: Templates) {
  const older = publication.line.slice(0, -1).reverse();
  if (templates.has(CARRY_ENGINE)) {
    return readCarryData(
      catalog,
      older.map(edition => edition.direct!),
    );
  }
  ports.progress('The page that carries files over is left out: npm run build did not find its bundler');
  return undefined;
}

/** The pieces named in `site,tables`. @throws CatalogError BadArgument for a name that is none */
export function piecesIn(list: string): BundlePiece[] {
  return list.split(',').map(name => {
    const piece = BUNDLE_PIECES.find(p => p === name.trim());
    if (piece) return piece;
    throw new CatalogError('BadArgument', `${name} is no piece of a bundle; use some of: ${BUNDLE_PIECES.join(', ')}.`);
  });
}

/** An address under which items can be named. @throws CatalogError BadArgument */
export function addressIn(text: string): string {
  const address = URL.canParse(text) ? new URL(text) : undefined;
  if (!address || !/^https?:$/.test(address.protocol) || address.search || address.hash) {
    throw new CatalogError(
      'BadArgument',
      `${text} is no address that items can be named under; write it like https://standards.example.org/works/.`,
    );
  }
  return address.href.endsWith('/') ? address.href : `${address.href}/`;
}
