import {
  type OfficePackage,
  openPackage,
  propertyOf,
  relationsOf,
  signatureOf,
  treeOfPart,
} from '../../office/open-package.ts';
import { elementsBelow, elementsIn, type XmlElement } from '../../office/read-xml.ts';
import { drawnTexts } from '../drawn-texts.ts';
import { headingTeller } from './headings.ts';
import type { Paragraph } from './paragraph.ts';
import { readStory } from './read-story.ts';

/** A Word document, opened: its parts and all paragraphs that show text, in the order of reading. */
export interface Docx {
  readonly office: OfficePackage;
  readonly paragraphs: readonly Paragraph[];
  readonly edition: string | undefined;
  /** By what the file as a whole says that it is signed. */
  readonly signed: string | undefined;
}

/**
 * Opens a docx: body, footnotes, endnotes, headers, footers, charts and diagrams, then comments.
 *
 * @param name only for messages
 * @throws CatalogError BadFile, see `openPackage` and `readXml`
 */
export function openDocx(bytes: Uint8Array, name: string): Docx {
  const office = openPackage(bytes, name, { contentType: 'wordprocessingml.document.main+xml', ending: '.docx' });
  const relations = relationsOf(office, office.main);
  const partsOf = (type: string) => [...new Set(relations.filter(r => r.type === type).map(r => r.target))];
  const treeOf = (type: string) => partsOf(type).flatMap(part => treeOfPart(office, part) ?? [])[0];
  const levelOf = headingTeller(treeOf('styles'));
  const body = treeOfPart(office, office.main)!;

  const notes = (type: 'footnote' | 'endnote'): Paragraph[] => {
    const marks = elementsBelow(body, `w:${type}Reference`);
    return partsOf(`${type}s`).flatMap(part => {
      const byId = new Map(childrenOf(treeOfPart(office, part)).map(note => [note.attributes.get('w:id'), note]));
      return marks.flatMap((mark, n) => {
        const note = byId.get(mark.attributes.get('w:id'));
        if (!note) return [];
        return readStory(note, { part, place: `${type} ${n + 1}`, heldBy: { child: mark } }, levelOf);
      });
    });
  };
  const margins = (type: 'header' | 'footer'): Paragraph[] =>
    partsOf(type).flatMap((part, n, all) => {
      const place = all.length === 1 ? type : `${type} ${n + 1}`;
      return childrenOf(treeOfPart(office, part), true).flatMap(root =>
        readStory(root, { part, place, heldBy: null }, levelOf),
      );
    });
  const comments = partsOf('comments').flatMap(part =>
    childrenOf(treeOfPart(office, part)).flatMap((comment, n) =>
      readStory(comment, { part, place: `comment ${n + 1}`, fixed: 'in a comment', heldBy: null }, levelOf),
    ),
  );
  const paragraphs = [
    ...readStory(body, { part: office.main }, levelOf),
    ...notes('footnote'),
    ...notes('endnote'),
    ...margins('header'),
    ...margins('footer'),
    ...drawnTexts(office, office.main).map(({ part, text, place, fixed, element }) => {
      const pieces = [{ at: 0, text, fixed, child: element, run: element }];
      return { part, element, text, pieces, place, heldBy: null };
    }),
    ...comments,
  ];
  return { office, paragraphs, edition: propertyOf(office, 'edition'), signed: signatureOf(office) };
}

function childrenOf(tree: XmlElement | undefined, whole = false): readonly XmlElement[] {
  return tree === undefined ? [] : whole ? [tree] : elementsIn(tree);
}
