import type Library from 'pptxgenjs';
import type { Bars, Briefing, Slide } from './briefing.ts';
import { fixedPackage } from './fixed-package.ts';
import type { Said } from './worked-examples.ts';

// Its types are read as CommonJS, where the class stands one step deeper than at run time.
type Pptx = typeof Library.default;
type Deck = InstanceType<Pptx>;
type Page = ReturnType<Deck['addSlide']>;

const INK = '1D2126';
const QUIET = '565D65';
const PAPER = 'FBFAF6';
const OLD = '46596B';
const NEW = '8A5710';
const SERIF = 'Georgia';
const SANS = 'Arial';
/** Of a slide and of what may be written on, in inches. */
const WIDTH = 13.333;
const LEFT = 0.7;
const INNER = WIDTH - 2 * LEFT;

/** The briefing as slides, with what the speaker says under each. Shapes and texts only, so that all of it can be edited. */
export async function writeBriefingPptx(briefing: Briefing, day: string | undefined): Promise<Uint8Array> {
  const Pptx = (await import('pptxgenjs')).default as unknown as Pptx;
  const deck = new Pptx();
  deck.layout = 'LAYOUT_WIDE';
  deck.title = briefing.title;
  addTitle(deck, briefing);
  briefing.slides.forEach((slide, at) => {
    addSlide(deck, briefing, slide, at + 2);
  });
  const bytes = (await deck.write({ outputType: 'uint8array' })) as Uint8Array;
  return fixedPackage(bytes, briefing.title, briefing.publisher, day);
}

function addTitle(deck: Deck, briefing: Briefing): void {
  const page = deck.addSlide();
  page.background = { color: PAPER };
  rail(page, LEFT, 1.2, 3.6, OLD);
  rail(page, WIDTH - LEFT - 0.08, 1.2, 3.6, NEW);
  const box = { x: LEFT + 0.4, w: INNER - 0.8, margin: 0 };
  page.addText(briefing.title, { ...box, y: 1.2, h: 1.8, fontFace: SERIF, fontSize: 38, bold: true, color: INK });
  page.addText(briefing.subtitle, { ...box, y: 3.1, h: 1, fontFace: SANS, fontSize: 22, color: INK, valign: 'top' });
  page.addText(briefing.publisher, { ...box, y: 4.3, h: 0.5, fontFace: SANS, fontSize: 16, color: QUIET });
  if (briefing.caution) {
    page.addText([{ text: 'CAUTION  ', options: { bold: true } }, { text: briefing.caution }], {
      x: LEFT,
      y: 5.5,
      w: INNER,
      h: 1.2,
      fontFace: SANS,
      fontSize: 16,
      color: INK,
      line: { color: INK, width: 1.5 },
    });
  }
  page.addNotes(`${briefing.subtitle} ${briefing.caution}`.trim());
}

function addSlide(deck: Deck, briefing: Briefing, slide: Slide, number: number): void {
  const page = deck.addSlide();
  page.background = { color: PAPER };
  const line = { x: LEFT, w: INNER, margin: 0 };
  page.addText(slide.title, { ...line, y: 0.4, h: 0.7, fontFace: SERIF, fontSize: 30, bold: true, color: INK });
  page.addText(slide.lead, { ...line, y: 1.1, h: 0.8, fontFace: SANS, fontSize: 19, color: INK, valign: 'top' });
  let y = 2;
  if (slide.example) y = addExample(page, briefing, slide.example.before, slide.example.after);
  if (slide.bars) y = addBars(page, slide.bars, y, slide.points.length * 0.4);
  addPoints(page, slide, y);
  const foot = `${briefing.title} · ${briefing.from} to ${briefing.to} · ${number}`;
  page.addText(foot, { ...line, y: 7.05, h: 0.3, fontFace: SANS, fontSize: 11, color: QUIET });
  page.addNotes(slide.notes);
}

function addPoints(page: Page, { points, example, bars }: Slide, y: number): void {
  if (points.length === 0) return;
  const letters = points.join('').length;
  const fontSize = example ? 14 : letters > 900 ? 15 : letters > 600 ? 17 : bars ? 16 : 20;
  const texts = points.map((text, at) => ({
    text,
    options: { bullet: !example, breakLine: at < points.length - 1, paraSpaceAfter: 6 },
  }));
  const box = { x: LEFT, y, w: INNER, h: 6.95 - y, margin: 0 };
  page.addText(texts, { ...box, fontFace: SANS, fontSize, color: INK, valign: 'top' });
}

/** Before on the slate rail, after on the ochre one. @returns where the next thing may stand */
function addExample(page: Page, briefing: Briefing, before: readonly Said[], after: readonly Said[]): number {
  const half = INNER / 2 - 0.2;
  const longest = Math.max(
    ...[before, after].map(side => side.reduce((n, s) => n + s.title.length + s.text.length, 0)),
  );
  const fontSize = longest > 520 ? 13 : longest > 300 ? 15 : longest > 180 ? 18 : 22;
  const height = 3.6;
  const put = (x: number, color: string, edition: string, side: readonly Said[], none: string) => {
    rail(page, x, 2, height, color);
    const texts = side.flatMap(s => [
      { text: `${s.number} ${s.title}`.trim(), options: { bold: true, breakLine: true, fontFace: SANS } },
      { text: s.text, options: { breakLine: true, paraSpaceAfter: 8 } },
    ]);
    const said = texts.length > 0 ? texts : [{ text: none, options: { italic: true } }];
    const head = {
      text: `Edition ${edition}`,
      options: { color, bold: true, breakLine: true, fontFace: SANS, fontSize: 13 },
    };
    const box = { x: x + 0.25, y: 2, w: half - 0.3, h: height, margin: 0 };
    page.addText([head, ...said], { ...box, fontFace: SERIF, fontSize, color: INK, valign: 'top' });
  };
  put(LEFT, OLD, briefing.from, before, 'Nothing like it.');
  put(LEFT + half + 0.4, NEW, briefing.to, after, 'No longer in force.');
  return 2 + height + 0.15;
}

/** @param below inches to leave free under the bars */
function addBars(page: Page, { bars }: Bars, top: number, below: number): number {
  const most = Math.max(1, ...bars.map(b => b.n));
  const step = Math.min(0.62, (6.8 - top - below) / bars.length);
  const labels = 5.4;
  bars.forEach(({ label, n, side }, at) => {
    const y = top + at * step;
    const h = step * 0.62;
    const fontSize = label.length > 58 ? 12 : 14;
    page.addText(label, {
      x: LEFT,
      y,
      w: labels,
      h,
      margin: 0,
      fontFace: SANS,
      fontSize,
      color: INK,
      valign: 'middle',
    });
    const x = LEFT + labels + 0.15;
    const w = (n / most) * (INNER - labels - 1);
    const part = side === 'both' ? w / 2 : w;
    if (n > 0) {
      page.addShape('rect', { x, y, w: part, h, fill: { color: side === 'new' ? NEW : OLD } });
      if (side === 'both') page.addShape('rect', { x: x + part, y, w: part, h, fill: { color: NEW } });
    }
    const box = { x: x + w + 0.1, y, w: 0.8, h, margin: 0 };
    page.addText(String(n), { ...box, fontFace: SANS, fontSize: 15, bold: true, color: INK, valign: 'middle' });
  });
  return top + bars.length * step + 0.1;
}

function rail(page: Page, x: number, y: number, h: number, color: string): void {
  page.addShape('rect', { x, y, w: 0.08, h, fill: { color } });
}
