const INK = '1D2126';

/** A caution in a ruled box, as it stands beside what it concerns. */
export function cautionParagraph({ BorderStyle, Paragraph, TextRun }: typeof import('docx'), text: string) {
  const edge = { style: BorderStyle.SINGLE, size: 12, space: 6, color: INK };
  return new Paragraph({
    spacing: { before: 240, after: 240 },
    border: { top: edge, bottom: edge, left: edge, right: edge },
    children: [new TextRun({ text: 'CAUTION  ', bold: true }), new TextRun(text)],
  });
}
