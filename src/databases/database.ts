/** A value that is written. */
export type Value = string | number | boolean | null | undefined;
export type Row = Readonly<Record<string, unknown>>;

export interface TheirColumn {
  readonly name: string;
  /** As the table declares it; may be empty in an embedded file. */
  readonly type: string;
}

/** A table that is read and never changed. */
export interface TheirTable {
  readonly schema: string;
  readonly name: string;
  readonly columns: readonly TheirColumn[];
  /** What tells its lines apart: the primary key or, in an embedded file without one, the row id. */
  readonly key: readonly TheirColumn[];
}

/** What the two engines say differently. Expressions are SQL over the alias `t`. */
export interface Dialect {
  /** What a cell shows as text, '' for none; compared byte for byte. Days as 2024-05-03, moments as 2024-05-03T10:00:00Z. */
  cell(column: TheirColumn): string;
  /** 1 where the cell is stored as a number, else 0. */
  isNumber(column: TheirColumn): string;
  /** Without white space at both ends. */
  trimmed(text: string): string;
  /** Text compared byte for byte, for sorting. */
  bytewise(text: string): string;
  /** A column by its name in a table by its alias. */
  column(alias: string, column: TheirColumn): string;
  /** How a table of ours declares a column that holds the same as one of theirs. */
  sameType(column: TheirColumn): string;
  /** `'…'::type`, or `?`: the place of the n-th value, from 1, where it stands for a column's value. */
  value(n: number, column: TheirColumn): string;
  /** Whether foreign keys come after the rows, in one pass; else they stand in the table from the start. */
  readonly keysAfterRows: boolean;
}

/** A connection to the database that somebody's jobs live in. Failing calls throw a CatalogError that says what to do. */
export interface Database {
  readonly kind: 'postgres' | 'sqlite';
  /** For people; never with a password. */
  readonly name: string;
  readonly dialect: Dialect;
  /** @throws CatalogError BadTable: there is none of that name, it is no table, or nothing tells its lines apart */
  table(name: string): Promise<TheirTable>;
  /** Which of these stand in a schema already, tables and views alike. */
  standing(schema: string, names: readonly string[]): Promise<readonly string[]>;
  /** The schemas in which a table of this name stands. */
  schemasWith(table: string): Promise<readonly string[]>;
  rows(sql: string, values?: readonly Value[]): Promise<readonly Row[]>;
  /** How many rows it touched. */
  run(sql: string, values?: readonly Value[]): Promise<number>;
  /** @param types SQL types of the columns, in order */
  insert(
    table: string,
    columns: readonly string[],
    types: readonly string[],
    rows: readonly (readonly Value[])[],
  ): Promise<void>;
  /** Tells the planner what stands in a table that was just filled. */
  measured(table: string): Promise<void>;
  /** Holds other runs of ours off a table until the connection ends. @throws CatalogError Busy */
  claim(table: TheirTable): Promise<void>;
  /** Runs work in one transaction that sees one state of the database; where it throws, nothing of it stays. */
  together<T>(work: () => Promise<T>): Promise<T>;
  close(): Promise<void>;
}
