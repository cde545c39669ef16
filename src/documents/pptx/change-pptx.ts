import type { Edit } from '../../model/document.ts';
import { textOfPart } from '../../office/open-package.ts';
import { escapeXml } from '../../office/read-xml.ts';
import { writeZip } from '../../office/write-zip.ts';
import { edit } from '../edit.ts';
import { addressOf } from '../read-paragraphs.ts';
import { openPptx, type SlideParagraph } from './open-pptx.ts';

/**
 * Edits a presentation in place, at the offsets of `readPptx`; there are no tracked changes in its format. Of a stretch
 * over several runs the first takes the new text and keeps its look, the others lose theirs. Texts that no edit touches,
 * and all other parts, come out byte for byte.
 *
 * @throws CatalogError BadFile
 */
export function changePptx(bytes: Uint8Array, name: string, edits: readonly Edit[]): Uint8Array {
  if (edits.length === 0) return bytes;
  const { office, paragraphs } = openPptx(bytes, name);
  const find = addressOf(paragraphs);
  const own = new Map<SlideParagraph, Edit[]>();
  const add = (paragraph: SlideParagraph, change: Edit) =>
    void own.set(paragraph, [...(own.get(paragraph) ?? []), change]);
  for (const { start, end, text } of edits) {
    const { paragraph, at } = find(start);
    const change = { start: start - at, end: end - at, text };
    add(paragraph, change);
    if (paragraph.twin) add(paragraph.twin, change);
  }
  const changes = new Map<string, Edit[]>();
  for (const [paragraph, wanted] of own) {
    const made = changes.get(paragraph.part) ?? [];
    made.push(...textEdits(paragraph, wanted));
    changes.set(paragraph.part, made);
  }
  const parts = new Map(office.parts);
  for (const [part, made] of changes) parts.set(part, new TextEncoder().encode(edit(textOfPart(office, part), made)));
  return writeZip(parts);
}

/** The edits to the source that give each touched run its new text. */
function textEdits(paragraph: SlideParagraph, wanted: readonly Edit[]): readonly Edit[] {
  return paragraph.pieces.flatMap(({ at, text, element }) => {
    const end = at + text.length;
    const touching = wanted.filter(e => e.start < end && e.end > at);
    if (touching.length === 0 || !element) return [];
    const inRun = touching.map(e => ({
      start: Math.max(e.start, at) - at,
      end: Math.min(e.end, end) - at,
      text: e.start >= at ? e.text : '',
    }));
    return [{ start: element.innerStart, end: element.innerEnd, text: escapeXml(edit(text, inRun)) }];
  });
}
