import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as word from 'docx';
import pptxgen from 'pptxgenjs';
import { afterAll, describe, expect, it } from 'vitest';
import { readDocument } from '../../src/documents/read-document.ts';
import { docxOf, paragraph, run } from './office-files.ts';

const Deck = pptxgen as unknown as typeof pptxgen.default;
const hasOffice = spawnSync('soffice', ['--version']).status === 0;
if (!hasOffice) process.stderr.write('Not checked: heads of tables that LibreOffice wrote. It is not installed.\n');

/** Each number of a document with the head of its column. */
async function heads(name: string, file: Uint8Array | string): Promise<Record<string, string>> {
  const bytes = typeof file === 'string' ? new TextEncoder().encode(file) : file;
  const { passages } = await readDocument(name, bytes);
  const numbers = passages.map(p => ({ ...p, text: p.text.replace(/\u00ad/g, '').trim() }));
  return Object.fromEntries(
    numbers.filter(p => /^\d(?:\.\d)+$/.test(p.text)).map(p => [p.text, p.columnHead ?? 'none']),
  );
}

const MERGED = `<table><thead><tr><th colspan=2>Edition 2014</th><th colspan=2>Edition 2018</th></tr>
<tr><th>no.</th><th>what</th><th>no.</th><th>what</th></tr></thead><tbody>
<tr><td>2.1.1</td><td>Base</td><td><p>3.1.1</p></td><td>Base</td></tr>
<tr><td rowspan=2>2.1.2</td><td>Lid</td><td>3.1.2</td><td>Lid</td></tr>
<tr><td>Tap</td><td>3.1.3</td><td>Tap</td></tr></tbody></table>`;
const OF_MERGED = {
  '2.1.1': 'Edition 2014 no.',
  '3.1.1': 'Edition 2018 no.',
  '2.1.2': 'Edition 2014 no.',
  '3.1.2': 'Edition 2018 no.',
  '3.1.3': 'Edition 2018 no.',
};

