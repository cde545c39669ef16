import fc from 'fast-check';
import mammoth from 'mammoth';
import { describe, expect, it } from 'vitest';
import { changeDocument } from '../../src/documents/change-document.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import type { Edit, Remark } from '../../src/model/document.ts';
import { docxOf, paragraph, partsOf, run, type Stories, textsOf, zipped } from './office-files.ts';

const stamp = { author: 'Fishplate', date: '2024-03-01T00:00:00Z' };

/** Where a text stands in a document's reading, each time. */
async function placesOf(bytes: Uint8Array, wanted: RegExp): Promise<{ start: number; end: number; text: string }[]> {
  const { passages } = await readDocument('a.docx', bytes);
  return passages.flatMap(p =>
    [...p.text.matchAll(wanted)].map(m => ({
      start: p.start + m.index,
      end: p.start + m.index + m[0].length,
      text: m[0],
    })),
  );
}

async function carried(body: string, stories: Stories = {}, wanted = /3[.\u00ad]+1[.\u00ad]+1/g) {
  const before = docxOf(body, stories);
  const edits: Edit[] = (await placesOf(before, wanted)).map(({ start, end }) => ({ start, end, text: '3.1.2' }));
  const after = (await changeDocument('a.docx', before, { edits, remarks: [] }, stamp))!;
  return { before: partsOf(before), after: partsOf(after), bytes: after };
}

async function remarked(bytes: Uint8Array, wanted: RegExp, paragraphs = ['3.1.1, choose: a & <b>', 'To do: c']) {
  const remarks: Remark[] = (await placesOf(bytes, wanted)).map(({ start, end }) => ({ start, end, paragraphs }));
  return partsOf((await changeDocument('a.docx', bytes, { edits: [], remarks }, stamp))!);
}

const DOC = 'word/document.xml';

