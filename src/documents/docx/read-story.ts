import { elementAt, elementsIn, type XmlElement } from '../../office/read-xml.ts';
import { headTableCells } from '../found-cells.ts';
import { followFields } from './fields.ts';
import type { Paragraph } from './paragraph.ts';
import { type Box, lockOf, readParagraph } from './read-paragraph.ts';
import { cellLayout } from './table-cells.ts';

/** What is known of a stretch of the document from outside of it. */
export interface Surroundings {
  readonly part: string;
  /** Where it stands, in words; in the body nothing, for there headings and tables say it. */
  readonly place?: string;
  /** Why nothing in it can be changed. */
  readonly fixed?: string;
  readonly heldBy?: Paragraph['heldBy'];
  readonly row?: XmlElement;
}

/** Reads the paragraphs below an element, each once and in order; text boxes follow the paragraph that holds them. */
export function readStory(
  root: XmlElement,
  around: Surroundings,
  levelOf: (paragraph: XmlElement) => number | undefined,
): readonly Paragraph[] {
  const found: Paragraph[] = [];
  const fields = followFields();
  let [heading, counted, tables, boxes]: [string | undefined, number, number, number] = [undefined, 0, 0, 0];

  const paragraph = (element: XmlElement, at: Surroundings) => {
    const runs = readParagraph(element, fields);
    const said = runs.text.replace(/\s+/g, ' ').trim();
    if (said !== '') {
      const level = at.place === undefined ? levelOf(element) : undefined;
      const opens = level !== undefined;
      if (opens) heading = said;
      counted = opens ? 0 : counted + (at.place === undefined ? 1 : 0);
      const place = at.place ?? (opens ? `heading “${short(said)}”` : paragraphPlace(heading, counted));
      const pieces = at.fixed === undefined ? runs.pieces : runs.pieces.map(p => ({ ...p, fixed: at.fixed! }));
      found.push({
        part: at.part,
        element,
        text: runs.text,
        pieces,
        place,
        ...(heading === undefined || around.place !== undefined ? {} : { heading }),
        ...(opens ? { level } : {}),
        ...(at.row === undefined ? {} : { row: at.row }),
        ...(at.heldBy === undefined ? {} : { heldBy: at.heldBy }),
      });
    }
    for (const box of runs.boxes) textBox(box, at);
  };

  const textBox = (box: Box, at: Surroundings) => {
    boxes++;
    const place = around.place === undefined ? `text box ${boxes}` : `${around.place}, text box ${boxes}`;
    const inside = { ...at, place, heldBy: at.heldBy === undefined ? { child: box.child } : at.heldBy };
    const first = found.length;
    blocks(box.content, inside);
    if (!box.twin) return;
    const twins = readStory(box.twin, inside, levelOf);
    const own = found.slice(first);
    if (own.length !== twins.length || own.some((p, n) => p.text !== twins[n]!.text)) return;
    own.forEach((p, n) => {
      found[first + n] = { ...p, twin: twins[n]! };
    });
  };

  const table = (element: XmlElement, at: Surroundings) => {
    const number = at.row === undefined ? ++tables : tables;
    const layout = cellLayout();
    const cells = (parent: XmlElement, inside: Surroundings) => {
      for (const child of elementsIn(parent)) {
        if (child.name === 'w:tc') {
          const first = found.length;
          blocks(child, inside);
          layout.put(child, first, found.length);
        } else if (child.name === 'w:p') paragraph(child, inside);
        else if (child.name === 'w:tbl') table(child, inside);
        else if (child.name === 'w:sdt') cells(elementAt(child, 'w:sdtContent') ?? child, locked(child, inside));
        else if (child.name === 'mc:AlternateContent') cells(elementAt(child, 'mc:Choice') ?? child, inside);
        else if (!SKIPPED.has(child.name)) cells(child, inside);
      }
    };
    let row = 0;
    const rows = (parent: XmlElement, inside: Surroundings) => {
      for (const child of elementsIn(parent)) {
        if (child.name === 'w:tr') {
          row++;
          if (elementAt(child, 'w:trPr', 'w:del')) continue;
          const words = [around.place, `table ${number}, row ${row}`].filter(w => w !== undefined).join(', ');
          layout.startRow(child);
          cells(child, at.row === undefined ? { ...inside, place: words, row: child } : inside);
        } else if (child.name === 'w:sdt') rows(elementAt(child, 'w:sdtContent') ?? child, locked(child, inside));
        else if (!SKIPPED.has(child.name)) rows(child, inside);
      }
    };
    rows(element, at);
    headTableCells(found, layout.cells, layout.heads());
  };

  const blocks = (parent: XmlElement, at: Surroundings) => {
    for (const child of elementsIn(parent)) {
      if (child.name === 'w:p') paragraph(child, at);
      else if (child.name === 'w:tbl') table(child, at);
      else if (child.name === 'w:sdt') blocks(elementAt(child, 'w:sdtContent') ?? child, locked(child, at));
      else if (child.name === 'mc:AlternateContent') blocks(elementAt(child, 'mc:Choice') ?? child, at);
      else if (!SKIPPED.has(child.name)) blocks(child, at);
    }
  };

  blocks(root, around);
  return found;
}

const SKIPPED = new Set(['w:del', 'w:moveFrom', 'w:tblPr', 'w:tblGrid', 'w:trPr', 'w:tcPr', 'w:sectPr', 'w:sdtPr']);

function locked(control: XmlElement, at: Surroundings): Surroundings {
  const fixed = at.fixed ?? lockOf(control);
  return fixed === undefined ? at : { ...at, fixed };
}

function paragraphPlace(heading: string | undefined, count: number): string {
  return heading === undefined ? `paragraph ${count}` : `under “${short(heading)}”, paragraph ${count}`;
}

function short(heading: string): string {
  return heading.length > 60 ? `${heading.slice(0, 57).trimEnd()}…` : heading;
}
