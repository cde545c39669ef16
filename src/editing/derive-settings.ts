import type { Level, Settings } from '../model/settings.ts';
import type { PlacedRow } from './place-rows.ts';

/**
 * The settings of an edition that is imported: those of the edition it replaces, or what its rows show. Printed numbers
 * are kept as they are, gaps included; a scheme that derives them is chosen by people, not guessed from a pattern.
 *
 * @param told settings that the user gives outright; they win
 */
export function deriveSettings(
  rows: readonly PlacedRow[],
  before: Settings | undefined,
  told: Partial<Settings>,
  title: string,
): Settings {
  const depth = Math.max(1, ...rows.map(r => r.level));
  const levels = told.levels ?? levelsOf(rows, depth, before);
  const numbers = rows.map(r => r.number).filter(n => n !== '');
  return {
    title: told.title ?? before?.title ?? title,
    ...optional('publisher', told.publisher ?? before?.publisher),
    language: told.language ?? before?.language ?? 'en',
    levels,
    fileLevel: told.fileLevel ?? (before && before.fileLevel <= depth ? before.fileLevel : goodFileLevel(rows, depth)),
    numbering: told.numbering ?? {
      levels: levels.map(() => ({ style: 'printed' })),
      numbersUnique: new Set(numbers).size === numbers.length,
    },
    installationTypes: told.installationTypes ?? typesOf(rows, before),
    withdrawalReasons: told.withdrawalReasons ?? before?.withdrawalReasons ?? [],
    ...optional('caution', told.caution ?? before?.caution),
  };
}

function optional<K extends string>(key: K, value: string | undefined): Partial<Record<K, string>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, string>);
}

/** Each level is named for the label that most of its rows have. */
function levelsOf(rows: readonly PlacedRow[], depth: number, before: Settings | undefined): Level[] {
  return Array.from({ length: depth }, (_, at) => {
    const known = before?.levels[at];
    if (known) return known;
    const counts = new Map<string, number>();
    for (const row of rows) {
      if (row.level === at + 1 && row.levelLabel) counts.set(row.levelLabel, (counts.get(row.levelLabel) ?? 0) + 1);
    }
    const [most] = [...counts].sort((a, b) => b[1] - a[1]);
    return { name: most?.[0] ?? `Level ${at + 1}` };
  });
}

/**
 * The deepest level down to which at most a third of the items have a file of their own: about three to ten items a
 * file, which is what one person edits at a time.
 */
function goodFileLevel(rows: readonly PlacedRow[], depth: number): number {
  let best = 1;
  for (let level = 2; level < depth; level++) {
    if (rows.filter(r => r.level <= level).length * 3 <= rows.length) best = level;
  }
  return best;
}

function typesOf(rows: readonly PlacedRow[], before: Settings | undefined) {
  const types = [...(before?.installationTypes ?? [])];
  for (const row of rows) {
    for (const id of row.content.appliesTo ?? []) if (!types.some(t => t.id === id)) types.push({ id, name: id });
  }
  return types;
}
