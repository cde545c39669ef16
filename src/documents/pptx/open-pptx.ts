import {
  type OfficePackage,
  openPackage,
  propertyOf,
  relationsOf,
  signatureOf,
  treeOfPart,
} from '../../office/open-package.ts';
import { elementAt, elementsIn, isElement, textBelow, type XmlElement } from '../../office/read-xml.ts';
import { drawnTexts } from '../drawn-texts.ts';
import { type FoundCell, headTableCells } from '../found-cells.ts';

/** A run's text, and where it stands in its paragraph's. */
export interface SlidePiece {
  readonly at: number;
  readonly text: string;
  /** The element that holds the text; absent for breaks. */
  readonly element?: XmlElement;
  readonly fixed?: string;
}

/** A paragraph of a slide or of its notes that shows text. */
export interface SlideParagraph {
  readonly part: string;
  readonly text: string;
  readonly pieces: readonly SlidePiece[];
  readonly place: string;
  /** The title of its slide. */
  readonly heading?: string;
  readonly row?: XmlElement;
  /** Of a table's cell: what stands at the head of its column. */
  readonly columnHead?: string;
  /** The same paragraph once more, for programs that do not know the newer form of a shape. */
  readonly twin?: SlideParagraph;
}

export interface Pptx {
  readonly office: OfficePackage;
  readonly paragraphs: readonly SlideParagraph[];
  readonly edition: string | undefined;
  readonly signed: string | undefined;
}

/**
 * Opens a presentation: its slides in the order of showing, each followed by its charts, diagrams and notes. Layouts and masters are not read.
 *
 * @param name only for messages
 * @throws CatalogError BadFile
 */
export function openPptx(bytes: Uint8Array, name: string): Pptx {
  const office = openPackage(bytes, name, { contentType: 'presentationml.presentation.main+xml', ending: '.pptx' });
  const byId = new Map(relationsOf(office, office.main).map(r => [r.id, r.target]));
  const order = elementAt(treeOfPart(office, office.main), 'p:sldIdLst');
  const slides = (order ? elementsIn(order, 'p:sldId') : []).flatMap(
    s => byId.get(s.attributes.get('r:id') ?? '') ?? [],
  );
  const paragraphs = slides.flatMap((part, n) => {
    const own = [...readShapes(office, part, `slide ${n + 1}`), ...readDrawn(office, part, `slide ${n + 1}`)];
    const notes = relationsOf(office, part).find(r => r.type === 'notesSlide')?.target;
    const said = notes === undefined ? [] : readShapes(office, notes, `slide ${n + 1}, notes`);
    const title = own
      .find(p => p.isTitle)
      ?.text.replace(/\s+/g, ' ')
      .trim();
    return [...own, ...said].map(({ isTitle, ...p }) => (title === undefined ? p : { ...p, heading: title }));
  });
  return { office, paragraphs, edition: propertyOf(office, 'edition'), signed: signatureOf(office) };
}

type Found = SlideParagraph & { readonly isTitle: boolean };

function readShapes(office: OfficePackage, part: string, place: string): readonly Found[] {
  const tree = treeOfPart(office, part);
  return tree ? readBelow(tree, { part, place, isTitle: false, tables: { count: 0 } }) : [];
}

function readDrawn(office: OfficePackage, slide: string, place: string): readonly Found[] {
  return drawnTexts(office, slide).map(({ part, text, fixed, place: drawn }) => ({
    part,
    text,
    pieces: [{ at: 0, text, fixed }],
    place: `${place}, ${drawn}`,
    isTitle: false,
  }));
}

interface Around {
  readonly part: string;
  readonly place: string;
  readonly isTitle: boolean;
  readonly tables: { count: number };
  readonly row?: XmlElement;
}

function readBelow(parent: XmlElement, around: Around): readonly Found[] {
  return elementsIn(parent).flatMap((child): readonly Found[] => {
    switch (child.name) {
      case 'a:p':
        return readParagraph(child, around);
      case 'p:sp':
        return readBelow(child, { ...around, isTitle: isTitle(child) });
      case 'a:tbl': {
        const place = `${around.place}, table${++around.tables.count > 1 ? ` ${around.tables.count}` : ''}`;
        return readTable(child, { ...around, place });
      }
      case 'mc:AlternateContent':
        return readChoice(child, around);
      default:
        return readBelow(child, around);
    }
  });
}

/** Merged cells stand in the file as well, empty: those that the first of them covers. */
function readTable(table: XmlElement, around: Around): readonly Found[] {
  const found: Found[] = [];
  const cells: FoundCell[] = [];
  for (const [n, row] of elementsIn(table, 'a:tr').entries()) {
    for (const [column, cell] of elementsIn(row, 'a:tc').entries()) {
      const first = found.length;
      found.push(...readBelow(cell, { ...around, place: `${around.place}, row ${n + 1}`, row }));
      if (isOn(cell, 'hMerge') || isOn(cell, 'vMerge')) continue;
      const [columns, rows] = [span(cell, 'gridSpan'), span(cell, 'rowSpan')];
      cells.push({ row: n, column, columns, rows, first, next: found.length });
    }
  }
  // PowerPoint sets firstRow on every table that it makes, whatever stands in it.
  headTableCells(found, cells, 0);
  return found;
}

function isOn(element: XmlElement, name: string): boolean {
  return ['1', 'true'].includes(element.attributes.get(name) ?? '');
}

function span(cell: XmlElement, name: string): number {
  const said = Number(cell.attributes.get(name) ?? 1);
  return Number.isInteger(said) && said > 0 && said < 1000 ? said : 1;
}

function readChoice(both: XmlElement, around: Around): readonly Found[] {
  const [choice, fallback] = ['mc:Choice', 'mc:Fallback'].map(name => elementAt(both, name));
  const own = choice ? readBelow(choice, around) : [];
  const twins = fallback ? readBelow(fallback, { ...around, tables: { count: 0 } }) : [];
  if (own.length === 0) return twins;
  const same = own.length === twins.length && own.every((p, n) => p.text === twins[n]!.text);
  return same ? own.map((p, n) => ({ ...p, twin: twins[n]! })) : own;
}

function isTitle(shape: XmlElement): boolean {
  const type = elementAt(shape, 'p:nvSpPr', 'p:nvPr', 'p:ph')?.attributes.get('type');
  return type === 'title' || type === 'ctrTitle';
}

function readParagraph(paragraph: XmlElement, { part, place, row, isTitle }: Around): readonly Found[] {
  const pieces: SlidePiece[] = [];
  let at = 0;
  for (const child of elementsIn(paragraph)) {
    const element = child.name === 'a:br' ? undefined : elementAt(child, 'a:t');
    const text = child.name === 'a:br' ? ' ' : element ? textBelow(element) : '';
    if (text === '') continue;
    // Of `a:fld` (slide number, date) PowerPoint writes the text anew.
    const fixed = child.name === 'a:fld' ? 'in a field that PowerPoint fills in' : element && unusual(element);
    pieces.push({ at, text, ...(element ? { element } : {}), ...(fixed ? { fixed } : {}) });
    at += text.length;
  }
  const text = pieces.map(p => p.text).join('');
  return text.trim() === '' ? [] : [{ part, text, pieces, place, isTitle, ...(row ? { row } : {}) }];
}

/** Text in several pieces of source (comments or CDATA between), which no program writes. */
function unusual(element: XmlElement): string | undefined {
  const plain = element.children.length === 1 && !isElement(element.children[0]!);
  return plain ? undefined : 'written in an unusual way';
}
