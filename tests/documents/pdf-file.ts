/** A PDF of pages of text: each line with its place on the page and the size of its letters, written by hand. */
export function pdfOf(
  pages: readonly (readonly [x: number, y: number, size: number, text: string][])[],
  trailer = '',
): Uint8Array {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Count ${pages.length} /Kids [${pages.map((_, n) => `${4 + 2 * n} 0 R`).join(' ')}] >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>',
    ...pages.flatMap((lines, n) => {
      const stream = lines.map(([x, y, size, text]) => `BT /F1 ${size} Tf ${x} ${y} Td (${text}) Tj ET`).join('\n');
      return [
        `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 600 800] /Resources << /Font << /F1 3 0 R >> >> /Contents ${5 + 2 * n} 0 R >>`,
        `<< /Length ${stream.length} >>\nstream\n${stream}\nendstream`,
      ];
    }),
  ];
  let text = '%PDF-1.4\n';
  const at = objects.map((object, n) => {
    const offset = text.length;
    text += `${n + 1} 0 obj\n${object}\nendobj\n`;
    return offset;
  });
  const table = at.map(offset => `${String(offset).padStart(10, '0')} 00000 n \n`).join('');
  const end = `xref\n0 ${at.length + 1}\n0000000000 65535 f \n${table}trailer\n<< /Size ${at.length + 1} /Root 1 0 R ${trailer} >>\nstartxref\n${text.length}\n%%EOF`;
  return new TextEncoder().encode(text + end);
}
