import { elementAt, elementsIn, type XmlElement } from '../../office/read-xml.ts';

/** Tells the paragraphs that are headings, by their style or by their own outline level. */
export function headingTeller(styles: XmlElement | undefined): (paragraph: XmlElement) => boolean {
  const byId = new Map((styles ? elementsIn(styles, 'w:style') : []).map(s => [s.attributes.get('w:styleId'), s]));
  const isHeadingStyle = (id: string | undefined, steps = 0): boolean => {
    const style = id === undefined || steps > 10 ? undefined : byId.get(id);
    // Without a list of styles the usual ids are all there is to go by.
    if (!style) return /^(?:Heading[1-9]|Title)$/.test(id ?? '');
    const level = valueAt(style, 'w:pPr', 'w:outlineLvl');
    if (level !== undefined) return Number(level) < 9;
    if (/^(?:heading [1-9]|title)$/i.test(valueAt(style, 'w:name') ?? '')) return true;
    return isHeadingStyle(valueAt(style, 'w:basedOn'), steps + 1);
  };
  return paragraph => {
    const level = valueAt(paragraph, 'w:pPr', 'w:outlineLvl');
    return level === undefined ? isHeadingStyle(valueAt(paragraph, 'w:pPr', 'w:pStyle')) : Number(level) < 9;
  };
}

function valueAt(element: XmlElement, ...path: readonly string[]): string | undefined {
  return elementAt(element, ...path)?.attributes.get('w:val');
}
