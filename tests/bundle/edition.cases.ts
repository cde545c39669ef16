import { parse } from 'csv-parse/sync';
import ExcelJS from 'exceljs';
import mammoth from 'mammoth';
import { beforeAll, describe, expect, it } from 'vitest';
import { readBundleTemplates } from '../../src/commands/bundles/bundle-templates.ts';
import { writeBundle } from '../../src/exports/bundle.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { demoPublication } from './publication.ts';

let publication: Publication;
let files: Awaited<ReturnType<typeof writeBundle>>;
const at = (ending: string) => files.get(`edition/edition-2024.${ending}`)!;

beforeAll(async () => {
  publication = await demoPublication();
  files = await writeBundle(publication, await readBundleTemplates(), ['edition']);
}, 120_000);

describe('the published edition as a document, a workbook, a table and data', () => {
  const numbers = () => publication.joint.to.entries.map(e => e.number);

  it('has every item once and in order in all four, as other readers see them', async () => {
    expect((parse(String(at('csv')), { columns: true, bom: true }) as { number: string }[]).map(r => r.number)).toEqual(
      numbers(),
    );
    expect((JSON.parse(String(at('json'))) as { items: { number: string }[] }).items.map(i => i.number)).toEqual(
      numbers(),
    );
    const book = new ExcelJS.Workbook();
    await book.xlsx.load(Buffer.from(at('xlsx') as Uint8Array) as never);
    const column = book.worksheets[0]!.getColumn(1).values.slice(2).map(String);
    expect(column).toEqual(numbers());
    const { value } = await mammoth.convertToHtml({ buffer: Buffer.from(at('docx') as Uint8Array) });
    const headings = [...value.matchAll(/<h[1-6]>(?:<a[^>]*><\/a>)?([\d.]+) /g)].map(m => m[1]);
    expect(headings).toEqual(numbers());
  });

  it('says in the document what each requirement says, when it is verified, and its caution', async () => {
    const { value } = await mammoth.extractRawText({ buffer: Buffer.from(at('docx') as Uint8Array) });
    const cautioned = [...publication.newItems.values()].find(i => i.caution && i.text && i.verified)!;
    for (const part of [cautioned.title, cautioned.text!, `CAUTION  ${cautioned.caution}`])
      expect(value).toContain(part);
    expect(value).toContain('Verified: ');
  });

  it('is the same bytes again', async () => {
    const again = await writeBundle(publication, await readBundleTemplates(), ['edition']);
    for (const [path, content] of files)
      expect(Buffer.from(again.get(path)!).equals(Buffer.from(content)), path).toBe(true);
  });
});
