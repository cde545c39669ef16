import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DOMParser, type Element, type Node } from '@xmldom/xmldom';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changeDocument } from '../../src/documents/change-document.ts';
import { readDocument } from '../../src/documents/read-document.ts';
import { partsOf } from './office-files.ts';

const CATALOG = join(import.meta.dirname, '..', '..', 'catalog', 'course');
const hasOffice = spawnSync('soffice', ['--version']).status === 0 && spawnSync('pdftotext', ['-v']).status === 0;
if (!hasOffice)
  process.stderr.write('Not checked: what LibreOffice shows of changed documents. It is not installed.\n');

/** Numbers such as 3.1.1 and 6.1.1.2. */
const CITED = /(?<![\d.])\d\.1\.1(?:\.\d)?\b/g;

/** Every citation of the form 3.1.1 becomes 9.9, every 3.1.3 gets a remark. */
async function changed(name: string, bytes: Uint8Array): Promise<Uint8Array> {
  const { passages, fixed } = await readDocument(name, bytes);
  const found = (wanted: RegExp) =>
    passages.flatMap(p =>
      [...p.text.replace(/\u00ad/g, ' ').matchAll(wanted)].map(m => ({
        start: p.start + m.index,
        end: p.start + m.index + m[0].length,
      })),
    );
  const isFree = (s: { start: number; end: number }) => !fixed?.some(f => f.start < s.end && f.end > s.start);
  const edits = found(CITED)
    .filter(isFree)
    .map(s => ({ ...s, text: '9.9' }));
  const remarks = found(/\b3\.1\.3\b/g).map(s => ({ ...s, paragraphs: ['To be decided: which of the two?'] }));
  expect(edits.length).toBeGreaterThan(0);
  return (await changeDocument(
    name,
    bytes,
    { edits, remarks },
    { author: 'Fishplate', date: '2024-03-01T00:00:00Z' },
  ))!;
}

