import { CatalogError } from '../model/errors.ts';
import { openZip } from './open-zip.ts';
import { elementsBelow, elementsIn, readXml, textBelow, type XmlElement } from './read-xml.ts';

export interface Relation {
  readonly id: string;
  /** The last word of its type: `footnotes`, `officeDocument`. */
  readonly type: string;
  /** The part that it leads to, by name. */
  readonly target: string;
}

/** An office file: its parts, and how they hang together. */
export interface OfficePackage {
  /** The file's name, for messages. */
  readonly name: string;
  readonly parts: ReadonlyMap<string, Uint8Array>;
  /** The part with the document itself. */
  readonly main: string;
}

/**
 * Opens a docx or pptx file.
 *
 * @param mainType what the content type of the main part begins with, and what to say where it is another
 * @throws CatalogError BadFile: see `openZip`; also macros, or a document of another kind under this name
 */
export function openPackage(
  bytes: Uint8Array,
  name: string,
  mainType: { readonly contentType: string; readonly ending: string },
): OfficePackage {
  const parts = openZip(bytes, name);
  if (!parts.has('[Content_Types].xml') || !parts.has('_rels/.rels')) {
    throw refused(name, `is a zip, but no ${mainType.ending} file; open it in its program and save it again`);
  }
  const bare = { name, parts, main: '' };
  const types = textOfPart(bare, '[Content_Types].xml');
  if (/macroEnabled/.test(types) || [...parts.keys()].some(part => part.endsWith('vbaProject.bin'))) {
    throw refused(name, `holds macros, which are never touched; save it as ${mainType.ending} without them`);
  }
  const main = relationsOf(bare, '').find(r => r.type === 'officeDocument')?.target;
  if (main === undefined || !parts.has(main)) {
    throw refused(name, 'does not say where its text stands; open it in its program and save it again');
  }
  if (!types.includes(mainType.contentType)) {
    throw refused(name, `is not what its name says; open it in its program and save it as ${mainType.ending}`);
  }
  return { name, parts, main };
}

/** @throws CatalogError BadFile where the part is no UTF-8 */
export function textOfPart(office: Pick<OfficePackage, 'name' | 'parts'>, part: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(office.parts.get(part));
  } catch {
    throw refused(
      office.name,
      `holds ${part} in an encoding other than UTF-8; open it in its program and save it again`,
    );
  }
}

/** Bytes of XML that a tree is made of at most: 15 MB are a thousand pages and take 600 MB of memory while they are read. */
const LONGEST_TREE = 40 * 2 ** 20;

/**
 * A part as a tree; undefined where there is none of that name.
 *
 * @throws CatalogError BadFile where it is too long, or as `readXml`
 */
export function treeOfPart(office: OfficePackage, part: string): XmlElement | undefined {
  const length = office.parts.get(part)?.length;
  if (length === undefined) return undefined;
  if (length > LONGEST_TREE) {
    throw refused(office.name, `holds ${Math.round(length / 2 ** 20)} MB of text in ${part}, more than 40; split it`);
  }
  return readXml(textOfPart(office, part), `${office.name}, part ${part},`);
}

/** The name of the part that holds the relations of a part; of the file itself for `''`. */
export function relationsPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** Where a part leads, in the file's order; addresses outside the file are left out. */
export function relationsOf(office: OfficePackage, part: string): readonly Relation[] {
  const tree = treeOfPart(office, relationsPart(part));
  if (!tree) return [];
  return elementsIn(tree, 'rel:Relationship').flatMap(({ attributes }) => {
    const [id, type, target] = ['Id', 'Type', 'Target'].map(name => attributes.get(name));
    if (id === undefined || type === undefined || target === undefined) return [];
    if (attributes.get('TargetMode') === 'External') return [];
    return [{ id, type: type.slice(type.lastIndexOf('/') + 1), target: resolveTarget(part, target) }];
  });
}

function resolveTarget(part: string, target: string): string {
  const steps = target.startsWith('/') ? [] : part.split('/').slice(0, -1);
  for (const step of target.replace(/^\//, '').split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.') steps.push(step);
  }
  return steps.join('/');
}

/** A property that its author gave to the file: a custom one of that name, or "name: value" among the keywords. */
export function propertyOf(office: OfficePackage, name: string): string | undefined {
  const relations = relationsOf(office, '');
  const tree = (type: string) => {
    const part = relations.find(r => r.type === type)?.target;
    return part === undefined ? undefined : treeOfPart(office, part);
  };
  const custom = tree('custom-properties') ?? tree('customProperties');
  const own = custom && elementsIn(custom).find(p => p.attributes.get('name')?.toLowerCase() === name);
  if (own) return textBelow(own).trim() || undefined;
  const core = tree('core-properties') ?? tree('coreProperties');
  const keywords = core && elementsBelow(core, 'cp:keywords')[0];
  const said = keywords && new RegExp(`(?:^|[,;\\s])${name}\\s*[:=]\\s*([^,;]+)`, 'i').exec(textBelow(keywords));
  return said?.[1]?.trim() || undefined;
}

/** By what a file says as a whole that it is signed; undefined where it says nothing of that. */
export function signatureOf(office: OfficePackage): string | undefined {
  if (isSigned(office)) return 'a digital signature';
  return propertyOf(office, 'record') === 'signed' ? 'record: signed' : undefined;
}

/** Whether somebody signed the file with a certificate. */
export function isSigned(office: OfficePackage): boolean {
  return relationsOf(office, '').some(r => r.target.startsWith('_xmlsignatures/'));
}

function refused(name: string, what: string): CatalogError {
  return new CatalogError('BadFile', `${name} ${what}.`, { path: name });
}
