import { describe, expect, it } from 'vitest';
import { changeDocument } from '../../src/documents/change-document.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { pdfOf } from './pdf-file.ts';

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
