import { briefing } from './briefing.ts';
import { writeBriefingDocx } from './briefing-docx.ts';
import { writeBriefingHtml } from './briefing-html.ts';
import { writeBriefingPptx } from './briefing-pptx.ts';
import { bundleReadme } from './bundle-readme.ts';
import { sha256Lines } from './checksums.ts';
import { writeDataPackage } from './data-package.ts';
import { dispositionPage } from './disposition-page.ts';
import {
  derivationTable,
  dispositionCsv,
  dispositionJson,
  dispositionTable,
  dispositionXlsx,
  namesOf,
  tableName,
} from './disposition-tables.ts';
import { writeEditionDocx } from './edition-docx.ts';
import { editionCsv, editionJson, editionXlsx } from './edition-table.ts';
import type { Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { redirects, redirectsCsv } from './redirects.ts';
import { type BundleFiles, writeLookup, writeSite } from './site.ts';
import { writeSssom } from './sssom.ts';
import { writeXkos } from './xkos.ts';

/** The pieces of a bundle that can be asked for one by one. */
export const BUNDLE_PIECES = [
  'edition',
  'tables',
  'redirects',
  'site',
  'lookup',
  'sssom',
  'xkos',
  'package',
  'briefing',
] as const;
export type BundlePiece = (typeof BUNDLE_PIECES)[number];

/**
 * All files of a bundle by their path in it, and a list of checksums. Same tag, same bytes: no clock, no random.
 *
 * @param pieces in any order; the files come in the order of BUNDLE_PIECES
 */
export async function writeBundle(
  publication: Publication,
  templates: Templates,
  pieces: readonly BundlePiece[],
): Promise<BundleFiles> {
  const files = new Map<string, string | Uint8Array>();
  for (const piece of BUNDLE_PIECES) {
    if (!pieces.includes(piece)) continue;
    for (const [path, content] of await WRITERS[piece](publication, templates, pieces)) files.set(path, content);
  }
  files.set('README.txt', bundleReadme(publication, pieces));
  files.set('SHA256SUMS', sha256Lines(files));
  return files;
}

type Writer = (
  publication: Publication,
  templates: Templates,
  pieces: readonly BundlePiece[],
) => BundleFiles | Promise<BundleFiles>;

const WRITERS: Readonly<Record<BundlePiece, Writer>> = {
  edition: async publication => {
    const path = `edition/edition-${namesOf(publication).to}`;
    return new Map<string, string | Uint8Array>([
      [`${path}.docx`, await writeEditionDocx(publication)],
      [`${path}.xlsx`, editionXlsx(publication)],
      [`${path}.csv`, editionCsv(publication)],
      [`${path}.json`, editionJson(publication)],
    ]);
  },
  tables: writeTables,
  redirects: publication => {
    const all = redirects(publication);
    return new Map([
      ['redirects.csv', redirectsCsv(all)],
      ['redirects.json', `${JSON.stringify(all, null, 2)}\n`],
    ]);
  },
  site: (publication, templates, pieces) => writeSite(publication, templates, linksTo(publication, pieces)),
  lookup: writeLookup,
  sssom: publication => new Map([[`data/${dataName(publication)}.sssom.tsv`, writeSssom(publication)]]),
  xkos: publication => new Map([[`data/${dataName(publication)}.xkos.jsonld`, writeXkos(publication)]]),
  package: publication =>
    new Map([...writeDataPackage(publication)].map(([name, text]) => [`data/package/${name}`, text] as const)),
  briefing: writeBriefing,
};

/** `crosswalk-2018-2024` */
function dataName(publication: Publication): string {
  const { from, to } = namesOf(publication);
  return `crosswalk-${from}-${to}`;
}

/** Slides to present, the same slides as a page, and a handout. */
async function writeBriefing(publication: Publication, templates: Templates): Promise<BundleFiles> {
  const all = briefing(publication);
  const { published, effective } = publication.joint.to.header.dates;
  const day = published ?? effective;
  return new Map<string, string | Uint8Array>([
    ['briefing/slides.pptx', await writeBriefingPptx(all, day)],
    ['briefing/slides.html', writeBriefingHtml(all, templates)],
    ['briefing/handout.docx', await writeBriefingDocx(all, day)],
  ]);
}

function writeTables(publication: Publication, templates: Templates): BundleFiles {
  const files = new Map<string, string | Uint8Array>();
  for (const table of [dispositionTable(publication), derivationTable(publication)]) {
    const path = `tables/${tableName(table)}`;
    files.set(`${path}.csv`, dispositionCsv(table));
    files.set(`${path}.xlsx`, dispositionXlsx(publication, table));
    files.set(`${path}.html`, dispositionPage(publication, templates, table));
    files.set(`${path}.json`, dispositionJson(publication, table));
  }
  return files;
}

/** Where the site leads to beside itself: only to what is written with it. */
function linksTo(publication: Publication, pieces: readonly BundlePiece[]) {
  const links: { word: string; href: string }[] = [];
  if (pieces.includes('tables')) {
    const table = (t: ReturnType<typeof dispositionTable>) => `../tables/${encodeURIComponent(tableName(t))}.html`;
    links.push({ word: 'The whole table, to print', href: table(dispositionTable(publication)) });
    links.push({ word: 'Where each item comes from', href: table(derivationTable(publication)) });
  }
  if (pieces.includes('lookup')) links.push({ word: 'One file for the phone', href: '../lookup.html' });
  return links;
}
