import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../src/documents/read-document.ts';
import { CatalogError } from '../../src/model/errors.ts';
import { docxOf, paragraph, partsOf, run, zipped } from './office-files.ts';

const parts = () => partsOf(docxOf(paragraph(run('3.1.1'))));
const changed = (part: string, change: (text: string) => string) => {
  const all = parts();
  all[part] = change(all[part]!);
  return zipped(all);
};
const DOC = 'word/document.xml';

describe('documents that cannot be read are refused in one sentence that says what to do', () => {
  it.each<[string, string, Uint8Array, RegExp]>([
    [
      'a macro in a .docx',
      'a.docx',
      changed('[Content_Types].xml', t => t.replace('wordprocessingml.document.main', 'x.macroEnabled')),
      /holds macros.*save it as \.docx/,
    ],
    ['a macro part', 'a.docx', zipped({ ...parts(), 'word/vbaProject.bin': 'x' }), /holds macros/],
    ['a .docm by name', 'a.docm', docxOf(''), /may hold macros.*save it as \.docx/],
    ['the old format by name', 'b/a.DOC', docxOf(''), /old format of Word; save it as \.docx/],
    ['an unknown kind', 'a.xyz', docxOf(''), /of a kind that is not read; give \.md/],
    ['a name without an ending', 'README', docxOf(''), /of a kind that is not read/],
    [
      'an encrypted file',
      'a.docx',
      Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1]),
      /encrypted.*save it without a password/,
    ],
    ['something else', 'a.docx', new TextEncoder().encode('hello'), /not an office file/],
    ['a zip of something else', 'a.docx', zipped({ 'a.txt': 'x' }), /a zip, but no \.docx/],
    [
      'slides under a name of Word',
      'a.docx',
      changed('[Content_Types].xml', t => t.replace('wordprocessingml.document', 'presentationml.presentation')),
      /not what its name says/,
    ],
    ['a file cut short', 'a.docx', docxOf(paragraph(run('3.1.1'))).slice(0, 900), /not an office file, or was cut off/],
    [
      'a document type with entities',
      'a.docx',
      changed(DOC, t => t.replace('<w:document', '<!DOCTYPE x [<!ENTITY a "b">]><w:document')),
      /document type of its own.*save it anew/,
    ],
    ['an unknown entity', 'a.docx', changed(DOC, t => t.replace('3.1.1', '&boom;')), /not well-formed XML/],
    [
      'tags that do not match',
      'a.docx',
      changed(DOC, t => t.replace('</w:r>', '')),
      /part word\/document\.xml, is not well-formed XML at \d+; open the file/,
    ],
    [
      'a depth that no program writes',
      'a.docx',
      changed(DOC, t => t.replace('<w:body>', `<w:body>${'<w:sdt>'.repeat(2000)}`)),
      /nested more deeply/,
    ],
    [
      'more text than fits',
      'a.docx',
      changed(DOC, t => t.replace('3.1.1', ' '.repeat(41 * 2 ** 20))),
      /holds 41 MB of text.*split it/,
    ],
    [
      'no text part',
      'a.docx',
      changed('_rels/.rels', t => t.replace('word/document.xml', 'word/x.xml')),
      /does not say where its text stands/,
    ],
    ['a PDF that is none', 'a.pdf', new TextEncoder().encode('hello'), /damaged or no PDF/],
    ['html in another encoding', 'a.html', Uint8Array.from([0x3c, 0x70, 0x3e, 0xe4]), /not UTF-8/],
  ])('%s', async (_, name, bytes, sentence) => {
    const error = await readDocument(name, bytes).then(
      () => undefined,
      (e: unknown) => e,
    );
    expect(error).toBeInstanceOf(CatalogError);
    expect((error as CatalogError).message).toMatch(sentence);
    expect((error as CatalogError).message).toMatch(new RegExp(`^${name}[ ,].*[;,].*\\.$`));
  });

  it('a part that is no UTF-8', async () => {
    const { zipSync, strToU8 } = await import('fflate');
    const all = Object.fromEntries(Object.entries(parts()).map(([name, text]) => [name, strToU8(text)]));
    all[DOC] = Uint8Array.from([...all[DOC]!, 0xff]);
    await expect(readDocument('a.docx', zipSync(all))).rejects.toThrow(
      /encoding other than UTF-8; open it in its program/,
    );
  });

  it('whatever is broken in a document, it is read or refused, never a defect', async () => {
    const body = `${paragraph(run('See 3.1'), run('.1'))}<w:tbl><w:tr><w:tc>${paragraph(run('x'))}</w:tc></w:tr></w:tbl>`;
    const whole = partsOf(docxOf(body, { footnotes: `<w:footnote w:id="1">${paragraph(run('n'))}</w:footnote>` }));
    const names = Object.keys(whole);
    await fc.assert(
      fc.asyncProperty(
        fc.nat(names.length - 1),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.nat(30),
        fc.constantFrom('', '<', '>', '"', '&', '</w:p>', '<w:p>', 'w:t', '\0'),
        async (n, where, length, put) => {
          const name = names[n]!;
          const text = whole[name]!;
          const at = Math.floor(where * text.length);
          const bytes = zipped({ ...whole, [name]: text.slice(0, at) + put + text.slice(at + length) });
          await readDocument('a.docx', bytes).catch(error => expect(error).toBeInstanceOf(CatalogError));
        },
      ),
      { numRuns: 120 },
    );
  });
});