describe('the head of a column', () => {
  it.each([
    ['a head of two rows, with merged cells above and below it', MERGED, OF_MERGED],
    [
      'a first row of plain cells',
      '<table><tr><td>old no.<td><b>new</b> no.<tr><td>1.1<td>1.2</table>',
      { '1.1': 'old no.', '1.2': 'new no.' },
    ],
    ['no first row that holds data', '<table><tr><td>1.1<td>2014 only<tr><td>1.2<td>1.3</table>', 'none'],
    ['no first row that holds text', `<table><tr><td>${'In 2014 it was so. '.repeat(9)}<tr><td>1.1</table>`, 'none'],
    ['nothing where the table has one row', '<table><tr><td>2014<td>a</table><p>1.1</p>', 'none'],
    [
      'a line over the whole table where nothing else is said',
      '<table><tr><td colspan=2>Edition 2014<tr><td>1.1<td>1.2</table>',
      'Edition 2014',
    ],
    [
      'the row below such a line where it says more',
      '<table><tr><th colspan=2>All changes<tr><th>2014<th>2018<tr><td>1.1<td>1.2</table>',
      { '1.1': '2014', '1.2': '2018' },
    ],
    [
      'both heads where a cell lies over two columns',
      '<table><tr><th>2014<th>2018<tr><td>1.1<td>1.2<tr><td colspan=2>1.3</table>',
      { '1.1': '2014', '1.2': '2018', '1.3': 'none' },
    ],
    [
      'of a table within a table its own',
      '<table><tr><th>2014<th>2018<tr><td>1.1<td><table><tr><th>2024<tr><td>1.2</table></table>',
      { '1.1': '2014', '1.2': '2024' },
    ],
  ])('is in html %s', async (_, html, wanted) => {
    const found = await heads('a.html', html);
    expect(found).toEqual(
      typeof wanted === 'string' ? Object.fromEntries(Object.keys(found).map(n => [n, wanted])) : wanted,
    );
    expect(Object.keys(found).length).toBeGreaterThan(0);
  });

  it('costs no more for a table of absurd spans', async () => {
    const row = `<tr>${'<td colspan=1000 rowspan=60000>1.1'.repeat(200)}`;
    expect(await heads('a.html', `<table>${row.repeat(8)}</table>`)).toEqual({ '1.1': 'none' });
  });

  it('is in Word the first row, or the rows that are repeated, merged cells opened', async () => {
    const cell = (text: string, more: Partial<word.ITableCellOptions> = {}) =>
      new word.TableCell({ children: [new word.Paragraph(text)], ...more });
    const row = (cells: word.TableCell[], tableHeader = false) => new word.TableRow({ children: cells, tableHeader });
    const merged = new word.Table({
      rows: [
        row([cell('Edition 2014', { columnSpan: 2 }), cell('Edition 2018', { columnSpan: 2 })], true),
        row(['no.', 'what', 'no.', 'what'].map(t => cell(t)), true), // biome-ignore format: one row, one line
        row(['2.1.1', 'Base', '3.1.1', 'Base'].map(t => cell(t))),
        row([cell('2.1.2', { rowSpan: 2 }), cell('Lid'), cell('3.1.2'), cell('Lid')]),
        row([cell('Tap'), cell('3.1.3'), cell('Tap')]),
      ],
    });
    const plain = new word.Table({ rows: [row([cell('2014'), cell('2018')]), row([cell('4.1'), cell('4.2')])] });
    const inCell = new word.Table({ rows: [row([cell('x')]), row([new word.TableCell({ children: [plain] })])] });
    const file = new word.Document({ sections: [{ children: [merged, new word.Paragraph('5.1'), inCell] }] });
    const found = await heads('a.docx', await word.Packer.toBuffer(file));
    expect(found).toEqual({ ...OF_MERGED, '5.1': 'none', '4.1': '2014', '4.2': '2018' });
  });

  it('is in Word read through controls, and not from a row that is marked as deleted', async () => {
    const cells = (...texts: string[]) => texts.map(t => `<w:tc>${paragraph(run(t))}</w:tc>`).join('');
    const rows = [
      `<w:tr><w:trPr><w:del w:id="1" w:author="a"/></w:trPr>${cells('2024', '2024')}</w:tr>`,
      `<w:tr>${cells('2014')}<w:sdt><w:sdtContent>${cells('2018')}</w:sdtContent></w:sdt></w:tr>`,
      `<w:sdt><w:sdtContent><w:tr><w:trPr><w:gridBefore w:val="1"/></w:trPr>${cells('1.2')}</w:tr></w:sdtContent></w:sdt>`,
      `<w:tr><w:tc><w:tcPr><w:hMerge w:val="restart"/></w:tcPr>${paragraph(run('1.3'))}</w:tc><w:tc><w:tcPr><w:hMerge/></w:tcPr><w:p/></w:tc></w:tr>`,
    ];
    const found = await heads('a.docx', docxOf(`<w:tbl>${rows.join('')}</w:tbl>`));
    expect(found).toEqual({ '1.2': '2018', '1.3': 'none' });
  });

  it('is in slides the first row, merged cells opened', async () => {
    expect(await heads('a.pptx', await deck())).toEqual(OF_MERGED);
  });
});

async function deck(): Promise<Uint8Array> {
  const slides = new Deck();
  const cells = (texts: readonly string[]) => texts.map(text => ({ text }));
  slides.addSlide().addTable([
    [
      { text: 'Edition 2014', options: { colspan: 2 } },
      { text: 'Edition 2018', options: { colspan: 2 } },
    ],
    cells(['no.', 'what', 'no.', 'what']),
    cells(['2.1.1', 'Base', '3.1.1', 'Base']),
    [{ text: '2.1.2', options: { rowspan: 2 } }, ...cells(['Lid', '3.1.2', 'Lid'])],
    cells(['Tap', '3.1.3', 'Tap']),
  ]);
  return (await slides.write({ outputType: 'nodebuffer' })) as Buffer;
}

describe.skipIf(!hasOffice)('the head of a column in files that LibreOffice wrote', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-heads-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const office = (file: string, to: string, ...more: string[]) => {
    const profile = `-env:UserInstallation=file://${folder}/profile`;
    const args = [profile, '--headless', ...more, '--convert-to', to, '--outdir', join(folder, 'made')];
    spawnSync('soffice', [...args, join(folder, file)]);
    return readFileSync(join(folder, 'made', `${file.split('.')[0]}.${to}`));
  };

  it('is the same', async () => {
    writeFileSync(join(folder, 'page.html'), `<html><body>${MERGED}</body></html>`);
    writeFileSync(join(folder, 'deck.pptx'), await deck());
    expect(await heads('a.docx', office('page.html', 'docx', '--infilter=HTML (StarWriter)'))).toEqual(OF_MERGED);
    expect(await heads('a.pptx', office('deck.pptx', 'pptx'))).toEqual(OF_MERGED);
  }, 60_000);
});
