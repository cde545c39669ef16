import { CatalogError } from '../model/errors.ts';
import { NAMESPACES } from './namespaces.ts';

/** An element of a part of an office file, with its place in the part's source, so that it can be changed there. */
export interface XmlElement {
  /** With the usual prefix of its namespace (`w:p`), whatever prefix the file uses. */
  readonly name: string;
  /** As written, so that what is put beside it takes the same prefix. */
  readonly written: string;
  /** By name, with the usual prefix of a namespace. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly start: number;
  readonly end: number;
  /** What lies between its tags; of `<w:p/>` both are `end`. */
  readonly innerStart: number;
  readonly innerEnd: number;
  readonly parent: XmlElement | undefined;
  readonly children: readonly XmlNode[];
}

export interface XmlText {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

export type XmlNode = XmlElement | XmlText;

/** Deeper than any program writes; readers may go down by calling themselves. */
const DEEPEST = 400;

const TAG = /<([^\s/>&<"'=]+)((?:\s+[^\s=<>/"'&]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>/y;
const CLOSE = /<\/([^\s/>]+)\s*>/y;
const ATTRIBUTE = /([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/**
 * Reads XML with the place of everything in the source. Trees that are written out again come out otherwise than they
 * went in (quotes, entities, order of namespaces); a source that is changed in places keeps every other byte.
 *
 * @param name of the file and part, only for messages
 * @throws CatalogError BadFile: not well-formed, with a document type (entities that grow), or nested too deeply
 */
export function readXml(source: string, name: string): XmlElement {
  let root: XmlElement | undefined;
  let open: Opened | undefined;
  const put = (text: string, start: number, end: number) => {
    if (open) open.children.push({ text, start, end });
    else if (text.trim() !== '') throw damaged(name, start);
  };
  let at = source.charCodeAt(0) === 0xfeff ? 1 : 0;
  while (at < source.length) {
    const next = source.indexOf('<', at);
    const stop = next < 0 ? source.length : next;
    if (stop > at) put(readEntities(source.slice(at, stop), name, at), at, stop);
    if (next < 0) break;
    at = next;
    if (source.startsWith('<!--', at)) at = after(source, '-->', at, name);
    else if (source.startsWith('<?', at)) at = after(source, '?>', at, name);
    else if (source.startsWith('<![CDATA[', at)) {
      const end = after(source, ']]>', at, name);
      put(source.slice(at + 9, end - 3), at, end);
      at = end;
    } else if (source.startsWith('<!', at)) {
      throw refused(
        name,
        'brings a document type of its own, which office files never do; save it anew in its program',
      );
    } else if (source[at + 1] === '/') {
      CLOSE.lastIndex = at;
      const closed = CLOSE.exec(source);
      if (!open || closed?.[1] !== open.written) throw damaged(name, at);
      open.innerEnd = at;
      at += closed[0].length;
      open.end = at;
      open = open.parent;
    } else {
      TAG.lastIndex = at;
      const tag = TAG.exec(source);
      if (!tag || (root && !open)) throw damaged(name, at);
      const element = openElement(tag, at, open, name);
      root ??= element;
      open?.children.push(element);
      if (tag[3] === '') open = element;
      at = element.innerStart;
    }
  }
  if (!root || open) throw damaged(name, source.length);
  return root;
}

interface Opened extends Omit<XmlElement, 'end' | 'innerEnd' | 'children' | 'parent'> {
  end: number;
  innerEnd: number;
  readonly children: XmlNode[];
  readonly parent: Opened | undefined;
  readonly prefixes: ReadonlyMap<string, string>;
  readonly depth: number;
}

function openElement(tag: RegExpExecArray, start: number, parent: Opened | undefined, name: string): Opened {
  const depth = (parent?.depth ?? 0) + 1;
  if (depth > DEEPEST)
    throw refused(name, 'is nested more deeply than any program writes; save it anew in its program');
  const raw = tag[2] === '' ? [] : attributesIn(tag[2]!, name, start);
  const declared = raw.filter(([key]) => key.startsWith('xmlns') && (key.length === 5 || key[5] === ':'));
  let prefixes = parent?.prefixes ?? NOTHING;
  if (declared.length > 0) {
    prefixes = new Map([...prefixes, ...declared.map(([key, uri]) => [key.slice(6), usualPrefix(uri)] as const)]);
  }
  const end = start + tag[0].length;
  return {
    name: usualName(tag[1]!, prefixes, prefixes.get('') ?? ''),
    written: tag[1]!,
    attributes: raw.length === 0 ? NOTHING : new Map(raw.map(([key, value]) => [usualName(key, prefixes, ''), value])),
    start,
    end,
    innerStart: end,
    innerEnd: end,
    parent,
    children: [],
    prefixes,
    depth,
  };
}

/** Most elements have no attributes: one empty map for all of them. */
const NOTHING: ReadonlyMap<string, string> = new Map();

function attributesIn(written: string, name: string, at: number): readonly (readonly [string, string])[] {
  const found: (readonly [string, string])[] = [];
  for (const [, key, double, single] of written.matchAll(ATTRIBUTE)) {
    found.push([key!, readEntities(double ?? single ?? '', name, at)]);
  }
  return found;
}

function usualName(written: string, prefixes: ReadonlyMap<string, string>, bare: string): string {
  const colon = written.indexOf(':');
  const prefix = colon < 0 ? bare : (prefixes.get(written.slice(0, colon)) ?? written.slice(0, colon));
  return prefix === '' ? written.slice(colon + 1) : `${prefix}:${written.slice(colon + 1)}`;
}

function usualPrefix(uri: string): string {
  return NAMESPACES.get(uri) ?? `{${uri}}`;
}

const NAMED: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/** The text of a stretch of source, and nothing else than the five entities of XML and characters by number. */
export function readEntities(written: string, name: string, at: number): string {
  if (!written.includes('&')) return written;
  return written.replace(/&([^;&]*;?)/g, (_, entity: string) => {
    const by = /^(?:#(\d{1,7})|#x([0-9a-f]{1,6})|(lt|gt|amp|quot|apos));$/i.exec(entity);
    if (!by) throw damaged(name, at);
    if (by[3] !== undefined) return NAMED[by[3]] ?? '';
    const code = by[1] === undefined ? Number.parseInt(by[2]!, 16) : Number(by[1]);
    if (code > 0x10ffff) throw damaged(name, at);
    return String.fromCodePoint(code);
  });
}

function after(source: string, mark: string, at: number, name: string): number {
  const found = source.indexOf(mark, at);
  if (found < 0) throw damaged(name, at);
  return found + mark.length;
}

function damaged(name: string, at: number): CatalogError {
  return refused(name, `is not well-formed XML at ${at}; open the file in its program and save it again`);
}

function refused(name: string, what: string): CatalogError {
  return new CatalogError('BadFile', `${name} ${what}.`, { path: name });
}

/** Whether a node is an element, and of a certain name where one is given. */
export function isElement(node: XmlNode, name?: string): node is XmlElement {
  return 'name' in node && (name === undefined || node.name === name);
}

/** The child elements, all or those of a name. */
export function elementsIn(element: XmlElement, name?: string): readonly XmlElement[] {
  return element.children.filter(node => isElement(node, name)) as XmlElement[];
}

/** The first child element of a name, or at the end of a path of names. */
export function elementAt(element: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined {
  let at = element;
  for (const name of path) at = at?.children.find(node => isElement(node, name)) as XmlElement | undefined;
  return at;
}

/** All elements of a name below an element, in order. */
export function elementsBelow(element: XmlElement, name: string): readonly XmlElement[] {
  return elementsIn(element).flatMap(e => (e.name === name ? [e, ...elementsBelow(e, name)] : elementsBelow(e, name)));
}

/** All text below an element. */
export function textBelow(element: XmlElement): string {
  return element.children.map(node => (isElement(node) ? textBelow(node) : node.text)).join('');
}

/** A text as it stands between tags or in an attribute; characters that XML cannot hold are left out. */
export function escapeXml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>"]/g, c => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!);
}
