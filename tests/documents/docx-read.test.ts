import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import mammoth from 'mammoth';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../src/documents/read-document.ts';
import { customProperty, docxOf, keywords, paragraph, partsOf, run, type Stories, W, zipped } from './office-files.ts';

const read = (body: string, stories: Stories = {}, more: Record<string, string> = {}) =>
  readDocument('a.docx', docxOf(body, stories, more));
const shown = async (body: string) => (await read(body)).passages.map(p => p.text);
const field = (code: string, ...result: string[]) =>
  `<w:r><w:fldChar w:fldCharType="begin"/></w:r><w:r><w:instrText> ${code} </w:instrText></w:r><w:r><w:fldChar w:fldCharType="separate"/></w:r>${result.join('')}<w:r><w:fldChar w:fldCharType="end"/></w:r>`;
const box = (inside: string, older = inside) =>
  `<w:r><mc:AlternateContent><mc:Choice Requires="wps"><w:drawing><wps:txbx><w:txbxContent>${inside}</w:txbxContent></wps:txbx></w:drawing></mc:Choice><mc:Fallback><w:pict><v:textbox><w:txbxContent>${older}</w:txbxContent></v:textbox></w:pict></mc:Fallback></mc:AlternateContent></w:r>`;
const cell = (...inside: string[]) => `<w:tc><w:tcPr/>${inside.join('')}</w:tc>`;

