import { describe, expect, it } from 'vitest';
import { changeDocument } from '../../src/documents/change-document.ts';
import { readDocument } from '../../src/documents/read-document.ts';

/** A PDF of pages of text: each line with its place on the page and the size of its letters, written by hand. */
function pdfOf(
  pages: readonly (readonly [x: number, y: number, size: number, text: string][])[],
  trailer = '',
): Uint8Array {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Count ${pages.length} /Kids [${pages.map((_, n) => `${4 + 2 * n} 0 R`).join(' ')}] >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
    ...pages.flatMap((lines, n) => {
      const stream = lines.map(([x, y, size, text]) => `BT /F1 ${size} Tf ${x} ${y} Td (${text}) Tj ET`).join('\n');
      return [
        `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 600 800] /Resources << /Font << /F1 3 0 R >> >> /Contents ${5 + 2 * n} 0 R >>`,
        `<< /Length ${stream.length} >>\nstream\n${stream}\nendstream`,
      ];
    }),
  ];
  let text = '%PDF-1.4\n';
  const at = objects.map((object, n) => {
    const offset = text.length;
    text += `${n + 1} 0 obj\n${object}\nendobj\n`;
    return offset;
  });
  const table = at.map(offset => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const end = `xref\n0 ${at.length + 1}\n0000000000 65535 f \n${table}trailer\n<< /Size ${at.length + 1} /Root 1 0 R ${trailer} >>\nstartxref\n${text.length}\n%%EOF`;
  return new TextEncoder().encode(text + end);
}

const read = async (...lines: [number, number, number, string][]) =>
  (await readDocument('a.pdf', pdfOf([lines]))).passages.map(p => p.text.replaceAll('\ufffc', '#'));

describe('reading a PDF', () => {
  it('joins lines that follow one another, and parts what stands apart', async () => {
    expect(
      await read(
        [50, 700, 16, 'Bedding'],
        [50, 680, 10, 'See 3.1.1 to'],
        [50, 668, 10, '3.1.3 here.'],
        [50, 630, 10, 'Another paragraph'],
        [50, 600, 10, '3.2.1'],
        [200, 600, 10, 'Cell'],
      ),
    ).toEqual(['Bedding', 'See 3.1.1 to 3.1.3 here.', 'Another paragraph', '3.2.1', 'Cell']);
  });

  it("does not take a footnote's mark for a digit of the number before it", async () => {
    expect(await read([50, 700, 10, 'See 3.2.1'], [93, 704, 6, '1'], [97, 700, 10, ' now'])).toEqual([
      'See 3.2.1#1 #now',
    ]);
  });

  it('says the page, and that nothing can be changed', async () => {
    const bytes = pdfOf(
      [[[50, 700, 10, 'a 3.1']], [[50, 700, 10, 'b 3.2']]],
      '/Info << /Keywords (drains; edition: 2018) >>',
    );
    const { passages, fixed, edition } = await readDocument('a.pdf', bytes);
    expect(passages.map(p => [p.text, p.place, p.start, p.end])).toEqual([
      ['a 3.1', 'page 1', 0, 5],
      ['b 3.2', 'page 2', 5, 10],
    ]);
    expect(fixed).toEqual([{ start: 0, end: 10, why: 'in a PDF, which is only read' }]);
    expect(edition).toBe('2018');
    expect(await changeDocument('a.pdf', bytes, { edits: [], remarks: [] }, { author: 'F' })).toBeUndefined();
  });

  it('refuses what it cannot read, in a sentence', async () => {
    const secret = `/ID [<00><00>] /Encrypt << /Filter /Standard /V 1 /R 2 /P -1 /O (${'a'.repeat(32)}) /U (${'b'.repeat(32)}) >>`;
    await expect(readDocument('a.pdf', pdfOf([[[50, 700, 10, 'x']]], secret))).rejects.toThrow(
      /encrypted; save it without a password/,
    );
    await expect(readDocument('a.pdf', pdfOf([[]]))).rejects.toThrow(/holds no text, only pictures of it/);
    await expect(readDocument('a.pdf', new Uint8Array())).rejects.toThrow(/damaged or no PDF/);
  });
});
