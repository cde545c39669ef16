import type { Edit, Remark } from '../../model/document.ts';
import { CatalogError } from '../../model/errors.ts';
import { textOfPart } from '../../office/open-package.ts';
import { writeZip } from '../../office/write-zip.ts';
import { edit } from '../edit.ts';
import { changeRuns, type Span } from './change-runs.ts';
import { type Comment, withComments } from './comments.ts';
import { type Docx, openDocx } from './open-docx.ts';
import type { Paragraph } from './paragraph.ts';
import type { Stamp } from './stamp.ts';

/**
 * Puts edits into a Word document as tracked changes and remarks as comments, at the offsets of `readDocx`. Runs without
 * one, and all parts without one, come out byte for byte; without any, so does the file.
 *
 * A comment about a footnote stands at the footnote's mark and one about a text box at the box, since Word takes
 * comments in the body only; one about a header or a footer stands at the first paragraph.
 *
 * @throws CatalogError BadFile
 */
export function changeDocx(
  bytes: Uint8Array,
  name: string,
  edits: readonly Edit[],
  remarks: readonly Remark[],
  stamp: Stamp,
): Uint8Array {
  if (edits.length + remarks.length === 0) return bytes;
  const docx = openDocx(bytes, name);
  const nextId = idsAfter(docx);
  const spans = new Map<Paragraph, Span[]>();
  const add = (paragraph: Paragraph, span: Span) => void spans.set(paragraph, [...(spans.get(paragraph) ?? []), span]);
  let at = 0;
  const starts = docx.paragraphs.map(p => {
    const start = at;
    at += p.text.length;
    return start;
  });
  const paragraphAt = (offset: number): number => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (starts[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  };
  for (const one of edits) {
    const n = paragraphAt(one.start);
    const paragraph = docx.paragraphs[n]!;
    const span = { start: one.start - starts[n]!, end: one.end - starts[n]!, text: one.text };
    add(paragraph, span);
    if (paragraph.twin) add(paragraph.twin, span);
  }
  const comments: Comment[] = [];
  const holders = new Map(docx.paragraphs.flatMap(p => p.pieces.map(piece => [piece.child, { p, piece }] as const)));
  const place = (
    paragraph: Paragraph,
    start: number,
    end: number,
    steps = 0,
  ): readonly [Paragraph, number, number] | undefined => {
    if (paragraph.heldBy === undefined) return [paragraph, start, end];
    if (paragraph.heldBy === null) {
      const first = docx.paragraphs.find(p => p.heldBy === undefined);
      return first && paragraph.pieces.every(p => p.fixed !== 'in a comment')
        ? [first, 0, first.text.length]
        : undefined;
    }
    const holder = holders.get(paragraph.heldBy.child);
    if (!holder || steps > 9) return undefined;
    return place(holder.p, holder.piece.at, holder.piece.at + holder.piece.text.length, steps + 1);
  };
  for (const { start, end, paragraphs } of remarks) {
    const n = paragraphAt(start);
    const paragraph = docx.paragraphs[n]!;
    const placed = place(paragraph, start - starts[n]!, end - starts[n]!);
    if (!placed) continue;
    const id = nextId();
    const elsewhere = placed[0] !== paragraph ? [`About the ${paragraph.place}:`] : [];
    comments.push({ id, paragraphs: [...elsewhere, ...paragraphs] });
    add(placed[0], { start: placed[1], end: placed[2], comment: id });
  }
  return writeZip(withSpans(docx, spans, comments, stamp, nextId));
}

function withSpans(
  docx: Docx,
  spans: ReadonlyMap<Paragraph, readonly Span[]>,
  comments: readonly Comment[],
  stamp: Stamp,
  nextId: () => number,
): ReadonlyMap<string, Uint8Array> {
  const { office } = docx;
  const changes = new Map<string, Edit[]>();
  const sources = new Map<string, string>();
  for (const [paragraph, own] of spans) {
    const source = sources.get(paragraph.part) ?? textOfPart(office, paragraph.part);
    sources.set(paragraph.part, source);
    if (!paragraph.element.written.includes(':')) {
      throw new CatalogError(
        'BadFile',
        `${office.name} was written by a program that names its parts unusually; open it in Word and save it again.`,
        { path: office.name },
      );
    }
    const made = changeRuns(paragraph, own, source, stamp, nextId);
    changes.set(paragraph.part, [...(changes.get(paragraph.part) ?? []), ...made]);
  }
  const parts = new Map(withComments(office, comments, stamp));
  for (const [part, edits] of changes) parts.set(part, new TextEncoder().encode(edit(sources.get(part)!, edits)));
  return parts;
}

/** Numbers for changes and comments that no change, comment or bookmark of the document has. */
function idsAfter({ office }: Docx): () => number {
  let last = 0;
  for (const part of office.parts.keys()) {
    if (!part.endsWith('.xml') || !part.startsWith(office.main.slice(0, office.main.lastIndexOf('/') + 1))) continue;
    for (const [, id] of textOfPart(office, part).matchAll(/:id\s*=\s*["'](\d{1,9})["']/g))
      last = Math.max(last, Number(id));
  }
  return () => ++last;
}
