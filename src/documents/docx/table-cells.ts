import { elementAt, type XmlElement } from '../../office/read-xml.ts';
import type { FoundCell } from '../found-cells.ts';

/** Lays out the cells of a table as they are read. */
export interface CellLayout {
  readonly cells: readonly FoundCell[];
  /** How many rows at the top are marked to be repeated as the table's head. */
  readonly heads: () => number;
  startRow(row: XmlElement): void;
  /** @param first the paragraphs found in it: from this one up to, not including, `next` */
  put(cell: XmlElement, first: number, next: number): void;
}

export function cellLayout(): CellLayout {
  const cells: FoundCell[] = [];
  /** The cell that goes on downwards in a column, by its place in `cells`. */
  const above = new Map<number, number>();
  let [row, column, heads] = [-1, 0, 0];
  return {
    cells,
    heads: () => heads,
    startRow: element => {
      row++;
      column = numberIn(elementAt(element, 'w:trPr', 'w:gridBefore')) ?? 0;
      if (heads === row && isOn(elementAt(element, 'w:trPr', 'w:tblHeader'))) heads++;
    },
    put: (cell, first, next) => {
      const properties = elementAt(cell, 'w:tcPr');
      const columns = numberIn(elementAt(properties, 'w:gridSpan')) ?? 1;
      const [across, down] = ['w:hMerge', 'w:vMerge'].map(name => mergeOf(elementAt(properties, name)));
      const last = cells.length - 1;
      if (across === 'continue' && cells[last]?.row === row) {
        cells[last] = { ...cells[last], columns: cells[last].columns + columns, next };
      } else if (down === 'continue' && above.has(column)) {
        const at = above.get(column)!;
        cells[at] = { ...cells[at]!, rows: cells[at]!.rows + 1 };
      } else {
        above.set(column, cells.length);
        cells.push({ row, column, columns, rows: 1, first, next });
      }
      column += columns;
    },
  };
}

function mergeOf(element: XmlElement | undefined): 'restart' | 'continue' | undefined {
  return element && (element.attributes.get('w:val') === 'restart' ? 'restart' : 'continue');
}

function numberIn(element: XmlElement | undefined): number | undefined {
  const value = Number(element?.attributes.get('w:val') ?? Number.NaN);
  return Number.isInteger(value) && value >= 0 && value < 1000 ? value : undefined;
}

function isOn(element: XmlElement | undefined): boolean {
  return element !== undefined && !['0', 'false', 'off'].includes(element.attributes.get('w:val') ?? '');
}
