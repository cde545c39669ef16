import type { Edit, Remark } from '../../model/document.ts';
import { CatalogError } from '../../model/errors.ts';
import { relationsOf, textOfPart } from '../../office/open-package.ts';
import { writeZip } from '../../office/write-zip.ts';
import { edit } from '../edit.ts';
import { addressOf } from '../read-paragraphs.ts';
import { changeRuns, type Span } from './change-runs.ts';
import { commentPlaces } from './comment-places.ts';
import { type Comment, withComments } from './comments.ts';
import { type Docx, openDocx } from './open-docx.ts';
import type { Paragraph } from './paragraph.ts';
import type { Stamp } from './stamp.ts';

/**
 * Puts edits into a Word document as tracked changes and remarks as comments, at the offsets of `readDocx`. Runs without
 * one, and all parts without one, come out byte for byte; without any, so does the file.
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
  const find = addressOf(docx.paragraphs);
  const spans = new Map<Paragraph, Span[]>();
  const add = (paragraph: Paragraph, span: Span) => void spans.set(paragraph, [...(spans.get(paragraph) ?? []), span]);
  for (const { start, end, text } of edits) {
    const { paragraph, at } = find(start);
    const span = { start: start - at, end: end - at, text };
    add(paragraph, span);
    if (paragraph.twin) add(paragraph.twin, span);
  }
  const placeOf = commentPlaces(docx.paragraphs);
  const comments: Comment[] = [];
  for (const { start, end, paragraphs } of remarks) {
    const { paragraph, at } = find(start);
    const place = placeOf({ paragraph, start: start - at, end: end - at });
    if (!place) continue;
    const id = nextId();
    const elsewhere = place.paragraph === paragraph ? [] : [`About the ${paragraph.place}:`];
    comments.push({ id, paragraphs: [...elsewhere, ...paragraphs] });
    add(place.paragraph, { start: place.start, end: place.end, comment: id });
  }
  return writeZip(withSpans(docx, spans, comments, stamp, nextId));
}

function withSpans(
  { office }: Docx,
  spans: ReadonlyMap<Paragraph, readonly Span[]>,
  comments: readonly Comment[],
  stamp: Stamp,
  nextId: () => number,
): ReadonlyMap<string, Uint8Array> {
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
    const made = changes.get(paragraph.part) ?? [];
    made.push(...changeRuns(paragraph, own, source, stamp, nextId));
    changes.set(paragraph.part, made);
  }
  const parts = new Map(withComments(office, comments, stamp));
  for (const [part, edits] of changes) parts.set(part, new TextEncoder().encode(edit(sources.get(part)!, edits)));
  return parts;
}

/** Numbers for changes and comments that nothing in the document has, in whichever of its parts. */
function idsAfter({ office }: Docx): () => number {
  const stories = relationsOf(office, office.main).filter(r => STORIES.has(r.type) && office.parts.has(r.target));
  let last = 0;
  for (const part of new Set([office.main, ...stories.map(r => r.target)])) {
    for (const [, id] of textOfPart(office, part).matchAll(/:id\s*=\s*["'](\d{1,9})["']/g)) {
      last = Math.max(last, Number(id));
    }
  }
  return () => ++last;
}

const STORIES = new Set(['footnotes', 'endnotes', 'header', 'footer', 'comments']);
