import { CatalogError } from '../../model/errors.ts';
import { isSigned } from '../../office/open-package.ts';
import { writeZip } from '../../office/write-zip.ts';
import type { FormGrid, FormGridRow } from '../../release/comments-form.ts';
import { cellAddress } from '../../tables/cell-address.ts';
import { openWorkbook } from '../../tables/open-workbook.ts';
import { readSheet, type Sheet } from '../../tables/read-sheet.ts';
import { setCells } from '../../tables/set-cells.ts';
import { type Fill, type FormFile, fillsInOrder } from './comments-files.ts';

/**
 * A form as a workbook: each visible sheet is a table. Hidden sheets hold lists for the drop-downs of the others.
 *
 * @throws CatalogError BadFile, see `openWorkbook`
 */
export function openXlsxForm(file: string, bytes: Uint8Array): FormFile {
  const workbook = openWorkbook(bytes, file);
  const visible = workbook.sheets.filter(s => !s.hidden);
  const sheets = visible.map(s => readSheet(workbook, s));
  return {
    kind: 'xlsx',
    grids: sheets.map(sheet => gridOf(sheet, visible.length > 1)),
    fill: fills => {
      refuseSigned(file, isSigned(workbook.office));
      const parts = new Map(workbook.office.parts);
      const refused: { fill: Fill; why: string }[] = [];
      for (const [grid, sheet] of sheets.entries()) {
        const wanted = fillsInOrder(fills).filter(f => f.grid === grid);
        const free = wanted.filter(fill => {
          const hidden = hiddenBy(sheet, fill);
          if (hidden) refused.push({ fill, why: hidden });
          return !hidden;
        });
        if (free.length === 0) continue;
        const before = (f: Fill) => sheet.rows[f.row]?.cells.find(c => c.column === f.column)?.text;
        const texts = free.map(f => ({ ...f, text: f.append && before(f) ? `${before(f)}\n${f.text}` : f.text }));
        const { xml, formulas } = setCells(sheet, texts);
        for (const { row, column } of formulas) {
          const fill = free.find(f => f.row === row && f.column === column)!;
          refused.push({ fill, why: `${cellAddress(sheet.rows[row]!.row, column)} is a formula` });
        }
        parts.set(sheet.part, new TextEncoder().encode(xml));
      }
      return { bytes: writeZip(parts), refused };
    },
  };
}

/** A signature covers every byte; filled in, the file would say that it was tampered with. */
export function refuseSigned(file: string, signed: boolean): void {
  if (!signed) return;
  throw new CatalogError(
    'BadFile',
    `${file} is signed and cannot be filled in; answer with comments reply, or ask for a copy without the signature.`,
    { path: file },
  );
}

function gridOf(sheet: Sheet, several: boolean): FormGrid {
  const width = Math.max(0, ...sheet.rows.map(r => (r.cells.at(-1)?.column ?? -1) + 1));
  const texts = new Map(sheet.rows.map(r => [r.row, new Map(r.cells.map(c => [c.column, c.text]))]));
  const rows = sheet.rows.map((row): FormGridRow => {
    const cells: string[] = Array(width).fill('');
    const own = new Set<number>();
    for (const { column, text } of row.cells) {
      cells[column] = text;
      own.add(column);
    }
    let across: string | undefined;
    for (const { top, bottom, left, right } of sheet.merged) {
      if (row.row < top || row.row > bottom || left >= width) continue;
      const text = texts.get(top)?.get(left) ?? '';
      if (row.row > top) cells[left] = text;
      else if ((right - left + 1) * 2 >= width && right > left && own.size === 1 && own.has(left)) across = text;
    }
    const stored = new Set(row.cells.flatMap(c => (c.kind === 'number' || c.kind === 'date' ? [c.column] : [])));
    return { line: row.row + 1, cells, own, stored, ...(across === undefined ? {} : { across }) };
  });
  return { place: several ? `sheet ${sheet.name}` : '', rows };
}

/** Why a text in this cell would not be seen. */
function hiddenBy(sheet: Sheet, { row, column }: Fill): string | undefined {
  const at = sheet.rows[row]!.row;
  const over = sheet.merged.find(m => at >= m.top && at <= m.bottom && column >= m.left && column <= m.right);
  if (!over || (over.top === at && over.left === column)) return undefined;
  return `${cellAddress(at, column)} is merged into ${cellAddress(over.top, over.left)}`;
}
