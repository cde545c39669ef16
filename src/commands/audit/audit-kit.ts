import { createHash } from 'node:crypto';
import type { Retention } from '../../content/links/retention.ts';
import type { Fate } from '../../model/crosswalk.ts';
import type { ItemId } from '../../model/item.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';
import type { AuditLine, AuditReport } from './audit-editions.ts';
import { type Reduction, reductionOf } from './reduction.ts';

/** Old items of one fate in one part of the older edition. */
export interface Stratum {
  readonly name: string;
  readonly fate: Fate;
  readonly part: string;
  readonly population: number;
  readonly drawn: number;
}

/** One old item to look at. */
export interface KitRow {
  readonly stratum: string;
  readonly item: ItemId;
  readonly number: string;
  readonly title: string;
  readonly types: string;
  readonly oldText: string;
  readonly heirs: string;
  readonly toolSays: string;
}

export interface AuditKit {
  readonly seed: string;
  readonly population: number;
  readonly strata: readonly Stratum[];
  readonly rows: readonly KitRow[];
  readonly reduction: Reduction;
}

/**
 * Draws old items with a text, so many of each stratum (fate and part) as its share of all, at least one where the
 * sample is large enough. Which ones is settled by a hash of seed and id: the same seed draws the same, everywhere.
 */
export function auditKit(report: AuditReport, size: number, seed: string): AuditKit {
  const { joint, retention, lines } = report;
  const byItem = groupBy(retention, r => r.item);
  const linesOf = groupBy(lines, l => l.item);
  const groups = groupBy([...byItem.keys()], id => stratumOf(report, id));
  const names = [...groups.keys()].sort();
  const drawn = shares(
    names.map(n => groups.get(n)!.length),
    Math.min(size, byItem.size),
  );
  const strata = names.map((name, at): Stratum => {
    const members = groups.get(name)!;
    const part = joint.old.part(members[0]!)!;
    const called = [part.number, part.title].filter(Boolean).join(' ');
    return { name, fate: joint.fateOfOld(members[0]!), part: called, population: members.length, drawn: drawn[at]! };
  });
  const order = new Map(joint.from.entries.map((e, at) => [e.id, at]));
  const rows = strata.flatMap(({ name, drawn: n }) =>
    [...groups.get(name)!]
      .map(id => ({ id, lot: lotOf(seed, id) }))
      .sort((a, b) => (a.lot < b.lot ? -1 : 1))
      .slice(0, n)
      .sort((a, b) => order.get(a.id)! - order.get(b.id)!)
      .map(({ id }) => rowOf(report, name, byItem.get(id)!, linesOf.get(id) ?? [])),
  );
  return { seed, population: byItem.size, strata, rows, reduction: reductionOf(report) };
}

function stratumOf({ joint }: AuditReport, id: ItemId): string {
  const part = joint.old.part(id)!;
  return `${joint.fateOfOld(id)}, ${part.number || part.title || part.id}`;
}

const lotOf = (seed: string, id: ItemId) =>
  createHash('sha256')
    .update(JSON.stringify([seed, id]))
    .digest('hex');

/** So many of each group as its share of the whole, by largest remainders; a group gets its first one before others a third. */
function shares(sizes: readonly number[], total: number): number[] {
  const whole = sizes.reduce((a, b) => a + b, 0);
  if (whole === 0) return sizes.map(() => 0);
  const least = total >= sizes.length ? 1 : 0;
  const exact = sizes.map(n => (n / whole) * total);
  const given = sizes.map((n, at) => Math.min(n, Math.max(least, Math.floor(exact[at]!))));
  const sum = () => given.reduce((a, b) => a + b, 0);
  const byNeed = (at: number) => exact[at]! - given[at]!;
  while (sum() < total) {
    const open = sizes.map((_, at) => at).filter(at => given[at]! < sizes[at]!);
    given[open.reduce((a, b) => (byNeed(b) > byNeed(a) ? b : a))]!++;
  }
  while (sum() > total) {
    const spare = sizes.map((_, at) => at).filter(at => given[at]! > least);
    given[spare.reduce((a, b) => (byNeed(b) < byNeed(a) ? b : a))]!--;
  }
  return given;
}

