import { describe, expect, it } from 'vitest';
import { openLetter } from '../../src/documents/docx/fill-letter.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { docxOf, paragraph, partsOf, run, textsOf } from './office-files.ts';

const DOC = 'word/document.xml';
const known = ['holder', 'text', 'title'];
const filled = (body: string, fields: Record<string, string>, stories = {}) =>
  partsOf(openLetter(docxOf(body, stories), 'own.docx', known)(fields));

describe('a letter', () => {
  it('is filled where a placeholder is cut into runs, and keeps all other bytes', () => {
    const body = paragraph(run('Dear {{hol'), '<w:proofErr w:type="spellStart"/>', run('der'), run('}}, hello'));
    const before = partsOf(docxOf(body));
    const after = filled(body, { holder: 'A & B' });
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(['Dear A & B, hello']);
    expect(after[DOC]).toContain('<w:proofErr w:type="spellStart"/>');
    for (const name of Object.keys(before)) if (name !== DOC) expect(after[name]).toBe(before[name]);
  });

  it('is filled in tables, headers and footers, and twice in one run', () => {
    const body = `<w:tbl><w:tr><w:tc>${paragraph(run('{{title}} and {{ title }}'))}</w:tc></w:tr></w:tbl>`;
    const after = filled(body, { title: 'T', holder: 'H' }, { footer: paragraph(run('for {{holder}}')) });
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(['T and T']);
    expect(textsOf(after['word/footer.xml']!, 'accepted')).toEqual(['for H']);
  });

  it('takes a value of several lines, and one that looks like a placeholder or like markup, as it is', async () => {
    const bytes = openLetter(
      docxOf(paragraph(run('{{text}}'))),
      'own.docx',
      known,
    )({ text: 'a\n<b> {{title}}', title: 'T' });
    const { passages } = await readDocument('a.docx', bytes);
    expect(passages.map(p => p.text)).toEqual(['a <b> {{title}}']);
  });

  it('is refused with a placeholder that nothing fills, before any is written', () => {
    expect(() => openLetter(docxOf(paragraph(run('{{houlder}}'))), 'own.docx', known)).toThrow(
      'own.docx has the placeholder {{houlder}}, which nothing fills; use {{holder}}, {{text}}, {{title}}.',
    );
  });
});
