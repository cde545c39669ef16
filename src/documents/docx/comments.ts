import { withLastChild, withNewPart } from '../../office/change-parts.ts';
import { type OfficePackage, relationsOf, textOfPart } from '../../office/open-package.ts';
import { escapeXml, readXml } from '../../office/read-xml.ts';
import type { Stamp } from './stamp.ts';

/** A comment, a paragraph each; its number is what its marks in the text carry. */
export interface Comment {
  readonly id: number;
  readonly paragraphs: readonly string[];
}

const TYPE = 'application/vnd.openxmlformats-officedocument.wordprocessingml.comments+xml';

/** The parts of a document with comments more; the part for them, its type and its relation are added where missing. */
export function withComments(
  office: OfficePackage,
  comments: readonly Comment[],
  stamp: Stamp,
): ReadonlyMap<string, Uint8Array> {
  if (comments.length === 0) return office.parts;
  const there = relationsOf(office, office.main).find(r => r.type === 'comments')?.target;
  if (there !== undefined && office.parts.has(there)) {
    const source = textOfPart(office, there);
    const root = readXml(source, office.name);
    const w = root.written.slice(0, root.written.indexOf(':') + 1);
    const markup = comments.map(c => writeComment(c, w, stamp)).join('');
    return new Map(office.parts).set(there, new TextEncoder().encode(withLastChild(source, root, markup)));
  }
  const strict = textOfPart(office, office.main).includes('http://purl.oclc.org/ooxml/wordprocessingml/main');
  const base = strict ? 'http://purl.oclc.org/ooxml' : 'http://schemas.openxmlformats.org';
  const main = strict ? `${base}/wordprocessingml/main` : `${base}/wordprocessingml/2006/main`;
  const folder = office.main.slice(0, office.main.lastIndexOf('/') + 1);
  return withNewPart(office, office.main, {
    name: freeName(office, `${folder}comments`),
    content: `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<w:comments xmlns:w="${main}">${comments.map(c => writeComment(c, 'w:', stamp)).join('')}</w:comments>`,
    contentType: TYPE,
    relationType: strict
      ? `${base}/officeDocument/relationships/comments`
      : `${base}/officeDocument/2006/relationships/comments`,
  });
}

function writeComment({ id, paragraphs }: Comment, w: string, stamp: Stamp): string {
  const author = escapeXml(stamp.author);
  const date = stamp.date ? ` ${w}date="${escapeXml(stamp.date)}"` : '';
  const text = paragraphs.map(p => `<${w}p><${w}r><${w}t xml:space="preserve">${escapeXml(p)}</${w}t></${w}r></${w}p>`);
  return `<${w}comment ${w}id="${id}" ${w}author="${author}"${date} ${w}initials="${author.slice(0, 1)}">${text.join('')}</${w}comment>`;
}

function freeName(office: OfficePackage, wanted: string): string {
  let name = `${wanted}.xml`;
  for (let n = 2; office.parts.has(name); n++) name = `${wanted}${n}.xml`;
  return name;
}
