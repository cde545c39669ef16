import type { Passage } from '../model/document.ts';
import { CatalogError } from '../model/errors.ts';
import { MASK, type Reading } from './reading.ts';
import { recordOf } from './record.ts';

/** A piece of text on a page: where its baseline begins, and how wide it and how high its letters are, in points. */
interface Word {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Reads a PDF: a passage is a paragraph of a page, as far as distances between lines tell. It can be read only.
 *
 * @param name only for messages
 * @throws CatalogError BadFile: encrypted, damaged, or without any text
 */
export async function readPdf(bytes: Uint8Array, name: string): Promise<Reading> {
  const { getDocument, VerbosityLevel } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  // A copy, since the library takes the bytes for itself and leaves an empty array.
  const task = getDocument({ data: new Uint8Array(bytes), isEvalSupported: false, verbosity: VerbosityLevel.ERRORS });
  const passages: Passage[] = [];
  let edition: string | undefined;
  try {
    const pdf = await task.promise;
    const { info } = await pdf.getMetadata();
    edition = editionIn(info as Readonly<Record<string, unknown>>);
    let at = 0;
    for (let page = 1; page <= pdf.numPages; page++) {
      const content = await (await pdf.getPage(page)).getTextContent();
      const words = content.items.flatMap((item): Word[] => {
        if (!('str' in item)) return [];
        const { str: text, transform, width, height } = item;
        return [{ text, x: transform[4], y: transform[5], width, height }];
      });
      for (const text of paragraphsOf(words)) {
        const line = passages.length + 1;
        passages.push({ start: at, end: at + text.length, text, line, place: `page ${page}` });
        at += text.length;
      }
    }
  } catch (trouble) {
    throw refused(name, trouble);
  } finally {
    await task.destroy();
  }
  if (passages.length === 0) {
    throw new CatalogError('BadFile', `${name} holds no text, only pictures of it; give the file it was made from.`, {
      path: name,
    });
  }
  const record = recordOf(passages);
  const all = { start: 0, end: passages.at(-1)!.end, why: 'in a PDF, which is only read' };
  return {
    passages,
    fixed: [all],
    ...(edition === undefined ? {} : { edition }),
    ...(record === undefined ? {} : { record }),
  };
}

/**
 * Joins words to lines and lines to paragraphs. A wider step down the page, one up it, a gap as between the cells of a
 * table or letters of another size on the next line begin a new one. Other sizes on one line stay apart: a footnote's
 * mark right after 3.2.1 would make it 3.2.11.
 */
function paragraphsOf(words: readonly Word[]): readonly string[] {
  const paragraphs: string[] = [];
  let open = '';
  let last: Word | undefined;
  for (const word of words) {
    if (word.text.trim() === '') {
      open += word.text;
      continue;
    }
    if (last) {
      const height = Math.max(last.height, word.height);
      const down = last.y - word.y;
      const sameLine = Math.abs(down) < 0.6 * height;
      const sameSize = Math.min(last.height, word.height) > 0.85 * height;
      const gap = word.x - last.x - last.width;
      if (sameLine ? gap > 1.5 * height || gap < -height : down > 1.9 * height || down < 0 || !sameSize) {
        paragraphs.push(open);
        open = '';
      } else if (!sameLine && !/\s$/.test(open)) open += ' ';
      else if (sameLine && !sameSize) open += MASK;
    }
    last = word;
    open += word.text;
  }
  return [...paragraphs, open].map(text => text.trim()).filter(text => text !== '');
}

function editionIn(info: Readonly<Record<string, unknown>>): string | undefined {
  const custom = info.Custom as Readonly<Record<string, unknown>> | undefined;
  const found = Object.entries(custom ?? {}).find(([key]) => key.toLowerCase() === 'edition')?.[1];
  if (typeof found === 'string' && found.trim() !== '') return found.trim();
  const said = /(?:^|[,;\s])edition\s*[:=]\s*([^,;]+)/i.exec(typeof info.Keywords === 'string' ? info.Keywords : '');
  return said?.[1]?.trim();
}

function refused(name: string, trouble: unknown): unknown {
  const kind = (trouble as { name?: string }).name;
  if (kind === 'PasswordException') {
    return new CatalogError('BadFile', `${name} is encrypted; save it without a password and run again.`, {
      path: name,
    });
  }
  const known = ['InvalidPDFException', 'FormatError', 'UnknownErrorException', 'MissingPDFException'];
  if (!known.includes(kind ?? '')) return trouble;
  return new CatalogError('BadFile', `${name} is damaged or no PDF; make it again from the file it came from.`, {
    path: name,
  });
}
