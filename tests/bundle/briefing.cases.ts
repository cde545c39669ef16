import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import mammoth from 'mammoth';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBundleTemplates } from '../../src/commands/bundles/bundle-templates.ts';
import { type Briefing, briefing } from '../../src/exports/briefing.ts';
import { writeBundle } from '../../src/exports/bundle.ts';
import type { Publication } from '../../src/exports/publication.ts';
import { workedExamples } from '../../src/exports/worked-examples.ts';
import { openZip } from '../../src/office/open-zip.ts';
import { chromiumPath, openBrowser } from '../web/viewer.ts';
import { demoPublication } from './publication.ts';

const folder = mkdtempSync(join(tmpdir(), 'fishplate-briefing-'));
const office = spawnSync('soffice', ['--version']).status === 0;
let publication: Publication;
let said: Briefing;
let files: Awaited<ReturnType<typeof writeBundle>>;
const bytes = (path: string) => Buffer.from(files.get(path) as Uint8Array);

beforeAll(async () => {
  publication = await demoPublication();
  said = briefing(publication);
  files = await writeBundle(publication, await readBundleTemplates(), ['briefing']);
  mkdirSync(join(folder, 'briefing'));
  for (const [path, content] of files) writeFileSync(join(folder, path), content);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the briefing', () => {
  it('counts what the statistics count', () => {
    const { whole } = publication.statistics;
    const n = said.slides[0]!.bars!.bars.map(b => b.n);
    expect(n.reduce((a, b) => a + b, 0)).toBe(whole.old + whole.new);
    const why = said.slides.find(s => s.title.startsWith('How it was done'))!;
    expect(why.bars!.bars.reduce((sum, b) => sum + b.n, 0)).toBe(whole.fates.withdrawn);
  });

  it('shows one real row of each kind of change, with texts as they stand in both editions', () => {
    const examples = workedExamples(publication);
    expect(examples.map(e => e.kind)).toEqual([
      'renumbered, the same words',
      'stricter',
      'relaxed',
      'merged',
      'split',
      'recombined',
      'withdrawn',
      'new',
    ]);
    const texts = (items: Publication['oldItems']) => [...items.values()].map(i => `${i.number} ${i.text}`);
    const [olds, news] = [texts(publication.oldItems), texts(publication.newItems)];
    for (const { before, after, kind } of examples) {
      for (const s of before) expect(olds, kind).toContain(`${s.number} ${s.text}`);
      for (const s of after) expect(news, kind).toContain(`${s.number} ${s.text}`);
    }
  });

  it('is the same bytes again, whatever the clock says', async () => {
    await new Promise(done => setTimeout(done, 2_100));
    const again = await writeBundle(publication, await readBundleTemplates(), ['briefing']);
    for (const [path, content] of files)
      expect(Buffer.from(again.get(path)!).equals(Buffer.from(content)), path).toBe(true);
  });

  it('tells the speaker what to say on each slide, and says the same in the handout', async () => {
    const parts = [...openZip(bytes('briefing/slides.pptx'), 'slides.pptx')];
    const notes = parts.filter(([name]) => /notesSlides\/notesSlide\d+\.xml$/.test(name));
    expect(notes).toHaveLength(said.slides.length + 1);
    const text = notes.map(([, part]) => new TextDecoder().decode(part)).join('');
    expect(text).toContain('These are the reasons that the lineage records, counted.');
    const { value } = await mammoth.extractRawText({ buffer: bytes('briefing/handout.docx') });
    for (const slide of said.slides) expect(value).toContain(slide.lead);
  });

  it.skipIf(!office)(
    'opens in LibreOffice, a page a slide',
    () => {
      const args = [
        '--headless',
        `-env:UserInstallation=file://${folder}/profile`,
        '--convert-to',
        'pdf',
        '--outdir',
        folder,
      ];
      spawnSync('soffice', [...args, 'briefing/slides.pptx', 'briefing/handout.docx'], { cwd: folder });
      const pages = (name: string) => readFileSync(join(folder, name), 'latin1').match(/\/Type\s*\/Page\b/g)?.length;
      expect(pages('slides.pdf')).toBe(said.slides.length + 1);
      expect(pages('handout.pdf')).toBeGreaterThan(2);
    },
    60_000,
  );
});

describe('the briefing as a page', () => {
  it('is valid html, and whole without a script', async () => {
    const html = files.get('briefing/slides.html') as string;
    const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(html);
    expect(report.results.flatMap(r => r.messages.map(m => `${m.line} ${m.ruleId} ${m.message}`)).slice(0, 5)).toEqual(
      [],
    );
    expect(html.match(/<section class="slide/g)).toHaveLength(said.slides.length + 1);
  });

  it.skipIf(chromiumPath === undefined)(
    'turns with the arrow keys, fits a phone and prints a page a slide',
    async () => {
      const browser = await openBrowser();
      try {
        const page = await browser.newPage({ viewport: { width: 390, height: 800 } });
        await page.goto(`file://${join(folder, 'briefing', 'slides.html')}`);
        expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
        await page.setViewportSize({ width: 1280, height: 720 });
        for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowLeft']) await page.keyboard.press(key);
        expect(await page.locator('.slide.shown h2').textContent()).toBe(said.slides[0]!.title);
        expect(await page.locator('.slide:visible').count()).toBe(1);
        if (process.env.FISHPLATE_SHOTS) await page.screenshot({ path: `${process.env.FISHPLATE_SHOTS}/slide.png` });
        await page.keyboard.press('n');
        expect(await page.locator('.slide.shown details p').isVisible()).toBe(true);
        const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
        expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBe(said.slides.length + 1);
      } finally {
        await browser.close();
      }
    },
    60_000,
  );
});
