import { elementAt, elementsIn, type XmlElement } from '../../office/read-xml.ts';

/** Tells how deep a heading stands (a title 0), by its style or by its own outline level; nothing of other paragraphs. */
export function headingTeller(styles: XmlElement | undefined): (paragraph: XmlElement) => number | undefined {
  const byId = new Map((styles ? elementsIn(styles, 'w:style') : []).map(s => [s.attributes.get('w:styleId'), s]));
  const outlined = (level: string) => (Number(level) < 9 ? Number(level) + 1 : undefined);
  const named = (name: string, usual: RegExp) => {
    const found = usual.exec(name);
    return found ? Number(found[1] ?? 0) : undefined;
  };
  const levelOfStyle = (id: string | undefined, steps = 0): number | undefined => {
    const style = id === undefined || steps > 10 ? undefined : byId.get(id);
    // Without a list of styles the usual ids are all there is to go by.
    if (!style) return named(id ?? '', /^(?:Heading([1-9])|Title)$/);
    const level = valueAt(style, 'w:pPr', 'w:outlineLvl');
    if (level !== undefined) return outlined(level);
    const own = named(valueAt(style, 'w:name') ?? '', /^(?:heading ([1-9])|title)$/i);
    return own ?? levelOfStyle(valueAt(style, 'w:basedOn'), steps + 1);
  };
  return paragraph => {
    const level = valueAt(paragraph, 'w:pPr', 'w:outlineLvl');
    return level === undefined ? levelOfStyle(valueAt(paragraph, 'w:pPr', 'w:pStyle')) : outlined(level);
  };
}

function valueAt(element: XmlElement, ...path: readonly string[]): string | undefined {
  return elementAt(element, ...path)?.attributes.get('w:val');
}
