import { type OfficePackage, relationsOf, treeOfPart } from '../office/open-package.ts';
import { elementsBelow, elementsIn, textBelow, type XmlElement } from '../office/read-xml.ts';

/** A text of a chart or a diagram. They are read only: PowerPoint and Word draw them anew from data kept elsewhere. */
export interface DrawnText {
  readonly part: string;
  /** "chart", "diagram 2". */
  readonly place: string;
  readonly fixed: string;
  readonly text: string;
  readonly element: XmlElement;
}

/** The texts of the charts and diagrams that a slide or a document shows. */
export function drawnTexts(office: OfficePackage, from: string): readonly DrawnText[] {
  return (['chart', 'diagram'] as const).flatMap(kind => {
    const type = kind === 'chart' ? 'chart' : 'diagramData';
    const parts = relationsOf(office, from).filter(r => r.type === type);
    return parts.flatMap(({ target: part }, n) => {
      const place = parts.length === 1 ? kind : `${kind} ${n + 1}`;
      const tree = treeOfPart(office, part);
      return (tree ? textsIn(tree) : []).map(({ element, text }) => ({
        part,
        place,
        fixed: `in a ${kind}, which is only read`,
        text,
        element,
      }));
    });
  });
}

function textsIn(element: XmlElement): readonly { readonly element: XmlElement; readonly text: string }[] {
  return elementsIn(element).flatMap(child => {
    if (child.name === 'c:numCache') return [];
    if (child.name !== 'a:p' && child.name !== 'c:v') return textsIn(child);
    const text = child.name === 'c:v' ? textBelow(child) : elementsBelow(child, 'a:t').map(textBelow).join('');
    return text.trim() === '' ? [] : [{ element: child, text }];
  });
}
