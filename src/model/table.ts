/** One row of a table, with the line of the file that it begins on. Cells are trimmed; an absent column is `undefined`. */
export interface TableRow {
  readonly file: string;
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

export interface Table {
  readonly file: string;
  /** As the file spells them, in order. */
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}
