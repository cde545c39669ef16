import type { Edit } from '../../model/document.ts';
import { CatalogError } from '../../model/errors.ts';
import { groupBy } from '../../model/group-by.ts';
import { openPackage, relationsOf, textOfPart } from '../../office/open-package.ts';
import { elementsIn, escapeXml, readXml, textBelow, type XmlElement } from '../../office/read-xml.ts';
import { writeZip } from '../../office/write-zip.ts';
import { edit } from '../edit.ts';

/** Fills a letter: for each placeholder `{{name}}` the text that is given under that name. */
export type FillLetter = (fields: Readonly<Record<string, string>>) => Uint8Array;

const PLACEHOLDER = /\{\{\s*([^{}]*?)\s*\}\}/g;

/**
 * Opens a Word document as the template of letters. Word cuts a placeholder into several runs wherever its speller or an
 * editor touched it, so it is sought in the text of the whole paragraph; what is filled in looks like its first letter:
 *
 *     <w:t>Dear {{hol</w:t> … <w:t>der}},</w:t>   becomes   <w:t>Dear Ms Rill</w:t> … <w:t>,</w:t>
 *
 * Every byte of the template outside placeholders stays.
 *
 * @param known names that letters have; a template with another one is refused before the first letter is written
 * @throws CatalogError BadFile: no Word document, or a placeholder that nobody fills
 */
export function openLetter(bytes: Uint8Array, name: string, known: readonly string[]): FillLetter {
  const office = openPackage(bytes, name, { contentType: 'wordprocessingml.document.main+xml', ending: '.docx' });
  const shown = ['header', 'footer', 'footnotes', 'endnotes'];
  const names = [
    office.main,
    ...relationsOf(office, office.main).flatMap(r => (shown.includes(r.type) ? [r.target] : [])),
  ];
  const parts = [...new Set(names)].map(part => {
    const source = textOfPart(office, part);
    return { part, source, places: placesIn(readXml(source, `${name}, part ${part},`)) };
  });
  for (const { field } of parts.flatMap(p => p.places)) {
    if (known.includes(field)) continue;
    throw new CatalogError(
      'BadFile',
      `${name} has the placeholder {{${field}}}, which nothing fills; use {{${known.join('}}, {{')}}}.`,
      { path: name, field },
    );
  }
  return fields => {
    const filled = new Map(office.parts);
    for (const { part, source, places } of parts) {
      const edits = places.flatMap(p => editsOf(p, fields[p.field] ?? ''));
      filled.set(part, new TextEncoder().encode(edit(source, joined(edits))));
    }
    return writeZip(filled);
  };
}

/** A placeholder with the text elements that it lies in. */
interface Place {
  readonly field: string;
  readonly pieces: readonly { readonly element: XmlElement; readonly from: number; readonly to: number }[];
}

function placesIn(root: XmlElement): readonly Place[] {
  return paragraphsIn(root).flatMap(paragraph => {
    let length = 0;
    const texts = textsOf(paragraph).map(element => {
      const text = textBelow(element);
      const at = length;
      length += text.length;
      return { element, text, at };
    });
    return [
      ...texts
        .map(t => t.text)
        .join('')
        .matchAll(PLACEHOLDER),
    ].map(found => {
      const [start, end] = [found.index, found.index + found[0].length];
      const pieces = texts
        .filter(t => t.at < end && t.at + t.text.length > start)
        .map(({ element, text, at }) => ({
          element,
          from: Math.max(0, start - at),
          to: Math.min(text.length, end - at),
        }));
      return { field: found[1]!, pieces };
    });
  });
}

function paragraphsIn(element: XmlElement): readonly XmlElement[] {
  return elementsIn(element).flatMap(e => (e.name === 'w:p' ? [e, ...paragraphsIn(e)] : paragraphsIn(e)));
}

/** The texts of a paragraph, without those of a paragraph inside it (a text box). */
function textsOf(element: XmlElement): readonly XmlElement[] {
  return elementsIn(element).flatMap(e => (e.name === 'w:t' ? [e] : e.name === 'w:p' ? [] : textsOf(e)));
}

interface TextEdit {
  readonly element: XmlElement;
  readonly from: number;
  readonly to: number;
  readonly markup: string;
}

function editsOf({ pieces }: Place, value: string): readonly TextEdit[] {
  return pieces.map((piece, n) => {
    const tag = piece.element.written;
    const w = tag.slice(0, tag.indexOf(':') + 1);
    const lines = value.split('\n').map(escapeXml);
    return { ...piece, markup: n > 0 ? '' : lines.join(`</${tag}><${w}br/><${tag} xml:space="preserve">`) };
  });
}

/** One edit for each text element: two placeholders in one text are filled together. */
function joined(edits: readonly TextEdit[]): readonly Edit[] {
  return [...groupBy(edits, e => e.element)].map(([element, own]) => {
    const text = textBelow(element);
    let [out, at] = ['', 0];
    for (const { from, to, markup } of own) {
      out += escapeXml(text.slice(at, from)) + markup;
      at = to;
    }
    const tag = element.written;
    const whole = `<${tag} xml:space="preserve">${out}${escapeXml(text.slice(at))}</${tag}>`;
    return { start: element.start, end: element.end, text: whole };
  });
}
