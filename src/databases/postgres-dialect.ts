import type { Dialect, TheirColumn } from './database.ts';
import { quoted } from './quoted.ts';

/** White space as people leave it at the ends of a cell. */
const SPACES = "E' \\t\\n\\u000b\\f\\r\\u00a0'";

export const postgresDialect: Dialect = {
  cell: c => `coalesce(${shown(c)}, '')`,
  isNumber: c => (/^(?:numeric|real|double precision|smallint|integer|bigint)/.test(c.type) ? '1' : '0'),
  trimmed: text => `btrim(${text}, ${SPACES})`,
  bytewise: text => `${text} collate "C"`,
  column: (alias, c) => `${alias}.${quoted(c.name)}`,
  sameType: c => c.type,
  value: (n, c) => `$${n}::text::${c.type}`,
  keysAfterRows: true,
};

/** Dates are told apart from the settings of the server, or 03/04 would be read in its order. */
function shown(c: TheirColumn): string {
  const cell = `t.${quoted(c.name)}`;
  const finite = (form: string, at: string) => `case when isfinite(${cell}) then to_char(${at}, '${form}') end`;
  if (c.type === 'date') return finite('YYYY-MM-DD', cell);
  if (/^timestamp.* with time zone$/.test(c.type))
    return finite('YYYY-MM-DD"T"HH24:MI:SS"Z"', `${cell} at time zone 'UTC'`);
  if (/^timestamp/.test(c.type)) return finite('YYYY-MM-DD"T"HH24:MI:SS', cell);
  return `${cell}::text`;
}
