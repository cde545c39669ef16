import { CatalogError } from '../../model/errors.ts';
import { partSizes } from '../../office/open-zip.ts';
import type { FormGrid } from '../../release/comments-form.ts';
import { isWorkbook } from '../../tables/read-table.ts';
import { openCsvForm } from './comments-csv.ts';
import { openDocxForm } from './comments-docx.ts';
import { openXlsxForm } from './comments-xlsx.ts';

/** A text for one cell of a form. */
export interface Fill {
  readonly grid: number;
  readonly row: number;
  readonly column: number;
  readonly text: string;
  /** What the cell says already stays, and the text follows on a line of its own. */
  readonly append?: boolean;
}

/** A form as a file: its tables, and a way to put texts into cells that leaves all other bytes as they are. */
export interface FormFile {
  readonly kind: 'xlsx' | 'docx' | 'csv';
  readonly grids: readonly FormGrid[];
  /** The file with these cells filled; `refused` are those that could not be, with why. */
  fill(fills: readonly Fill[]): {
    readonly bytes: Uint8Array;
    readonly refused: readonly { readonly fill: Fill; readonly why: string }[];
  };
}

/** From left to right and top to bottom, as splices are made. */
export function fillsInOrder(fills: readonly Fill[]): readonly Fill[] {
  return [...fills].sort((a, b) => a.grid - b.grid || a.row - b.row || a.column - b.column);
}

/**
 * Opens a form by what it is, not by its name alone.
 *
 * @throws CatalogError BadFile, BadTable: no such kind, damaged, encrypted, with macros
 */
export function openForm(file: string, bytes: Uint8Array): FormFile {
  if (/\.(?:pdf|doc|odt|rtf|html?)$/i.test(file) || startsWith(bytes, '%PDF')) {
    throw new CatalogError(
      'BadFile',
      `${file} is no form that can be read and filled in; save it as .docx, .xlsx or .csv and try again.`,
      { path: file },
    );
  }
  if (!isWorkbook(bytes)) return openCsvForm(file, bytes);
  const isDocument = bytes[0] === 0x50 && [...partSizes(bytes, file).keys()].some(part => part.startsWith('word/'));
  return isDocument ? openDocxForm(file, bytes) : openXlsxForm(file, bytes);
}

function startsWith(bytes: Uint8Array, text: string): boolean {
  return [...text].every((c, at) => bytes[at] === c.charCodeAt(0));
}