describe.skipIf(!hasOffice)('LibreOffice', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-office-'));
  const office = (to: string, ...files: string[]) => {
    const args = [
      `-env:UserInstallation=file://${folder}/profile`,
      '--headless',
      '--convert-to',
      to,
      '--outdir',
      folder,
    ];
    const { status, stderr } = spawnSync('soffice', [...args, ...files.map(f => join(folder, f))], {
      encoding: 'utf8',
    });
    if (status !== 0) throw new Error(`soffice: ${stderr}`);
  };
  const pages = (file: string) =>
    spawnSync('pdftotext', ['-layout', join(folder, file), '-'], { encoding: 'utf8' }).stdout.replace(/\s+/g, ' ');
  let made: Buffer;

  beforeAll(async () => {
    copyFileSync(join(import.meta.dirname, 'made', 'lesson.fodt'), join(folder, 'lesson.fodt'));
    office('docx', 'lesson.fodt');
    made = readFileSync(join(folder, 'lesson.docx'));
    writeFileSync(join(folder, 'a.docx'), await changed('a.docx', made));
    for (const [from, to] of [
      ['4-roofs.pptx', 'b.pptx'],
      ['2-infiltration.html', 'c.html'],
      ['3-paving.docx', 'd.docx'],
    ] as const) {
      writeFileSync(join(folder, to), await changed(to, readFileSync(join(CATALOG, from))));
    }
    office('pdf', 'b.pptx', 'c.html', 'd.docx');
    office('fodt', 'a.docx');
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('writes documents that are read with every place in it', async () => {
    const { passages } = await readDocument('lesson.docx', made);
    const cited = passages.filter(p => p.text.includes('3.1.'));
    expect(cited.map(p => [p.text.trim().replaceAll('\ufffc', ''), p.place])).toEqual([
      ['See 3.1.1 and 3.1.1, page 1.', 'under “Bedding”, paragraph 1'],
      ['Item 3.1.1 of a list', 'under “Bedding”, paragraph 2'],
      ['Cell 3.1.1', 'table 1, row 1'],
      ['choose 3.1.3', 'table 1, row 1'],
      ['Boxed 3.1.1', 'text box 1'],
      ['Note on 3.1.1.', 'footnote 1'],
      ['Header 3.1.1', 'header'],
    ]);
  });

  it('shows our changes as tracked ones: all accepted it reads as carried, all rejected as before', () => {
    const fodt = readFileSync(join(folder, 'a.fodt'), 'utf8');
    const before = ['See 3.1.1 and 3.1.1', 'Item 3.1.1 of a list', 'Cell 3.1.1', 'Boxed 3.1.1', 'Note on 3.1.1.'];
    const rejected = readingOf(fodt, 'rejected');
    const accepted = readingOf(fodt, 'accepted');
    for (const text of before) {
      expect(rejected).toContain(text);
      expect(accepted).toContain(text.replaceAll('3.1.1', '9.9'));
    }
    expect(fodt).toContain('<dc:creator>Fishplate</dc:creator>');
  });

  it('shows our comment where a person has to choose', () => {
    expect(readFileSync(join(folder, 'a.fodt'), 'utf8')).toMatch(
      /<text:p[^>]*>choose <office:annotation [^>]*>(?:(?!<\/office:annotation>)[\s\S])*To be decided: which of the two\?(?:(?!<\/office:annotation>)[\s\S])*<\/office:annotation>3\.1\.3<office:annotation-end/,
    );
  });

  it('shows slides and pages with the new numbers, and with all other words as they were', async () => {
    const counted = (text: string) => {
      const words = text.replace(/\u00ad/g, '').match(/[\p{L}\p{N}.]+/gu) ?? [];
      return Object.fromEntries([...new Set(words)].sort().map(w => [w, words.filter(other => other === w).length]));
    };
    for (const [pdf, source] of [
      ['b.pdf', '4-roofs.pptx'],
      ['c.pdf', '2-infiltration.html'],
    ] as const) {
      const { passages } = await readDocument(source, readFileSync(join(CATALOG, source)));
      // LibreOffice cuts the heading that stands first on this page, with our changes or without.
      const shown = passages
        .filter(p => !p.place?.endsWith('notes'))
        .filter(p => p.line > 15 || source.endsWith('pptx'));
      const wanted = shown.map(p => p.text.replace(/\u00ad/g, '').replace(CITED, '9.9'));
      expect(counted(wanted.join(' '))['9.9']).toBeGreaterThan(1);
      expect(counted(pages(pdf).replace(/^.*?(?=All numbers are)/, ''))).toEqual(counted(wanted.join(' ')));
    }
    expect(pages('d.pdf')).toContain('5.1.1.1');
  });

  it('makes PDFs of which the words are read page by page, as another program reads them', async () => {
    const { passages } = await readDocument('b.pdf', readFileSync(join(folder, 'b.pdf')));
    expect(new Set(passages.map(p => p.place)).size).toBe(8);
    const bare = (text: string) => [...text.replace(/\s/g, '')].sort().join('');
    expect(bare(passages.map(p => p.text).join(''))).toBe(bare(pages('b.pdf')));
  });
});

/** The text of a flat OpenDocument file, with its tracked changes accepted or rejected. */
function readingOf(fodt: string, changes: 'accepted' | 'rejected'): string {
  const document = new DOMParser().parseFromString(fodt, 'text/xml');
  const gone = changes === 'accepted' ? 'text:deletion' : 'text:insertion';
  const regions = [...document.getElementsByTagName('text:changed-region')];
  const hidden = new Set(regions.filter(r => elements(r)[0]!.nodeName === gone).map(r => r.getAttribute('xml:id')));
  expect(hidden.size).toBeGreaterThan(4);
  let inside = 0;
  const read = (node: Node): string => {
    if (node.nodeType === 3) return inside > 0 ? '' : (node.nodeValue ?? '');
    if (['text:tracked-changes', 'office:annotation'].includes(node.nodeName)) return '';
    const isHidden = node.nodeType === 1 && hidden.has((node as Element).getAttribute('text:change-id'));
    if (node.nodeName === 'text:change-start' && isHidden) inside++;
    if (node.nodeName === 'text:change-end' && isHidden) inside--;
    return nodes(node).map(read).join('');
  };
  return read(document.getElementsByTagName('office:body')[0]!);
}

function nodes(node: Node): Node[] {
  const found: Node[] = [];
  for (let at = node.firstChild; at; at = at.nextSibling) found.push(at);
  return found;
}

function elements(node: Node): Element[] {
  return nodes(node).filter(n => n.nodeType === 1) as Element[];
}

it('the changed parts of LibreOffice documents are those that hold a citation, and no other', async () => {
  const bytes = readFileSync(join(CATALOG, '3-paving.docx'));
  const [before, after] = [partsOf(bytes), partsOf(await changed('a.docx', bytes))];
  expect(Object.keys(before).filter(name => before[name] !== after[name])).toEqual(['word/document.xml']);
});