describe('reading a Word document', () => {
  it.each([
    ['runs are joined', paragraph(run('3.'), run('1', '<w:b/>'), run('.1')), ['3.1.1']],
    [
      'what only marks a place parts nothing',
      paragraph(run('3.1'), '<w:proofErr w:type="spellStart"/><w:bookmarkStart w:id="1" w:name="x"/>', run('.1')),
      ['3.1.1'],
    ],
    ['entities are read', paragraph(run('a &amp; &#8211; &lt;b&gt;')), ['a & – <b>']],
    [
      'no-break and soft hyphens are characters',
      paragraph('<w:r><w:t>B</w:t><w:noBreakHyphen/><w:t>3</w:t><w:softHyphen/><w:t>2</w:t></w:r>'),
      ['B\u20113\u00ad2'],
    ],
    [
      'tabs and breaks part words',
      paragraph('<w:r><w:t>Part</w:t><w:tab/><w:t>3</w:t><w:br/><w:t>4</w:t></w:r>'),
      ['Part\t3 4'],
    ],
    [
      'what is deleted or moved away is not there',
      paragraph(
        '<w:del w:id="1"><w:r><w:delText>3.1</w:delText></w:r></w:del><w:moveFrom w:id="2"><w:r><w:t>3.2</w:t></w:r></w:moveFrom>',
        run('b'),
      ),
      ['b'],
    ],
    [
      'what is inserted or moved here is',
      paragraph(`<w:ins w:id="1">${run('3')}</w:ins><w:moveTo w:id="2">${run('.1')}</w:moveTo>`),
      ['3.1'],
    ],
    ['of a link the words', paragraph(`<w:hyperlink r:id="rIdX">${run('see 3.1')}</w:hyperlink>`), ['see 3.1']],
    ['of a field the result', paragraph(field('REF _Ref3.2.1 \\r', run('3.1.1'))), ['3.1.1']],
    ['of fields in a field too', paragraph(field(`IF ${'x'} `, run('a'), field('PAGE', run('7')), run('b'))), ['a7b']],
    [
      'and never what stands in its code',
      paragraph(
        '<w:r><w:fldChar w:fldCharType="begin"/></w:r>',
        field('X', run('3.2.1')),
        '<w:r><w:fldChar w:fldCharType="separate"/></w:r>',
        run('r'),
        '<w:r><w:fldChar w:fldCharType="end"/></w:r>',
      ),
      ['r'],
    ],
    [
      'a field may end in a later paragraph',
      paragraph('<w:r><w:fldChar w:fldCharType="begin"/></w:r><w:r><w:instrText>TOC</w:instrText></w:r>') +
        paragraph(run('no'), '<w:r><w:fldChar w:fldCharType="separate"/></w:r>', run('yes')),
      ['yes'],
    ],
    [
      'of simple fields and controls the content',
      paragraph(
        `<w:fldSimple w:instr="REF x">${run('3')}</w:fldSimple><w:sdt><w:sdtPr><w:alias w:val="3.2.1"/></w:sdtPr><w:sdtContent>${run('.1')}</w:sdtContent></w:sdt>`,
      ),
      ['3.1'],
    ],
    ['controls around paragraphs too', `<w:sdt><w:sdtContent>${paragraph(run('a'))}</w:sdtContent></w:sdt>`, ['a']],
    ['text boxes follow their paragraph, once', paragraph(run('a'), box(paragraph(run('3.1')))), ['a\ufffc', '3.1']],
    [
      'pictures and footnote marks are masked',
      paragraph(run('3.1'), '<w:r><w:footnoteReference w:id="2"/></w:r>', run('.')),
      ['3.1\ufffc.'],
    ],
    [
      'a deleted row is not there',
      `<w:tbl><w:tr><w:trPr><w:del w:id="1"/></w:trPr>${cell(paragraph(run('a')))}</w:tr><w:tr>${cell(paragraph(run('b')))}</w:tr></w:tbl>`,
      ['b'],
    ],
    ['formulas are not read', paragraph(run('a'), '<m:oMath><m:r><m:t>3.1</m:t></m:r></m:oMath>'), ['a']],
  ])('%s', async (_, body, expected) => expect(await shown(body)).toEqual(expected));

  it('says in words where everything stands', async () => {
    const heading = (text: string) => `<w:p><w:pPr><w:pStyle w:val="H"/></w:pPr>${run(text)}</w:p>`;
    const inner = `<w:tbl><w:tr>${cell(paragraph(run('nested')))}</w:tr></w:tbl>`;
    const { passages } = await read(
      [
        paragraph(run('first'), '<w:r><w:footnoteReference w:id="7"/></w:r>'),
        heading('Bedding'),
        paragraph(run('second')),
        paragraph(),
        paragraph(run('third'), box(paragraph(run('boxed'))), '<w:r><w:footnoteReference w:id="3"/></w:r>'),
        `<w:tbl><w:tr>${cell(paragraph(run('a')))}</w:tr><w:tr>${cell(paragraph(run('b')), inner)}</w:tr></w:tbl>`,
        `<w:tbl><w:tr>${cell(paragraph(run('c')))}</w:tr></w:tbl>`,
        '<w:p><w:r><w:endnoteReference w:id="2"/></w:r></w:p>',
      ].join(''),
      {
        styles:
          '<w:style w:styleId="H"><w:name w:val="Sub"/><w:basedOn w:val="B"/></w:style><w:style w:styleId="B"><w:name w:val="heading 2"/></w:style>',
        footnotes: `<w:footnote w:id="-1" w:type="separator">${paragraph(run('never'))}</w:footnote><w:footnote w:id="3">${paragraph(run('n2'))}</w:footnote><w:footnote w:id="7">${paragraph(run('n1'))}</w:footnote>`,
        endnotes: `<w:endnote w:id="2">${paragraph(run('e'))}</w:endnote>`,
        header: `${paragraph(run('h'))}<w:tbl><w:tr>${cell(paragraph(run('ht')))}</w:tr></w:tbl>`,
        footer: paragraph(run('f')),
        comments: `<w:comment w:id="0">${paragraph(run('k'))}</w:comment>`,
      },
    );
    const text = (t: string) => t.replaceAll('\ufffc', '');
    expect(passages.flatMap(p => (p.level === undefined ? [] : [[p.text, p.level]]))).toEqual([['Bedding', 2]]);
    expect(passages.filter(p => text(p.text)).map(p => [text(p.text), p.place, p.heading])).toEqual([
      ['first', 'paragraph 1', undefined],
      ['Bedding', 'heading “Bedding”', 'Bedding'],
      ['second', 'under “Bedding”, paragraph 1', 'Bedding'],
      ['third', 'under “Bedding”, paragraph 2', 'Bedding'],
      ['boxed', 'text box 1', 'Bedding'],
      ['a', 'table 1, row 1', 'Bedding'],
      ['b', 'table 1, row 2', 'Bedding'],
      ['nested', 'table 1, row 2', 'Bedding'],
      ['c', 'table 2, row 1', 'Bedding'],
      ['n1', 'footnote 1', undefined],
      ['n2', 'footnote 2', undefined],
      ['e', 'endnote 1', undefined],
      ['h', 'header', undefined],
      ['ht', 'header, table 1, row 1', undefined],
      ['f', 'footer', undefined],
      ['k', 'comment 1', undefined],
    ]);
    let at = 0;
    for (const p of passages) {
      expect([p.start, p.end]).toEqual([at, at + p.text.length]);
      at = p.end;
    }
  });

  it('says what can be read and not changed, and why', async () => {
    const bound = (properties: string) =>
      `<w:sdt><w:sdtPr>${properties}</w:sdtPr><w:sdtContent>${run('x')}</w:sdtContent></w:sdt>`;
    const { fixed, passages } = await read(
      paragraph(
        run('free'),
        field('HYPERLINK "x"', run('link')),
        field('REF a', run('3.1')),
        bound('<w:lock w:val="contentLocked"/>'),
        bound('<w:dataBinding w:xpath="/a"/>'),
        `<w:ins w:id="1"><w:smartTag>${run('deep')}</w:smartTag></w:ins>`,
      ) + paragraph(field('TOC \\o', run('Bedding 3'))),
      { comments: `<w:comment w:id="0">${paragraph(run('k'))}</w:comment>` },
    );
    const all = passages.map(p => p.text).join('');
    expect(fixed?.map(f => [all.slice(f.start, f.end), f.why])).toEqual([
      ['3.1', 'in a field that Word fills in (REF)'],
      ['x', 'in a locked control'],
      ['x', 'in a control that is filled from data'],
      ['deep', "deep inside another person's tracked change"],
      ['Bedding 3', 'in the table of contents, which Word fills in'],
      ['k', 'in a comment'],
    ]);
  });

  it('reads the words of charts and diagrams, which cannot be changed', async () => {
    const parts = partsOf(docxOf(paragraph(run('a'))));
    const types = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const relation = (id: string, type: string, target: string) =>
      `<Relationship Id="${id}" Type="${types}/${type}" Target="${target}"/></Relationships>`;
    const relations = 'word/_rels/document.xml.rels';
    parts[relations] = parts[relations]!.replace('</Relationships>', relation('c', 'chart', 'charts/c.xml'));
    parts[relations] = parts[relations].replace('</Relationships>', relation('d', 'diagramData', 'd.xml'));
    const drawing = 'http://schemas.openxmlformats.org/drawingml/2006';
    parts['word/charts/c.xml'] =
      `<c:chart xmlns:c="${drawing}/chart"><c:strCache><c:pt><c:v>3.1.1</c:v></c:pt></c:strCache><c:numCache><c:pt><c:v>4</c:v></c:pt></c:numCache></c:chart>`;
    parts['word/d.xml'] =
      `<x xmlns:a="${drawing}/main"><a:p><a:r><a:t>3.1</a:t></a:r><a:r><a:t>.2</a:t></a:r></a:p></x>`;
    const { passages, fixed } = await readDocument('a.docx', zipped(parts));
    expect(passages.map(p => [p.text, p.place])).toEqual([
      ['a', 'paragraph 1'],
      ['3.1.1', 'chart'],
      ['3.1.2', 'diagram'],
    ]);
    expect(fixed?.map(f => f.why)).toEqual(['in a chart, which is only read', 'in a diagram, which is only read']);
  });

  it('takes the edition from a property, and knows signed records', async () => {
    const body = paragraph(run('a'));
    expect((await read(body, {}, customProperty('Edition', ' 2018 '))).edition).toBe('2018');
    expect((await read(body, {}, keywords('drains, edition: 2014; spades'))).edition).toBe('2014');
    expect((await read(body, {}, keywords('second edition'))).edition).toBeUndefined();
    expect((await read(body, {}, customProperty('record', 'signed'))).record).toBe('record: signed');
    expect((await read(paragraph(run('Signed:'), run(' A. Person')))).record).toBe('Signed: A. Person');
    const row = (said: string) =>
      `<w:tbl><w:tr>${cell(paragraph(run('Signed:')))}${cell(paragraph(run(said)))}</w:tr></w:tbl>`;
    expect((await read(row('A. Person'))).record).toBe('Signed: A. Person');
    expect((await read(row('________'))).record).toBeUndefined();
    expect((await read(row(''))).record).toBeUndefined();
    const parts = partsOf(docxOf(body));
    parts['_rels/.rels'] = parts['_rels/.rels']!.replace(
      '</Relationships>',
      '<Relationship Id="s" Type="x/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/></Relationships>',
    );
    expect((await readDocument('a.docx', zipped(parts))).record).toBe('a digital signature');
  });

  it('reads other prefixes and strict files as the usual ones', async () => {
    const parts = partsOf(docxOf(paragraph(run('3.1.1'))));
    parts['word/document.xml'] = parts['word/document.xml']!.replace(
      `xmlns:w="${W}"`,
      'xmlns:ns0="http://purl.oclc.org/ooxml/wordprocessingml/main"',
    ).replace(/(<\/?|\s)w:/g, '$1ns0:');
    expect((await readDocument('a.docx', zipped(parts))).passages.map(p => p.text)).toEqual(['3.1.1']);
  });
});

describe('documents written by office programs (the test data of mammoth 1.13.0)', () => {
  const folder = join(dirname(createRequire(import.meta.url).resolve('mammoth/package.json')), 'test', 'test-data');
  const files = readdirSync(folder).filter(name => name.endsWith('.docx'));

  it('are all read, with the words that mammoth finds', async () => {
    expect(files.length).toBeGreaterThan(12);
    const bare = (text: string) => text.replace(/[\s\ufffc]+/g, '');
    for (const name of files) {
      const buffer = readFileSync(join(folder, name));
      const { passages } = await readDocument(name, buffer);
      const body = passages.filter(p => !/^(?:comment|footnote|endnote)/.test(p.place!));
      const { value } = await mammoth.extractRawText({ buffer });
      expect([name, bare(body.map(p => p.text).join(''))]).toEqual([name, bare(value)]);
    }
  });
});
