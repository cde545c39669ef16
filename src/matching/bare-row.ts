/** One row of an edition that has no ids: what a printed catalog shows of an item. */
export interface BareRow {
  readonly number: string;
  readonly level: string;
  /** Position of the parent in the same list; -1 at the top. */
  readonly parent: number;
  readonly title: string;
  readonly text: string;
  /** The table that the row comes from, where several make one edition: a position in their list. */
  readonly table: number;
}
