import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import pptxgen from 'pptxgenjs';
import { describe, expect, it } from 'vitest';
import { changeDocument } from '../../src/documents/change-document.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { partsOf, zipped } from './office-files.ts';

const CATALOG = join(import.meta.dirname, '..', '..', 'catalog', 'course', '4-roofs.pptx');
/** Its types say that the class is the module's `default`; at run time it is what is imported. */
const Deck = pptxgen as unknown as typeof pptxgen.default;
const SLIDE = 'ppt/slides/slide1.xml';

/** The catalog's slides with the first one's shapes replaced by paragraphs of our own. */
function deck(...paragraphs: string[]): Uint8Array {
  const parts = partsOf(readFileSync(CATALOG));
  const shape = `<p:sp><p:nvSpPr><p:cNvPr id="2" name="x"/><p:cNvSpPr/><p:nvPr/></p:nvSpPr><p:spPr/><p:txBody><a:bodyPr/>${paragraphs.join('')}</p:txBody></p:sp>`;
  parts[SLIDE] = parts[SLIDE]!.replace(/<p:sp>.*<\/p:sp>/s, shape);
  return zipped(parts);
}
const paragraph = (...runs: string[]) => `<a:p>${runs.join('')}</a:p>`;
const run = (text: string, look = '') => `<a:r><a:rPr lang="en-GB"${look}/><a:t>${text}</a:t></a:r>`;
const firstSlide = async (bytes: Uint8Array) =>
  (await readDocument('a.pptx', bytes)).passages.filter(p => p.part === SLIDE);

describe('reading slides', () => {
  it.each([
    ['runs are joined', paragraph(run('3.'), run('1', ' b="1"'), run('.1')), ['3.1.1']],
    ['breaks part words', paragraph(run('Part'), '<a:br/>', run('3')), ['Part 3']],
    ['entities are read', paragraph(run('a &amp; &#167;')), ['a & §']],
    ['empty paragraphs are left out', paragraph('<a:endParaRPr/>') + paragraph(run('a')), ['a']],
  ])('%s', async (_, body, expected) => {
    expect((await firstSlide(deck(body))).map(p => p.text)).toEqual(expected);
  });

  it('does not change what PowerPoint fills in', async () => {
    const { fixed } = await readDocument(
      'a.pptx',
      deck(paragraph('<a:fld id="{1}" type="slidenum"><a:t>3</a:t></a:fld>')),
    );
    expect(fixed).toEqual([{ start: 0, end: 1, why: 'in a field that PowerPoint fills in' }]);
  });

  it('reads slides, tables and notes of another program in the order of showing, with words for the place', async () => {
    const made = new Deck();
    const first = made.addSlide();
    first.addText('One 3.1.1', { x: 1, y: 1, w: 5, h: 1 });
    first.addTable([[{ text: 'a 3.1.2' }], [{ text: 'b 3.1.3' }]], { x: 1, y: 2, w: 5 });
    first.addNotes('Say 3.1.4 aloud');
    made.addSlide().addText('Two 3.2.1', { x: 1, y: 1, w: 5, h: 1 });
    const bytes = new Uint8Array((await made.write({ outputType: 'arraybuffer' })) as ArrayBuffer);
    const { passages } = await readDocument('a.pptx', bytes);
    expect(passages.filter(p => /3\./.test(p.text)).map(p => [p.text, p.place])).toEqual([
      ['One 3.1.1', 'slide 1'],
      ['a 3.1.2', 'slide 1, table, row 1'],
      ['b 3.1.3', 'slide 1, table, row 2'],
      ['Say 3.1.4 aloud', 'slide 1, notes'],
      ['Two 3.2.1', 'slide 2'],
    ]);
    const edits = passages.flatMap(p => {
      const at = p.text.indexOf('3.1.4');
      return at < 0 ? [] : [{ start: p.start + at, end: p.start + at + 5, text: '9.9' }];
    });
    const after = (await changeDocument('a.pptx', bytes, { edits, remarks: [] }, { author: 'F' }))!;
    const [old, now] = [partsOf(bytes), partsOf(after)];
    expect(Object.keys(now).filter(name => old[name] !== now[name])).toEqual(['ppt/notesSlides/notesSlide1.xml']);
  });

  it('reads the words of a chart, which cannot be changed', async () => {
    const made = new Deck();
    const data = [{ name: 'Item 3.1.1', labels: ['3.1.2', 'x'], values: [1, 2] }];
    made.addSlide().addChart('bar', data, { x: 1, y: 1, w: 4, h: 3, showTitle: true, title: 'Chart of 3.1.3' });
    const bytes = new Uint8Array((await made.write({ outputType: 'arraybuffer' })) as ArrayBuffer);
    const { passages, fixed } = await readDocument('a.pptx', bytes);
    const drawn = passages.filter(p => p.place === 'slide 1, chart');
    expect(drawn.map(p => p.text)).toEqual(['Chart of 3.1.3', 'Item 3.1.1', '3.1.2', 'x']);
    expect(fixed?.filter(f => f.why === 'in a chart, which is only read')).toHaveLength(4);
  });

  it('takes the title of a slide for its heading', async () => {
    const { passages } = await readDocument('a.pptx', readFileSync(CATALOG));
    expect(new Set(passages.filter(p => p.place?.startsWith('slide 3')).map(p => p.heading))).toEqual(
      new Set(['The flood test']),
    );
  });
});

describe('changing slides', () => {
  const text = 'See 3.1.1 & 3.1.1 to 3.1.3.';

  it('cut into runs anywhere, gives the same text, and runs keep their looks', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.nat(text.length), { maxLength: 9 }), async cuts => {
        const edges = [0, ...cuts.sort((a, b) => a - b), text.length];
        const runs = edges
          .slice(1)
          .map((end, n) => run(text.slice(edges[n], end).replace('&', '&amp;'), ` sz="${n}00"`));
        const bytes = deck(paragraph(...runs));
        const [passage] = await firstSlide(bytes);
        expect(passage!.text).toBe(text);
        const edits = [...text.matchAll(/3\.1\.1/g)].map(m => ({
          start: passage!.start + m.index,
          end: passage!.start + m.index + 5,
          text: '9<9',
        }));
        const after = (await changeDocument('a.pptx', bytes, { edits, remarks: [] }, { author: 'F' }))!;
        expect((await firstSlide(after)).map(p => p.text)).toEqual([text.replaceAll('3.1.1', '9<9')]);
        const looks = (part: string) => part.replace(/<a:t>[^<]*<\/a:t>/g, '<a:t/>');
        expect(looks(partsOf(after)[SLIDE]!)).toBe(looks(partsOf(bytes)[SLIDE]!).replaceAll('<a:t></a:t>', '<a:t/>'));
      }),
      { numRuns: 25 },
    );
  });

  it('without edits gives the very bytes', async () => {
    const bytes = deck(paragraph(run('3.1.1')));
    expect(await changeDocument('a.pptx', bytes, { edits: [], remarks: [] }, { author: 'F' })).toBe(bytes);
  });
});
