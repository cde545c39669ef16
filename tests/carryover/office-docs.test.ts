import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carryDocs } from '../../src/commands/documents/carry-docs.ts';
import { customProperty, docxOf, paragraph, partsOf, run, textsOf, zipped } from '../documents/office-files.ts';
import { pdfOf } from '../documents/pdf-file.ts';
import { fixture } from './fixture.ts';
import { memoryFiles } from './memory-files.ts';

const { joint, marks } = fixture();
const DOC = 'word/document.xml';

async function carry(start: Record<string, string | Uint8Array>, date?: string) {
  const memory = memoryFiles(start);
  const run = (inputs = Object.keys(start), outDir = '/out') =>
    carryDocs({ files: memory.files, progress: () => {} }, joint, marks, {
      inputs,
      outDir,
      editions: ['2014'],
      ...(date === undefined ? {} : { date }),
    });
  return { ...memory, run, report: await run(), parts: (path: string) => partsOf(memory.held.get(path)!) };
}

describe('carrying Word documents', () => {
  it('makes what is certain a tracked change, and what is not a comment with reason, heirs and what to do', async () => {
    const body = `${paragraph(run('See 3.1'), run('.1.'))}<w:tbl><w:tr><w:tc>${paragraph(run('Cover: 3.4.5'))}</w:tc></w:tr></w:tbl>`;
    const footnotes = `<w:footnote w:id="1">${paragraph(run('Paint: 3.1.4'))}</w:footnote>`;
    const mark = paragraph(run('and item 3.2.2'), '<w:r><w:footnoteReference w:id="1"/></w:r>');
    const { report, parts, text } = await carry(
      { '/in/a.docx': docxOf(body + mark, { footnotes }) },
      '2024-03-01T00:00:00Z',
    );
    const after = parts('/out/a.docx');
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(['See 3.1.2.', 'Cover: 3.4.5', 'and item 3.2.2']);
    expect(textsOf(after[DOC]!, 'rejected')).toEqual(['See 3.1.1.', 'Cover: 3.4.5', 'and item 3.2.2']);
    expect(textsOf(after['word/comments.xml']!, 'accepted')).toMatchInlineSnapshot(`
      [
        "3.4.5, choose: In 2024, 3.4.5 has gone to 3.3.3 Cover and 3.3.4 Lock.",
        "To do: Say which of 3.3.3 and 3.3.4 this citation means; it may be all of them.",
        "Heir: 3.3.3 Cover",
        "Heir: 3.3.4 Lock",
        "About the footnote 1:",
        "3.1.4, withdrawn: 3.1.4 is withdrawn in 2024: the product is no longer used. Lead paint is not sold any more.",
        "To do: Read 3.1.4 Strap of 2024 and decide whether it takes the place of 3.1.4.",
      ]
    `);
    expect(after['word/comments.xml']!.match(/w:author="Fishplate" w:date="2024-03-01T00:00:00Z"/g)).toHaveLength(2);
    expect(report.documents[0]).toMatchObject({
      rewritten: 1,
      outcomes: { carried: 1, kept: 1, choose: 1, withdrawn: 1 },
    });
    expect(report.review.map(r => [r.place, r.number])).toEqual([
      ['table 1, row 1', '3.4.5'],
      ['footnote 1', '3.1.4'],
    ]);
    expect(text('/out/review.md')).toContain('- Table 1, row 1, **3.4.5**, choose:');
    expect(report.findings[0]).toMatchObject({
      place: { file: 'a.docx' },
      message: expect.stringMatching(/^table 1, row 1: /),
    });
  });

  it('leaves to a person what Word would write over, and says why', async () => {
    const body = paragraph(run('See '), `<w:fldSimple w:instr="REF a">${run('3.1.1')}</w:fldSimple>`);
    const { report, parts } = await carry({ '/in/a.docx': docxOf(body) });
    expect(textsOf(parts('/out/a.docx')[DOC]!, 'accepted')).toEqual(['See 3.1.1']);
    expect(report.review).toMatchObject([
      { outcome: 'carried', toDo: 'Write 3.1.2 for 3.1.1 by hand: it stands in a field that Word fills in (REF).' },
    ]);
    expect(parts('/out/a.docx')['word/comments.xml']).toContain('Write 3.1.2 for 3.1.1 by hand');
    expect(report.documents[0]!.rewritten).toBe(0);
  });

  it('takes the edition from the document property, and refuses to guess across editions', async () => {
    const body = paragraph(run('3.1.1. See 3.1.1 (2018)'));
    const { report, parts } = await carry({ '/in/a.docx': docxOf(body, {}, customProperty('edition', '2014')) });
    expect(textsOf(parts('/out/a.docx')[DOC]!, 'accepted')).toEqual(['3.1.1. See 3.1.2 (2024)']);
    expect(report.review).toMatchObject([{ number: '3.1.1', cause: 'other-edition' }]);
  });

  it('copies a signed record byte for byte and lists all of its citations', async () => {
    const record = docxOf(paragraph(run('3.1.1, 3.4.5')) + paragraph(run('Inspected on 3 May by A. Person')));
    const { held, report } = await carry({ '/in/r.docx': record });
    expect(held.get('/out/r.docx')).toEqual(Buffer.from(record));
    expect(report.review.map(r => r.number)).toEqual(['3.1.1', '3.4.5']);
  });

  it('gives the same citations, and the same text once accepted, however a paragraph is cut into runs', async () => {
    const text = 'See 3.1.1, 3.1.1\u00a0Base for the butt, 3.4.1 to 3.4.10 and items 3.4.5 and 3.2.2; not 3.1.1 mm.';
    const whole = await carry({ '/in/a.docx': docxOf(paragraph(run(text))) });
    const wanted = { review: whole.report.review, text: textsOf(whole.parts('/out/a.docx')[DOC]!, 'accepted') };
    expect(wanted.text[0]).toContain('3.3.1 to 3.3.2');
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat(text.length), { maxLength: 12 }), async cuts => {
        const edges = [0, ...cuts.sort((a, b) => a - b), text.length];
        const runs = edges.slice(1).map((end, n) => run(text.slice(edges[n], end), n % 2 ? '<w:i/>' : ''));
        const { report, parts } = await carry({ '/in/a.docx': docxOf(paragraph(...runs)) });
        expect(report.review).toEqual(wanted.review);
        expect(textsOf(parts('/out/a.docx')[DOC]!, 'accepted')).toEqual(wanted.text);
        expect(textsOf(parts('/out/a.docx')[DOC]!, 'rejected')).toEqual([text]);
      }),
      { numRuns: 25 },
    );
  });
});