describe('changing a Word document', () => {
  it.each([
    ['in the middle of a run', [run('See 3.1.1.')], ['See 3.1.2.']],
    ['a whole run', [run('3.1.1', '<w:b/>')], ['3.1.2']],
    [
      'over runs that are split anywhere',
      [run('See 3'), run('.', '<w:i/>'), run('1.'), run('1, ok')],
      ['See 3.1.2, ok'],
    ],
    ['over a hidden mark', ['<w:r><w:t>3.1</w:t><w:softHyphen/><w:t>.1</w:t></w:r>'], ['3.1.2']],
    ['in a link', [`<w:hyperlink w:anchor="x">${run('go to 3.1.1')}</w:hyperlink>`], ['go to 3.1.2']],
    ['from text into a link', [run('3.1'), `<w:hyperlink w:anchor="x">${run('.1 x')}</w:hyperlink>`], ['3.1.2 x']],
    ['twice in one run', [run('3.1.1 and 3.1.1')], ['3.1.2 and 3.1.2']],
    ['beside a tab', ['<w:r><w:t>a</w:t><w:tab/><w:t>3.1.1</w:t><w:tab/></w:r>'], ['a\t3.1.2\t']],
  ])('%s: accepted it reads as carried, rejected as before', async (_, runs, expected) => {
    const { before, after, bytes } = await carried(paragraph(...runs));
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(expected);
    expect(textsOf(after[DOC]!, 'rejected')).toEqual(textsOf(before[DOC]!, 'accepted'));
    const { value } = await mammoth.extractRawText({ buffer: Buffer.from(bytes) });
    expect(value.trim()).toBe(expected[0]!.trim());
  });

  it('writes a change as Word does, and keeps the look of the number', async () => {
    const { after } = await carried(paragraph(run('See 3.1', '<w:b/>'), run('.1.')));
    const body = /<w:p>.*<\/w:p>/.exec(after[DOC]!)![0];
    expect(body.replaceAll('><', '>\n<')).toMatchInlineSnapshot(`
      "<w:p>
      <w:r w:rsidR="00AB12CD">
      <w:rPr>
      <w:b/>
      </w:rPr>
      <w:t xml:space="preserve">See </w:t>
      </w:r>
      <w:del w:id="1" w:author="Fishplate" w:date="2024-03-01T00:00:00Z">
      <w:r w:rsidR="00AB12CD">
      <w:rPr>
      <w:b/>
      </w:rPr>
      <w:delText xml:space="preserve">3.1</w:delText>
      </w:r>
      </w:del>
      <w:del w:id="3" w:author="Fishplate" w:date="2024-03-01T00:00:00Z">
      <w:r w:rsidR="00AB12CD">
      <w:delText xml:space="preserve">.1</w:delText>
      </w:r>
      </w:del>
      <w:ins w:id="2" w:author="Fishplate" w:date="2024-03-01T00:00:00Z">
      <w:r>
      <w:rPr>
      <w:b/>
      </w:rPr>
      <w:t xml:space="preserve">3.1.2</w:t>
      </w:r>
      </w:ins>
      <w:r w:rsidR="00AB12CD">
      <w:t xml:space="preserve">.</w:t>
      </w:r>
      </w:p>"
    `);
  });

  it('leaves every other byte as it was: parts, runs, and what stands between them', async () => {
    const untouched = `<w:p w:rsidR="1"><!-- kept --><w:r ><w:t>a&#160;&quot;b&quot;</w:t></w:r></w:p>`;
    const { before, after } = await carried(
      `${untouched}\n${paragraph(run('x'), run('3.1.1'), run('y'))}${untouched}`,
      {
        header: paragraph(run('h')),
        styles: '<w:style w:styleId="x"/>',
      },
    );
    expect(Object.keys(after)).toEqual(Object.keys(before));
    for (const name of Object.keys(before)) if (name !== DOC) expect([name, after[name]]).toEqual([name, before[name]]);
    const [head, tail] = before[DOC]!.split(run('3.1.1')) as [string, string];
    expect(after[DOC]!.startsWith(head)).toBe(true);
    expect(after[DOC]!.endsWith(tail)).toBe(true);
  });

  it('keeps together, byte for byte, what stands in one run beside the number', async () => {
    const beside = '<w:t>a&#160;b</w:t><w:tab/><w:t >c</w:t>';
    const { after } = await carried(paragraph(`<w:r>${beside}<w:t>3.1.1</w:t></w:r>`));
    expect(after[DOC]).toContain(`<w:p><w:r>${beside}</w:r><w:del `);
  });

  it('without edits and remarks gives the very bytes', async () => {
    const bytes = docxOf(paragraph(run('3.1.1')));
    expect(await changeDocument('a.docx', bytes, { edits: [], remarks: [] }, stamp)).toBe(bytes);
  });

  it('of the same input makes the same bytes, and without a date none is written', async () => {
    const bytes = docxOf(paragraph(run('3.1.1')));
    const change = { edits: [{ start: 0, end: 5, text: '4' }], remarks: [] };
    const [a, b] = await Promise.all([1, 2].map(() => changeDocument('a.docx', bytes, change, { author: 'F' })));
    expect(a).toEqual(b);
    expect(partsOf(a!)[DOC]).not.toContain('w:date');
  });

  it("puts its change beside another person's insertion, which stays theirs", async () => {
    const theirs = `<w:ins w:id="8" w:author="A" w:date="2020-01-01T00:00:00Z">${run('new 3.1.1 text')}</w:ins>`;
    const { after } = await carried(paragraph(run('a '), theirs));
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(['a new 3.1.2 text']);
    expect(textsOf(after[DOC]!, 'rejected')).toEqual(['a ']);
    expect(after[DOC]).not.toMatch(/<w:ins [^>]*>(?:(?!<\/w:ins>).)*<w:ins /);
    const ids = [...after[DOC]!.matchAll(/w:id="(\d+)"/g)].map(m => m[1]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('changes notes, headers, footers and text boxes as well, and both forms of a text box', async () => {
    const inside = `<w:txbxContent>${paragraph(run('box 3.1.1'))}</w:txbxContent>`;
    const box = `<w:r><mc:AlternateContent><mc:Choice Requires="wps"><w:drawing>${inside}</w:drawing></mc:Choice><mc:Fallback><w:pict>${inside}</w:pict></mc:Fallback></mc:AlternateContent></w:r>`;
    const { after } = await carried(paragraph(run('a'), box, '<w:r><w:footnoteReference w:id="2"/></w:r>'), {
      footnotes: `<w:footnote w:id="2">${paragraph(run('f 3.1.1'))}</w:footnote>`,
      header: paragraph(run('h 3.1.1')),
      footer: paragraph(run('g 3.1.1')),
    });
    expect(after[DOC]!.match(/3\.1\.2/g)).toHaveLength(2);
    for (const [part, letter] of [
      ['footnotes', 'f'],
      ['header', 'h'],
      ['footer', 'g'],
    ]) {
      expect(textsOf(after[`word/${part}.xml`]!, 'accepted')).toEqual([`${letter} 3.1.2`]);
    }
  });
});

describe('comments', () => {
  it('stand at the citation and say what is to be decided', async () => {
    const after = await remarked(docxOf(paragraph(run('See 3.1'), run('.1 now'))), /3\.1\.1/g);
    expect(after['word/comments.xml']).toMatchInlineSnapshot(`
      "<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
      <w:comments xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:comment w:id="1" w:author="Fishplate" w:date="2024-03-01T00:00:00Z" w:initials="F"><w:p><w:r><w:t xml:space="preserve">3.1.1, choose: a &amp; &lt;b&gt;</w:t></w:r></w:p><w:p><w:r><w:t xml:space="preserve">To do: c</w:t></w:r></w:p></w:comment></w:comments>"
    `);
    expect(after[DOC]).toMatch(
      /See <\/w:t><\/w:r><w:commentRangeStart w:id="1"\/>.*3\.1<.*\.1<.*<w:commentRangeEnd w:id="1"\/><w:r><w:commentReference w:id="1"\/><\/w:r><w:r [^>]*><w:t [^>]*> now/,
    );
    expect(textsOf(after[DOC]!, 'accepted')).toEqual(['See 3.1.1 now']);
    expect(after['[Content_Types].xml']!.match(/comments\+xml/g)).toHaveLength(1);
    expect(after['word/_rels/document.xml.rels']).toContain('relationships/comments" Target="/word/comments.xml"');
  });

  it('get a relation of their own, whatever the others are called', async () => {
    const parts = partsOf(docxOf(paragraph(run('3.1.1'))));
    const relations = 'word/_rels/document.xml.rels';
    parts[relations] = parts[relations]!.replace('Id="rIdX"', 'Id="rIdFishplate1"');
    const after = await remarked(zipped(parts), /3\.1\.1/g);
    expect([...after[relations]!.matchAll(/ Id="([^"]*)"/g)].map(m => m[1])).toEqual([
      'rIdFishplate1',
      'rIdFishplate2',
    ]);
  });

  it('come into a document that has no relations yet, and get numbers that no empty comment has', async () => {
    const parts = partsOf(docxOf(paragraph(run('3.1.1'))));
    delete parts['word/_rels/document.xml.rels'];
    const after = await remarked(zipped(parts), /3\.1\.1/g);
    expect(after['word/_rels/document.xml.rels']).toMatch(
      /<Relationships [^>]*><Relationship Id="rIdFishplate1" [^>]*\/><\/Relationships>$/,
    );
    const empty = docxOf(paragraph(run('3.1.1')), { comments: '<w:comment w:id="1"><w:p/></w:comment>' });
    expect((await remarked(empty, /3\.1\.1/g))['word/comments.xml']).toContain('<w:comment w:id="2" ');
  });

  it('join those that are there', async () => {
    const theirs = `<w:comment w:id="4" w:author="A">${paragraph(run('theirs'))}</w:comment>`;
    const before = docxOf(paragraph(run('3.1.1')), { comments: theirs });
    const after = await remarked(before, /3\.1\.1/g);
    expect(after['word/comments.xml']!.indexOf(theirs)).toBeGreaterThan(0);
    expect([...after['word/comments.xml']!.matchAll(/w:comment w:id="(\d+)"/g)].map(m => m[1])).toEqual(['4', '5']);
    for (const part of ['[Content_Types].xml', 'word/_rels/document.xml.rels'])
      expect(after[part]).toBe(partsOf(before)[part]);
    const { value } = await mammoth.convertToHtml(
      { buffer: Buffer.from(zipped(after)) },
      { styleMap: ['comment-reference => sup'] },
    );
    expect(value).toContain('To do: c');
  });

  it('about notes, boxes and headers stand in the body, and say what they are about', async () => {
    const box = `<w:r><w:pict><w:txbxContent>${paragraph(run('3.1.1'))}</w:txbxContent></w:pict></w:r>`;
    const before = docxOf(
      paragraph(run('first')) + paragraph(run('a'), box, run('b'), '<w:r><w:footnoteReference w:id="2"/></w:r>'),
      {
        footnotes: `<w:footnote w:id="2">${paragraph(run('3.1.1'))}</w:footnote>`,
        header: paragraph(run('3.1.1')),
        comments: `<w:comment w:id="0">${paragraph(run('3.1.1'))}</w:comment>`,
      },
    );
    const after = await remarked(before, /3\.1\.1/g, ['x']);
    const about = [...after['word/comments.xml']!.matchAll(/About the [^<]*/g)].map(m => m[0]);
    expect(about).toEqual(['About the text box 1:', 'About the footnote 1:', 'About the header:']);
    for (const part of ['word/footnotes.xml', 'word/header.xml']) expect(after[part]).toBe(partsOf(before)[part]);
    expect(after[DOC]).toMatch(/<w:commentRangeStart w:id="\d+"\/><w:r [^>]*><w:t [^>]*>first/);
    expect(after[DOC]).toMatch(/<w:commentRangeStart w:id="\d+"\/><w:r><w:pict>/);
    expect(after[DOC]).toMatch(/<w:commentRangeStart w:id="\d+"\/><w:r><w:footnoteReference/);
  });
});

describe('a paragraph cut into runs anywhere', () => {
  const text = 'See 3.1.1, items 3.1.1 to 3.1.3, and “3.1.1 Base” & more.';
  const cuts = fc.array(fc.nat(text.length), { maxLength: 14 });
  const extras = fc.constantFrom('', '<w:b/>', '<w:rFonts w:hint="eastAsia"/><w:lang w:val="en-GB"/>');
  const between = fc.constantFrom(
    '',
    '<w:proofErr w:type="gramEnd"/>',
    '<w:bookmarkStart w:id="77" w:name="x"/>',
    '<w:r><w:lastRenderedPageBreak/></w:r>',
  );

  it('reads the same and, changed, accepts and rejects the same', async () => {
    await fc.assert(
      fc.asyncProperty(cuts, fc.array(extras, { minLength: 16, maxLength: 16 }), between, async (at, looks, mark) => {
        const edges = [0, ...[...at].sort((a, b) => a - b), text.length];
        const runs = edges
          .slice(1)
          .map((end, n) => run(text.slice(edges[n], end).replace('&', '&amp;'), looks[n]) + mark);
        const before = docxOf(paragraph(...runs));
        expect((await readDocument('a.docx', before)).passages.map(p => p.text)).toEqual([text]);
        const edits = (await placesOf(before, /3\.1\.1/g)).map(({ start, end }) => ({ start, end, text: '9.9' }));
        const remarks = (await placesOf(before, /3\.1\.\d to 3\.1\.3/g)).map(p => ({ ...p, paragraphs: ['x'] }));
        const after = partsOf((await changeDocument('a.docx', before, { edits, remarks }, stamp))!);
        expect(textsOf(after[DOC]!, 'accepted')).toEqual([text.replaceAll('3.1.1', '9.9')]);
        expect(textsOf(after[DOC]!, 'rejected')).toEqual([text]);
        expect(after[DOC]!.match(/9\.9/g)).toHaveLength(3);
      }),
      { numRuns: 60 },
    );
  });
});