function rowOf(
  report: AuditReport,
  stratum: string,
  groups: readonly Retention[],
  lines: readonly AuditLine[],
): KitRow {
  const { joint, heirs } = report;
  const { id, number, title } = joint.old.get(groups[0]!.item)!;
  const ids = [...new Set(groups.flatMap(g => g.heirs))];
  const texts = ids.map(h => {
    const entry = joint.new.get(h)!;
    const types = groups.filter(g => g.heirs.includes(h)).flatMap(g => g.types);
    const head = [entry.number, entry.title].filter(Boolean).join(' ');
    return `${head}${types.length > 0 ? ` (${types.join(', ')})` : ''}: ${heirs.get(h)?.text ?? ''}`;
  });
  const old = report.items.get(id)!;
  return {
    stratum,
    item: id,
    number,
    title,
    types: joint.old.types(id).join('|'),
    oldText: [old.text, old.caution].filter(Boolean).join('\n'),
    heirs: texts.join('\n'),
    toolSays: saysOf(groups, lines),
  };
}

function saysOf(groups: readonly Retention[], lines: readonly AuditLine[]): string {
  const withdrawn = groups
    .filter(g => g.fate === 'withdrawn')
    .map(g => `Withdrawn${g.types.length > 0 ? ` for ${g.types.join(', ')}` : ''}: ${g.reason ?? 'no reason given'}.`);
  const told = lines.map(l => {
    const types = l.types.length > 0 ? ` (${l.types.join(', ')})` : '';
    if (l.kind === 'changed') return `Changed${types}: "${l.text}" → "${l.becomes}".`;
    if (l.kind === 'type') return `Ends without a reason${l.text && ` for ${l.text}`}.`;
    const state = l.state === 'decision' ? `covered by ${l.decision}` : l.state;
    return `Lost${types}, ${state}: "${l.text}".`;
  });
  const all = [...withdrawn, ...told];
  return all.length > 0 ? all.join('\n') : 'Nothing is lost.';
}

function groupBy<T, K>(all: readonly T[], key: (t: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const t of all) {
    const group = groups.get(key(t));
    if (group) group.push(t);
    else groups.set(key(t), [t]);
  }
  return groups;
}

/** The columns that people fill in. */
export const KIT_COLUMNS = ['verdict', 'remark', 'name', 'date', 'second_name', 'second_date'] as const;

/** The worksheet first, since readers of tables take the first sheet; then how to fill it in, strata and reduction. */
export function kitXlsx({ from, to }: AuditReport, kit: AuditKit): Uint8Array {
  const header = ['stratum', 'id', 'number', 'title', 'types', 'old_text', 'heirs', 'tool_says', ...KIT_COLUMNS];
  const rows = kit.rows.map(r => [r.stratum, r.item, r.number, r.title, r.types, r.oldText, r.heirs, r.toolSays]);
  const strata = kit.strata.map(s => [s.name, s.fate, s.part, s.population, s.drawn]);
  return writeXlsx([
    {
      name: 'Worksheet',
      header,
      rows: rows.map(r => [...r, ...KIT_COLUMNS.map(() => '')]),
      widths: [16, 16, 10, 24, 12, 56, 56, 44, 12, 30, 20, 12, 20, 12],
    },
    {
      name: 'How to',
      header: ['what', 'how'],
      rows: [
        ['editions', `${from} to ${to}`],
        ['seed', kit.seed],
        ['question', 'Read the old text and all heirs. Is what the tool says right and complete?'],
        ['verdict', 'right: nothing is lost that the tool does not name. wrong: something is; say what under remark.'],
        ['name, date', 'Who looked, and when (2024-05-31).'],
        [
          'second_name, second_date',
          'Another person who looked at the row on their own and agrees. Rows without are not counted.',
        ],
        ['then', `fishplate audit ${from} ${to} --read kit.xlsx`],
      ],
      widths: [26, 100],
    },
    {
      name: 'Strata',
      header: ['stratum', 'fate', 'part', 'population', 'drawn'],
      rows: strata,
    },
    {
      name: 'Reduction',
      header: ['installation type', 'what', 'items', 'words'],
      rows: kit.reduction.rows.map(r => [r.type || 'all', r.what, r.items, r.words]),
    },
  ]);
}
