import { type OfficePackage, relationsPart, textOfPart } from './open-package.ts';
import { elementsIn, escapeXml, readXml, type XmlElement } from './read-xml.ts';

/** A part's source with markup put in as the last child of an element. */
export function withLastChild(source: string, parent: XmlElement, markup: string): string {
  if (parent.innerStart < parent.end) {
    return source.slice(0, parent.innerEnd) + markup + source.slice(parent.innerEnd);
  }
  const opening = source.slice(parent.start, parent.end).replace(/\s*\/>$/, '>');
  return `${source.slice(0, parent.start)}${opening}${markup}</${parent.written}>${source.slice(parent.end)}`;
}

/** A new part: what it holds, and how the file learns of it. */
export interface NewPart {
  readonly name: string;
  readonly content: string;
  readonly contentType: string;
  /** The whole address of the relation's type. */
  readonly relationType: string;
}

/**
 * The parts of a file with one part more, led to from another one; the list of types and the relations get a line each
 * and keep the rest as it was.
 */
export function withNewPart(office: OfficePackage, from: string, part: NewPart): ReadonlyMap<string, Uint8Array> {
  const parts = new Map(office.parts);
  const types = textOfPart(office, '[Content_Types].xml');
  const typesRoot = readXml(types, office.name);
  const t = prefixOf(typesRoot);
  const type = `<${t}Override PartName="/${escapeXml(part.name)}" ContentType="${escapeXml(part.contentType)}"/>`;
  parts.set('[Content_Types].xml', bytesOf(withLastChild(types, typesRoot, type)));

  const relationsName = relationsPart(from);
  const relations = office.parts.has(relationsName) ? textOfPart(office, relationsName) : NO_RELATIONS;
  const root = readXml(relations, office.name);
  const ids = new Set(elementsIn(root).map(e => e.attributes.get('Id')));
  let n = 1;
  while (ids.has(`rIdFishplate${n}`)) n++;
  const relation = `<${prefixOf(root)}Relationship Id="rIdFishplate${n}" Type="${part.relationType}" Target="/${escapeXml(part.name)}"/>`;
  parts.set(relationsName, bytesOf(withLastChild(relations, root, relation)));
  parts.set(part.name, bytesOf(part.content));
  return parts;
}

const NO_RELATIONS =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"></Relationships>';

function prefixOf(element: XmlElement): string {
  return element.written.slice(0, element.written.indexOf(':') + 1);
}

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