describe('carrying other kinds', () => {
  it('html: in place, with every other byte as it was', async () => {
    const html = '\ufeff<p id="3.1.1">See <b>3.1</b>.1&nbsp;and <code>3.1.1</code>; cover 3.4.5</p>\r\n';
    const { text, report } = await carry({ '/in/a.html': html });
    expect(text('/out/a.html')).toBe(
      '\ufeff<p id="3.1.1">See <b>3.1.2</b>&nbsp;and <code>3.1.1</code>; cover 3.4.5</p>\r\n',
    );
    expect(report.review).toMatchObject([{ number: '3.4.5', place: 'line 1', text: 'See 3.1.1 and …; cover 3.4.5' }]);
  });

  it('slides: in place; what a person has to choose is in the review list, by slide', async () => {
    const deck = partsOf(readFileSync(join(import.meta.dirname, '..', '..', 'catalog', 'course', '4-roofs.pptx')));
    const slide = 'ppt/slides/slide1.xml';
    deck[slide] = deck[slide]!.replace(/<a:t>[^<]*<\/a:t>/, '<a:t>See 3.1.1 and 3.4.5</a:t>');
    const { parts, report } = await carry({ '/in/a.pptx': zipped(deck) });
    const after = parts('/out/a.pptx');
    expect(after[slide]).toContain('<a:t>See 3.1.2 and 3.4.5</a:t>');
    expect(Object.keys(deck).filter(name => deck[name] !== after[name])).toEqual([slide]);
    expect(report.review.find(r => r.number === '3.4.5')).toMatchObject({ place: 'slide 1' });
  });

  it('PDF: listed by page, and no PDF is written', async () => {
    const bytes = pdfOf([[[50, 700, 10, 'nothing here']], [[50, 700, 10, 'See items 3.1.1, 3.4.5 and 3.2.2']]]);
    const { held, report } = await carry({ '/in/a.pdf': bytes });
    expect([...held.keys()].sort()).toEqual(['/in/a.pdf', '/out/review.json', '/out/review.md']);
    expect(report.documents[0]).not.toHaveProperty('out');
    expect(report.review.map(r => [r.place, r.number, r.outcome])).toEqual([
      ['page 2', '3.1.1', 'carried'],
      ['page 2', '3.4.5', 'choose'],
    ]);
    expect(report.review[0]!.toDo).toBe('Write 3.1.2 for 3.1.1 by hand: it stands in a PDF, which is only read.');
  });
});

describe('running again with Word documents', () => {
  it('on the originals gives the same bytes, on an output leaves it alone, on an edited one is refused', async () => {
    const { run: again, held } = await carry({ '/in/a.docx': docxOf(paragraph(run('See 3.1.1 and 3.4.5.'))) });
    const first = Buffer.from(held.get('/out/a.docx')!);
    await again();
    expect(held.get('/out/a.docx')).toEqual(first);
    expect((await again(['/out/a.docx'], '/again')).documents).toMatchObject([{ leftAlone: true }]);
    held.set('/out/a.docx', Buffer.from(docxOf(paragraph(run('mine')))));
    await expect(again(['/out/a.docx'], '/again')).rejects.toMatchObject({ code: 'AlreadyCarried' });
    await expect(again()).rejects.toMatchObject({ code: 'AlreadyCarried' });
  });

  it('keeps equal names from two folders apart, and refuses the folder of an input', async () => {
    const docx = docxOf(paragraph(run('3.1.1')));
    const { held, run: again } = await carry({ '/in/a/x.docx': docx, '/in/b/x.docx': docx });
    expect([...held.keys()].filter(name => name.startsWith('/out') && name.endsWith('.docx'))).toEqual([
      '/out/a/x.docx',
      '/out/b/x.docx',
    ]);
    await expect(again(['/in/a/x.docx'], '/in/a')).rejects.toMatchObject({ code: 'OutputIsInput' });
  });

  it('writes nothing where one of the documents is damaged', async () => {
    const bad = { '/in/a.docx': docxOf(paragraph(run('3.1.1'))), '/in/b.docx': new TextEncoder().encode('no') };
    const memory = memoryFiles(bad);
    const work = carryDocs({ files: memory.files, progress: () => {} }, joint, marks, {
      inputs: Object.keys(bad),
      outDir: '/out',
    });
    await expect(work).rejects.toMatchObject({ code: 'BadFile' });
    expect([...memory.held.keys()]).toEqual(Object.keys(bad));
  });
});
