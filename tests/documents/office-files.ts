import { DOMParser, type Element, type Node } from '@xmldom/xmldom';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

const OFFICE = 'http://schemas.openxmlformats.org';
export const W = `${OFFICE}/wordprocessingml/2006/main`;
const R = `${OFFICE}/officeDocument/2006/relationships`;
const DECLARED = [
  `xmlns:w="${W}" xmlns:r="${R}" xmlns:mc="${OFFICE}/markup-compatibility/2006"`,
  'xmlns:wps="http://schemas.microsoft.com/office/word/2010/wordprocessingShape" xmlns:v="urn:schemas-microsoft-com:vml"',
  'xmlns:m="http://schemas.openxmlformats.org/officeDocument/2006/math"',
].join(' ');
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Parts of a document beside its body: kind of relation to the markup inside the part's root. */
export type Stories = Readonly<
  Partial<Record<'footnotes' | 'endnotes' | 'comments' | 'header' | 'footer' | 'styles', string>>
>;

const ROOTS = { header: 'hdr', footer: 'ftr' } as const;

/** A Word document from the markup of its body, zipped by another library than the one under test. */
export function docxOf(body: string, stories: Stories = {}, more: Readonly<Record<string, string>> = {}): Uint8Array {
  const names = Object.keys(stories) as (keyof Stories)[];
  const type = (part: string, kind: string) =>
    `<Override PartName="/word/${part}.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.${kind}+xml"/>`;
  const root = (name: keyof Stories) => ROOTS[name as keyof typeof ROOTS] ?? name;
  return zipped({
    '[Content_Types].xml': `${HEAD}<Types xmlns="${OFFICE}/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${type('document', 'document.main')}${names.map(n => type(n, n)).join('')}</Types>`,
    '_rels/.rels': `${HEAD}<Relationships xmlns="${OFFICE}/package/2006/relationships"><Relationship Id="rId1" Type="${R}/officeDocument" Target="word/document.xml"/><Relationship Id="rId2" Type="${R}/custom-properties" Target="docProps/custom.xml"/><Relationship Id="rId3" Type="${OFFICE}/package/2006/relationships/metadata/core-properties" Target="docProps/core.xml"/></Relationships>`,
    'word/_rels/document.xml.rels': `${HEAD}<Relationships xmlns="${OFFICE}/package/2006/relationships">${names.map((n, i) => `<Relationship Id="rId${i + 1}" Type="${R}/${n}" Target="${n}.xml"/>`).join('')}<Relationship Id="rIdX" Type="${R}/hyperlink" Target="https://example.org/3.1.1" TargetMode="External"/></Relationships>`,
    'word/document.xml': `${HEAD}<w:document ${DECLARED}><w:body>${body}<w:sectPr/></w:body></w:document>`,
    ...Object.fromEntries(
      names.map(n => [`word/${n}.xml`, `${HEAD}<w:${root(n)} ${DECLARED}>${stories[n]}</w:${root(n)}>`]),
    ),
    ...more,
  });
}

/** `docProps/custom.xml` with one property. */
export function customProperty(name: string, value: string): Record<string, string> {
  return {
    'docProps/custom.xml': `${HEAD}<Properties xmlns="${OFFICE}/officeDocument/2006/custom-properties" xmlns:vt="${OFFICE}/officeDocument/2006/docPropsVTypes"><property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="2" name="${name}"><vt:lpwstr>${value}</vt:lpwstr></property></Properties>`,
  };
}

/** `docProps/core.xml` with keywords. */
export function keywords(text: string): Record<string, string> {
  return {
    'docProps/core.xml': `${HEAD}<cp:coreProperties xmlns:cp="${OFFICE}/package/2006/metadata/core-properties"><cp:keywords>${text}</cp:keywords></cp:coreProperties>`,
  };
}

export function zipped(parts: Readonly<Record<string, string>>): Uint8Array {
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}

/** The parts of a zip, as texts, by another reader than the one under test. */
export function partsOf(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

export function paragraph(...runs: readonly string[]): string {
  return `<w:p>${runs.join('')}</w:p>`;
}

export function run(text: string, properties = ''): string {
  return `<w:r w:rsidR="00AB12CD">${properties && `<w:rPr>${properties}</w:rPr>`}<w:t xml:space="preserve">${text}</w:t></w:r>`;
}

/**
 * The paragraphs of a part as Word shows them once all changes are accepted, or all are rejected: an own reading of the
 * tree by xmldom, which shares nothing with the code under test.
 */
export function textsOf(xml: string, changes: 'accepted' | 'rejected'): readonly string[] {
  const gone = changes === 'accepted' ? ['del', 'moveFrom'] : ['ins', 'moveTo'];
  const text = (node: Node): string => {
    const { localName } = node as Element;
    if (localName === null || localName === undefined) return '';
    if (gone.includes(localName) || ['Fallback', 'instrText', 'delInstrText', 'pPr'].includes(localName)) return '';
    if (localName === 't' || localName === 'delText') return node.textContent ?? '';
    if (localName === 'noBreakHyphen') return '\u2011';
    if (localName === 'tab') return '\t';
    return children(node).map(text).join('');
  };
  const document = new DOMParser({
    onError: problem => {
      throw new Error(problem);
    },
  }).parseFromString(xml, 'text/xml');
  return [...document.getElementsByTagNameNS(W, 'p')].map(text);
}

function children(node: Node): Node[] {
  const found: Node[] = [];
  for (let at = node.firstChild; at; at = at.nextSibling) found.push(at);
  return found;
}
