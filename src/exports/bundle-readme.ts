import type { BundlePiece } from './bundle.ts';
import type { Publication } from './publication.ts';

/** A line for each piece of a bundle: where it lies, and what it is for. */
const PIECES: Readonly<Record<BundlePiece, string>> = {
  edition: 'edition/       the edition itself, to read, to print and as data',
  tables: 'tables/        what became of each old item (disposition), where each new one comes from (derivation)',
  redirects:
    'redirects.*    for a web server: from, to and candidates are addresses of the viewer (fishplate serve), where old links lead; page is the file of the site here that says the same',
  site: 'site/          open site/index.html by double click, or put the folder on any web server',
  lookup: 'lookup.html    one file for the phone: send it, keep it; it needs no network',
  sssom: 'data/*.sssom.tsv     the crosswalk as a mapping set (SSSOM)',
  xkos: 'data/*.xkos.jsonld   the crosswalk as linked data (XKOS)',
  package: 'data/package/  both editions and the crosswalk as csv tables; see data/package/README.md',
  briefing: 'briefing/      slides and a handout on what has changed',
};

/** What lies in a bundle, for whoever opens its folder. */
export function bundleReadme({ joint }: Publication, pieces: readonly BundlePiece[]): string {
  const { from, to } = joint;
  const { published, effective } = to.header.dates;
  const days = [published && `published ${published}`, effective && `in force from ${effective}`].filter(Boolean);
  return `${[
    `${to.settings.title.replace(/\s+/g, ' ').trim()}, edition ${to.header.name}${days.length > 0 ? ` (${days.join(', ')})` : ''}, and what became of edition ${from.header.name}`,
    '',
    ...Object.entries(PIECES).flatMap(([piece, line]) => (pieces.includes(piece as BundlePiece) ? [line] : [])),
    'SHA256SUMS     checksums: sha256sum -c SHA256SUMS',
  ].join('\n')}\n`;
}
