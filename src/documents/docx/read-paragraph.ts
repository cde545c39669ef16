import { elementAt, elementsIn, isElement, textBelow, type XmlElement } from '../../office/read-xml.ts';
import { MASK } from '../reading.ts';
import { type Fields, fixedByField } from './fields.ts';
import type { Piece } from './paragraph.ts';

/** A text box in a paragraph: its content, the same for older programs, and the child of the run that holds both. */
export interface Box {
  readonly content: XmlElement;
  readonly twin?: XmlElement;
  readonly child: XmlElement;
}

export interface RunsOfParagraph {
  readonly text: string;
  readonly pieces: readonly Piece[];
  readonly boxes: readonly Box[];
}

/** What is shown for a child of a run that is no text itself. */
const SHOWN: Readonly<Record<string, string>> = {
  'w:tab': '\t',
  'w:ptab': '\t',
  'w:br': ' ',
  'w:cr': ' ',
  'w:noBreakHyphen': '\u2011',
  'w:softHyphen': '\u00ad',
  'w:sym': MASK,
  'w:drawing': MASK,
  'w:pict': MASK,
  'w:object': MASK,
  'w:footnoteReference': MASK,
  'w:endnoteReference': MASK,
  'w:pgNum': MASK,
};

/**
 * Reads a paragraph over all of its runs: what is inserted counts, what is deleted or moved away does not; of a field
 * the result, of a link its words.
 */
export function readParagraph(paragraph: XmlElement, fields: Fields): RunsOfParagraph {
  const pieces: Piece[] = [];
  const boxes: Box[] = [];
  let at = 0;
  const put = (text: string, child: XmlElement, run: XmlElement, why: string | undefined) => {
    const fixed = why ?? fields.fixed();
    pieces.push({ at, text, child, run, ...(fixed === undefined ? {} : { fixed }) });
    at += text.length;
  };
  const readRun = (run: XmlElement, why: string | undefined) => {
    for (const child of elementsIn(run)) {
      if (child.name === 'w:fldChar') fields.note(child);
      else if (child.name === 'w:instrText') fields.code(textBelow(child));
      else if (fields.inCode()) continue;
      else if (child.name === 'w:t') put(textBelow(child), child, run, why ?? unusual(child));
      else if (child.name === 'w:ruby') readInline(elementAt(child, 'w:rubyBase') ?? child, 'under a reading aid');
      else if (child.name === 'mc:AlternateContent' || Object.hasOwn(SHOWN, child.name)) {
        put(SHOWN[child.name] ?? MASK, child, run, why);
        boxes.push(...boxesIn(child));
      }
    }
  };
  const readInline = (parent: XmlElement, why: string | undefined) => {
    for (const child of elementsIn(parent)) {
      if (child.name === 'w:r') readRun(child, why ?? insideOtherChange(child));
      else if (child.name === 'w:fldSimple') {
        readInline(child, why ?? fixedByField(child.attributes.get('w:instr') ?? ''));
      } else if (child.name === 'w:sdt') readInline(elementAt(child, 'w:sdtContent') ?? child, why ?? lockOf(child));
      else if (!NO_TEXT.has(child.name)) readInline(child, why);
    }
  };
  readInline(paragraph, undefined);
  return { text: pieces.map(p => p.text).join(''), pieces, boxes };
}

/** Properties, what is deleted or moved away, and formulas. */
const NO_TEXT = new Set(['w:pPr', 'w:rPr', 'w:sdtPr', 'w:del', 'w:moveFrom', 'm:oMath', 'm:oMathPara', 'w:p']);

/** Why a content control's text cannot be changed. */
export function lockOf(control: XmlElement): string | undefined {
  const properties = elementAt(control, 'w:sdtPr');
  if (/^(?:sdtC|c)ontentLocked$/.test(elementAt(properties, 'w:lock')?.attributes.get('w:val') ?? '')) {
    return 'in a locked control';
  }
  const isBound = properties && elementsIn(properties).some(e => /dataBinding$/.test(e.name));
  return isBound ? 'in a control that is filled from data' : undefined;
}

/** Text in several pieces of source (comments or CDATA between), which no program writes. */
function unusual(child: XmlElement): string | undefined {
  const plain = child.children.length <= 1 && child.children.every(node => !isElement(node));
  return plain ? undefined : 'written in an unusual way';
}

/** A change can be put beside a tracked insertion only where the run is a child of it. */
function insideOtherChange(run: XmlElement): string | undefined {
  for (let at = run.parent?.parent; at && at.name !== 'w:p'; at = at.parent) {
    if (at.name === 'w:ins' || at.name === 'w:moveTo') return "deep inside another person's tracked change";
  }
  return undefined;
}

function boxesIn(child: XmlElement): readonly Box[] {
  if (child.name !== 'mc:AlternateContent') return topmost(child, 'w:txbxContent').map(content => ({ content, child }));
  const [choice, fallback] = ['mc:Choice', 'mc:Fallback'].map(name => elementAt(child, name));
  const contents = choice ? topmost(choice, 'w:txbxContent') : [];
  const twins = fallback ? topmost(fallback, 'w:txbxContent') : [];
  if (contents.length === 0) return twins.map(content => ({ content, child }));
  return contents.map((content, n) => ({ content, child, ...(twins[n] ? { twin: twins[n] } : {}) }));
}

function topmost(element: XmlElement, name: string): readonly XmlElement[] {
  return elementsIn(element).flatMap(e => (e.name === name ? [e] : topmost(e, name)));
}
