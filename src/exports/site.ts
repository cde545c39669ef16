import type { Statistics } from '../crosswalk/statistics.ts';
import type { Entry } from '../model/edition.ts';
import { counted } from '../model/said-words.ts';
import { type BundleFrame, bundleFrame, datesIn } from './bundle-frame.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { scriptJson } from './script-json.ts';
import { writeCarryPage } from './site-carry.ts';
import { siteItem } from './site-item.ts';
import { siteNames } from './site-names.ts';
import { type EditionNumbers, editionNumbers } from './site-numbers.ts';

/** Files of a bundle by their path in it. */
export type BundleFiles = ReadonlyMap<string, string | Uint8Array>;

/**
 * The published edition as pages that open from a folder, without server or signal. Data for the script that searches
 * come as scripts themselves: a page from a folder may not fetch. Every page says all it has to say without a script.
 *
 * @param links other pieces of the bundle, seen from the folder `site`
 */
export function writeSite(publication: Publication, templates: Templates, links: BundleFrame['links']): BundleFiles {
  const names = siteNames(publication);
  const site = bundleFrame(publication, names, links);
  const { joint } = publication;
  const files = new Map<string, string>();
  const page = (file: string, template: string, title: string, values: object) =>
    files.set(
      `site/${file}`,
      fillTemplate(templates, template, { site, title: `${title} – ${site.title}`, page: values }),
    );

  const { carry } = publication;
  page('index.html', 'index', site.editionLine, { ...indexPage(publication, names), carries: carry !== undefined });
  const tops = joint.to.entries.filter(e => e.parent === null);
  const turn = (top: Entry | undefined) =>
    top && { href: names.part(top.id), word: `${top.number} ${top.title}`.trim() };
  tops.forEach((top, at) => {
    const items = joint.to.entries.filter(e => e !== top && joint.new.part(e.id) === top);
    page(names.part(top.id), 'part', `${top.number} ${top.title}`.trim(), {
      number: top.number,
      title: top.title,
      items: [top, ...items].map(e => siteItem(publication, names, e)),
      before: turn(tops[at - 1]),
      after: turn(tops[at + 1]),
    });
  });
  const numbers = editionNumbers(publication, names);
  for (const { edition, file, answers, newest } of numbers) {
    if (newest) continue;
    const lead = `${counted(answers.length, 'number')}, each with what became of it in ${site.edition}.`;
    page(file, 'numbers', `Numbers of ${edition}`, { edition, answers, lead });
  }
  page('search.html', 'search', 'Look up', {});
  files.set('site/numbers.js', `window.FISHPLATE_NUMBERS = ${scriptJson(numbers.map(numberData))};\n`);
  files.set('site/search-index.js', `window.FISHPLATE_SEARCH = ${scriptJson(searchData(publication, names.item))};\n`);
  for (const asset of ['style.css', 'site.css', 'search.js', 'lunr.min.js']) {
    files.set(`site/${asset}`, fileOf(templates, asset));
  }
  if (carry)
    for (const [file, text] of writeCarryPage(publication, carry, templates, site)) files.set(`site/${file}`, text);
  return files;
}

/** The same answers in one file that can be sent to a phone. */
export function writeLookup(publication: Publication, templates: Templates): BundleFiles {
  const names = siteNames(publication);
  const site = bundleFrame(publication, names, []);
  const html = fillTemplate(templates, 'lookup', {
    site,
    title: `Look up a number – ${site.title}`,
    css: fileOf(templates, 'lookup-frame.css') + fileOf(templates, 'lookup.css'),
    script: fileOf(templates, 'lookup.js'),
    editions: editionNumbers(publication, names),
  });
  return new Map([['lookup.html', html]]);
}

/** The first sentence of the site: how many became how many. */
export function siteLead({ whole, counted: what, from }: Statistics): string {
  const gone = counted(whole.fates.withdrawn, 'was withdrawn', 'were withdrawn');
  const ones = whole.old === 1 ? what.slice(0, -1) : what;
  return `${whole.old} ${ones} of ${from} became ${whole.total}; ${gone} and ${counted(whole.new, 'is new', 'are new')}.`;
}

function indexPage(publication: Publication, names: ReturnType<typeof siteNames>) {
  const { joint, statistics, findings } = publication;
  const places = joint.new;
  const size = (entry: Entry): number =>
    places.children(entry.id).reduce((sum, e) => sum + (e.obliges ? 1 : 0) + size(e), 0);
  return {
    lead: siteLead(statistics),
    dates: datesIn(joint.to.header.dates)
      .map(d => `${d.what} ${d.when}`)
      .join(' · '),
    open: findings.filter(f => f.severity !== 'note').map(f => f.message),
    outline: joint.to.entries
      .filter(e => !e.obliges)
      .map(e => ({
        number: e.number,
        title: e.title,
        level: Math.min(e.level, 4),
        size: size(e),
        href: e.parent === null ? names.part(e.id) : names.item(e.id),
      })),
  };
}

function numberData({ edition, answers }: EditionNumbers) {
  return { edition, entries: answers.map(a => [a.href, a.number, a.title, a.headline, a.second]) };
}

function searchData({ joint, newItems, searchIndex }: Publication, href: (id: string) => string) {
  if (!searchIndex) throw new Error('a site needs an index for searching');
  return {
    edition: joint.to.header.name,
    index: searchIndex.index,
    items: searchIndex.ids.map(id => {
      const { number, title, text = '' } = newItems.get(id)!;
      return [href(id), number, title, [text.length > 160 ? `${text.slice(0, 157)}…` : text]];
    }),
  };
}
