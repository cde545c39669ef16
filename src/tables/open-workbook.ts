import { CatalogError } from '../model/errors.ts';
import { type OfficePackage, openPackage, relationsOf, textOfPart, treeOfPart } from '../office/open-package.ts';
import { partSizes } from '../office/open-zip.ts';
import { elementAt, elementsIn, type XmlElement } from '../office/read-xml.ts';
import { type NumberFormat, numberFormat } from './number-format.ts';
import { sharedTexts } from './sheet-scan.ts';

export interface WorkbookSheet {
  readonly name: string;
  /** The part with its cells. */
  readonly part: string;
  readonly hidden: boolean;
}

/** A workbook as far as its cells go. */
export interface Workbook {
  readonly office: OfficePackage;
  /** Sheets of cells, in order; sheets that are only a chart are left out. */
  readonly sheets: readonly WorkbookSheet[];
  readonly texts: readonly string[];
  /** By the number of a cell's style. */
  readonly formats: readonly NumberFormat[];
  readonly since1904: boolean;
}

/** What is read of a workbook at most. Beyond it the file is refused; csv and JSON Lines have no bound. */
export const WORKBOOK_LIMITS = { sheetBytes: 128 * 2 ** 20, cells: 4_000_000 };

/**
 * Opens an xlsx file. Macros are refused: a file with them cannot be handed on under the ending that promises none.
 *
 * @throws CatalogError BadFile: encrypted, with macros, damaged, no workbook, or beyond `WORKBOOK_LIMITS`
 */
export function openWorkbook(bytes: Uint8Array, path: string): Workbook {
  // An old binary file, and an encrypted one, which is wrapped in the like, has no directory and is refused below.
  if (bytes[0] === 0x50) for (const [part, size] of partSizes(bytes, path)) refuseTooLarge(path, part, size);
  const office = openPackage(bytes, path, { contentType: 'spreadsheetml.sheet.main+xml', ending: '.xlsx' });
  const root = treeOfPart(office, office.main)!;
  const relations = new Map(relationsOf(office, office.main).map(r => [r.id, r]));
  const sheets = elementsIn(elementAt(root, 'x:sheets') ?? root, 'x:sheet').flatMap((sheet): WorkbookSheet[] => {
    const relation = relations.get(sheet.attributes.get('r:id') ?? '');
    if (relation?.type !== 'worksheet' || !office.parts.has(relation.target)) return [];
    const hidden = (sheet.attributes.get('state') ?? 'visible') !== 'visible';
    return [{ name: sheet.attributes.get('name') ?? '', part: relation.target, hidden }];
  });
  const part = (type: string) => [...relations.values()].find(r => r.type === type)?.target;
  const [strings, styles] = [part('sharedStrings'), part('styles')];
  const calendar = elementAt(root, 'x:workbookPr')?.attributes.get('date1904');
  return {
    office,
    sheets,
    texts: strings && office.parts.has(strings) ? sharedTexts(textOfPart(office, strings), `${path}: ${strings}`) : [],
    formats: styles ? formatsOf(treeOfPart(office, styles)) : [],
    since1904: calendar === '1' || calendar === 'true',
  };
}

function formatsOf(styles: XmlElement | undefined): readonly NumberFormat[] {
  if (!styles) return [];
  const listed = elementAt(styles, 'x:numFmts');
  const codes = new Map(
    (listed ? elementsIn(listed, 'x:numFmt') : []).map(f => [
      Number(f.attributes.get('numFmtId')),
      f.attributes.get('formatCode') ?? '',
    ]),
  );
  const formats = elementAt(styles, 'x:cellXfs');
  return (formats ? elementsIn(formats, 'x:xf') : []).map(xf => {
    const id = Number(xf.attributes.get('numFmtId') ?? 0);
    return numberFormat(id, codes.get(id));
  });
}

function refuseTooLarge(path: string, part: string, bytes: number): void {
  if (!part.endsWith('.xml') || bytes <= WORKBOOK_LIMITS.sheetBytes) return;
  const [has, most] = [bytes, WORKBOOK_LIMITS.sheetBytes].map(n => Math.round(n / 2 ** 20));
  throw new CatalogError(
    'BadFile',
    `${path} holds ${part} of ${has} MB unpacked, more than ${most} MB; save the sheet as csv, which has no bound.`,
    { path },
  );
}
