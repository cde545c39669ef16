import type { Finding } from '../model/finding.ts';
import { mintId } from '../model/ids.ts';
import type { Item, ItemId, TypeId } from '../model/item.ts';
import type { Placed, Places } from '../model/places.ts';
import type { PlacedRow } from './place-rows.ts';

export interface IdentityContext {
  readonly typesOfTable: ReadonlyMap<string, readonly TypeId[]>;
  /** The edition replaced, in which `was` is looked up. */
  readonly replaced: Places<Placed> | undefined;
  /** Every id that any edition uses; none of them is minted again. */
  readonly taken: ReadonlySet<ItemId>;
  readonly random: (bytes: number) => Uint8Array;
}

export interface IdentifiedRows {
  readonly items: readonly Item[];
  readonly minted: number;
  readonly findings: readonly Finding[];
}

/**
 * Gives every row its id. Ids that the tables bring along are kept; where several tables repeat one, it becomes
 * `type:id` (the table's one installation type, else the table's name). `was` takes over the id of the item that the row
 * continues. Everything else is minted.
 */
export function identifyRows(rows: readonly PlacedRow[], context: IdentityContext): IdentifiedRows {
  const findings: Finding[] = [];
  const repeated = idsInSeveralTables(rows);
  const owners = new Map<ItemId, PlacedRow>();
  const ids = new Map<PlacedRow, ItemId>();
  let minted = 0;
  for (const placed of rows) {
    let id = broughtId(placed, repeated, context) ?? continuedId(placed, context, findings);
    const other = id === undefined ? undefined : owners.get(id);
    if (other) {
      const { file, line } = other.row;
      findings.push(rowFinding(placed, 'id-twice', `has the id ${id}, which the row at ${file}:${line} has already`));
      id = undefined;
    }
    if (id === undefined) {
      id = mintId(context.random, candidate => context.taken.has(candidate) || owners.has(candidate));
      minted++;
    }
    owners.set(id, placed);
    ids.set(placed, id);
  }
  const numbers = new Map(rows.map(r => [r.number, ids.get(r)!]));
  const items = rows.map((placed): Item => {
    const alsoAt = placed.alsoAt?.flatMap(key => (owners.has(key) ? key : (numbers.get(key) ?? [])));
    return {
      id: ids.get(placed)!,
      number: placed.number,
      level: placed.level,
      parent: placed.parent === null ? null : ids.get(placed.parent)!,
      ...(placed.levelLabel === undefined ? {} : { kind: placed.levelLabel }),
      ...(alsoAt?.length ? { alsoAt } : {}),
      ...placed.content,
    };
  });
  return { items, minted, findings };
}

function idsInSeveralTables(rows: readonly PlacedRow[]): ReadonlySet<string> {
  const tables = new Map<string, string>();
  const repeated = new Set<string>();
  for (const { id, row } of rows) {
    if (id === undefined) continue;
    if ((tables.get(id) ?? row.file) !== row.file) repeated.add(id);
    tables.set(id, row.file);
  }
  return repeated;
}

function broughtId(placed: PlacedRow, repeated: ReadonlySet<string>, context: IdentityContext): ItemId | undefined {
  const { id, row } = placed;
  if (id === undefined || !repeated.has(id)) return id;
  const types = context.typesOfTable.get(row.file);
  const table = row.file.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '');
  return `${types?.length === 1 ? types[0] : table}:${id}`;
}

function continuedId(placed: PlacedRow, { replaced }: IdentityContext, findings: Finding[]): ItemId | undefined {
  if (placed.was === undefined) return undefined;
  const byId = replaced?.get(placed.was);
  const found = byId ? [byId] : (replaced?.withNumber(placed.was) ?? []);
  if (found.length === 1) return found[0]!.id;
  const names = found.length === 0 ? 'nothing' : `${found.length} items`;
  findings.push(
    rowFinding(placed, 'was-not-found', `continues ${placed.was}, which names ${names} in the edition replaced`),
  );
  return undefined;
}

function rowFinding(placed: PlacedRow, rule: string, what: string): Finding {
  const { file, line } = placed.row;
  return {
    rule,
    severity: 'error',
    subject: file,
    message: `${placed.number || placed.content.title} ${what}.`,
    place: { file, line },
  };
}
