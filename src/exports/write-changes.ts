import { escapeXml } from '../office/read-xml.ts';
import { writeCsv } from '../tables/write-csv.ts';
import { bundleFrame } from './bundle-frame.ts';
import { type Change, changeHeadline } from './changes.ts';
import { dataNames, localName, NO_ADDRESS } from './data-names.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { siteNames } from './site-names.ts';

export function writeChangesCsv({ joint }: Publication, changes: readonly Change[]): string {
  const [a, b] = [joint.from.header.name, joint.to.header.name];
  const header = [
    'fate',
    `number_${a}`,
    `title_${a}`,
    `number_${b}`,
    `title_${b}`,
    'marks',
    'said',
    `id_${a}`,
    `id_${b}`,
  ];
  return writeCsv([
    header,
    ...changes.map(c => [
      c.fate,
      c.old?.number ?? '',
      c.old?.title ?? '',
      c.new?.number ?? '',
      c.new?.title ?? '',
      c.marks.join(', '),
      c.said,
      c.old?.id ?? '',
      c.new?.id ?? '',
    ]),
  ]);
}

/**
 * An Atom feed (RFC 4287), an entry a change. Entries keep their ids from run to run, so that a reader program tells a
 * change that it has shown from one that it has not.
 */
export function writeChangesFeed(publication: Publication, changes: readonly Change[]): string {
  const { joint } = publication;
  const { from, to } = joint;
  const names = dataNames(publication.base ?? NO_ADDRESS);
  const crosswalk = names.crosswalk(from.header.name, to.header.name);
  const { published, effective } = to.header.dates;
  // Atom wants a day everywhere. The clock's would make every run a change; an edition that tells none gets the first one.
  const updated = `${published ?? effective ?? '1970-01-01'}T00:00:00Z`;
  const title = `${to.settings.title}: changes from ${from.header.name} to ${to.header.name}`;
  const entries = changes.map(change => {
    const id = `${crosswalk}/change/${[change.old, change.new].map(e => (e ? localName(e.id) : '')).join('..')}`;
    const said = change.said === '' ? changeHeadline(change) : change.said;
    return `<entry><id>${escapeXml(id)}</id><title>${text(changeHeadline(change))}</title><updated>${updated}</updated><category term="${change.fate}"/><content type="text">${text(said)}</content></entry>\n`;
  });
  return `<?xml version="1.0" encoding="UTF-8"?>\n<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escapeXml(to.settings.language)}"><id>${escapeXml(crosswalk)}</id><title>${text(title)}</title><updated>${updated}</updated><author><name>${text(to.settings.publisher ?? to.settings.title)}</name></author>\n${entries.join('')}</feed>\n`;
}

/** A title may hold characters that no XML file may, not even escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML 1.0 forbids
const text = (words: string) => escapeXml(words.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, ' '));

export function writeChangesPage(publication: Publication, changes: readonly Change[], templates: Templates): string {
  const { from, to } = publication.joint;
  return fillTemplate(templates, 'changes-page', {
    site: bundleFrame(publication, siteNames(publication), []),
    title: `What changed since ${from.header.name}`,
    css: fileOf(templates, 'table.css'),
    from: from.header.name,
    to: to.header.name,
    changes,
  });
}
