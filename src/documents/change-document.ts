import type { Edit, Remark } from '../model/document.ts';
import { decodeText } from './decode.ts';
import type { Stamp } from './docx/stamp.ts';
import { edit } from './edit.ts';
import { kindOfDocument } from './kinds.ts';

export interface Changes {
  readonly edits: readonly Edit[];
  /** Told in the document where its kind has a place for it that nobody takes for its text: in Word, comments. */
  readonly remarks: readonly Remark[];
}

/**
 * Changes a document at the offsets of `readDocument`, and nothing beside. In Word edits are tracked changes; in slides
 * they are made in place, and remarks are left to the review list: what stands in speaker notes is read out and printed,
 * and where a slide has none, a page of notes, its master and its theme would have to be made up.
 *
 * @returns undefined for a PDF, which is only read
 * @throws CatalogError as `readDocument`
 */
export async function changeDocument(
  name: string,
  bytes: Uint8Array,
  { edits, remarks }: Changes,
  stamp: Stamp,
): Promise<Uint8Array | undefined> {
  switch (kindOfDocument(name)) {
    case 'markdown':
    case 'plain':
      return encode(edit(decodeText(name, bytes), edits));
    case 'html':
      return encode((await import('./html.ts')).editHtml(decodeText(name, bytes), edits));
    case 'docx':
      return (await import('./docx/change-docx.ts')).changeDocx(bytes, name, edits, remarks, stamp);
    case 'pptx':
      return (await import('./pptx/change-pptx.ts')).changePptx(bytes, name, edits);
    case 'pdf':
      return undefined;
  }
}

function encode(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
