import type { Bars, Briefing, Slide } from './briefing.ts';
import { cautionParagraph } from './docx-caution.ts';
import { fixedPackage } from './fixed-package.ts';
import type { Said } from './worked-examples.ts';

type Docx = typeof import('docx');

const INK = '1D2126';
const OLD = '46596B';
const NEW = '8A5710';
const NONE = { style: 'none', size: 0, color: 'auto' } as const;
const BARE = { top: NONE, bottom: NONE, left: NONE, right: NONE } as const;
/** Width of the page between its margins, in twentieths of a point, and of the longest bar on it. */
const PAGE = 9000;
const LONGEST_BAR = 3600;

/** The briefing as a handout: the same sections with what the speaker says, to be read afterwards. */
export async function writeBriefingDocx(briefing: Briefing, day: string | undefined): Promise<Uint8Array> {
  const docx = await import('docx');
  const { Document, Footer, HeadingLevel, Packer, Paragraph, TextRun } = docx;
  const foot = `${briefing.title} · ${briefing.from} to ${briefing.to}`;
  const document = new Document({
    title: briefing.title,
    creator: briefing.publisher,
    styles: {
      default: {
        document: { run: { font: 'Georgia', size: 22 } },
        title: { run: { font: 'Georgia', size: 44, bold: true, color: INK } },
        heading1: { run: { font: 'Georgia', size: 28, bold: true, color: INK } },
      },
    },
    sections: [
      {
        footers: {
          default: new Footer({ children: [new Paragraph({ children: [new TextRun({ text: foot, size: 16 })] })] }),
        },
        children: [
          new Paragraph({ text: briefing.title, heading: HeadingLevel.TITLE }),
          new Paragraph({ text: briefing.subtitle, spacing: { after: 120 } }),
          ...(briefing.publisher ? [new Paragraph({ text: briefing.publisher })] : []),
          ...(briefing.caution ? [cautionParagraph(docx, briefing.caution)] : []),
          ...briefing.slides.flatMap(slide => section(docx, briefing, slide)),
        ],
      },
    ],
  });
  return fixedPackage(await Packer.toBuffer(document), briefing.title, briefing.publisher, day);
}

function section(docx: Docx, briefing: Briefing, slide: Slide) {
  const { HeadingLevel, Paragraph, TextRun } = docx;
  const lead = new TextRun({ text: slide.lead, bold: true });
  return [
    new Paragraph({
      text: slide.title,
      heading: HeadingLevel.HEADING_1,
      keepNext: true,
      spacing: { before: 360, after: 80 },
    }),
    new Paragraph({ children: [lead], keepNext: true, spacing: { after: 120 } }),
    ...(slide.bars ? [barTable(docx, slide.bars)] : []),
    ...(slide.example ? [sideBySide(docx, briefing, slide.example.before, slide.example.after)] : []),
    ...slide.points.map(
      text => new Paragraph({ text, spacing: { before: 80 }, ...(slide.example ? {} : { bullet: { level: 0 } }) }),
    ),
    // The notes of an example repeat what stands on the page.
    ...(slide.example ? [] : [new Paragraph({ text: slide.notes, spacing: { before: 120 } })]),
  ];
}

function barTable(docx: Docx, { bars }: Bars) {
  const { Paragraph, Table, TableCell, TableLayoutType, TableRow, TextRun, WidthType } = docx;
  const most = Math.max(1, ...bars.map(b => b.n));
  const widths = [PAGE - LONGEST_BAR - 700, 700, LONGEST_BAR];
  const cell = (width: number, children: InstanceType<Docx['Paragraph']>[]) =>
    new TableCell({ width: { size: width, type: WidthType.DXA }, borders: BARE, children });
  const text = (words: string) =>
    new Paragraph({ children: [new TextRun({ text: words, size: 19 })], spacing: { after: 40 } });
  return new Table({
    columnWidths: widths,
    layout: TableLayoutType.FIXED,
    rows: bars.map(({ label, n, side }) => {
      // A bar is a run of shaded blanks: a picture would have to be described, and a cell for each length widens the table.
      const blocks = n === 0 ? 0 : Math.max(1, Math.round((n / most) * 44));
      const olds = side === 'new' ? 0 : side === 'both' ? Math.ceil(blocks / 2) : blocks;
      const run = (count: number, color: string) =>
        new TextRun({ text: '\u00a0'.repeat(count), size: 19, shading: { type: docx.ShadingType.CLEAR, fill: color } });
      const bar = new Paragraph({ children: [run(olds, OLD), run(blocks - olds, NEW)] });
      return new TableRow({
        cantSplit: true,
        children: [cell(widths[0]!, [text(label)]), cell(widths[1]!, [text(String(n))]), cell(widths[2]!, [bar])],
      });
    }),
  });
}

function sideBySide(docx: Docx, briefing: Briefing, before: readonly Said[], after: readonly Said[]) {
  const { BorderStyle, Paragraph, Table, TableCell, TableLayoutType, TableRow, TextRun, WidthType } = docx;
  const width = PAGE / 2;
  const side = (edition: string, color: string, all: readonly Said[], none: string) =>
    new TableCell({
      width: { size: width, type: WidthType.DXA },
      borders: { ...BARE, left: { style: BorderStyle.SINGLE, size: 36, color } },
      margins: { left: 160, right: 160 },
      children: [
        new Paragraph({ children: [new TextRun({ text: `Edition ${edition}`, bold: true, color, size: 18 })] }),
        ...(all.length > 0 ? all : [{ number: '', title: '', text: none }]).flatMap(({ number, title, text }) => [
          new Paragraph({ children: [new TextRun({ text: `${number} ${title}`.trim(), bold: true, size: 20 })] }),
          new Paragraph({ children: [new TextRun({ text, size: 20 })], spacing: { after: 100 } }),
        ]),
      ],
    });
  return new Table({
    columnWidths: [width, width],
    layout: TableLayoutType.FIXED,
    rows: [
      new TableRow({
        children: [
          side(briefing.from, OLD, before, 'Nothing like it.'),
          side(briefing.to, NEW, after, 'No longer in force.'),
        ],
      }),
    ],
  });
}
