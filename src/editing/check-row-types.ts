import type { Finding } from '../model/finding.ts';
import type { Settings } from '../model/settings.ts';
import type { PlacedRow } from './place-rows.ts';

/** Rows whose every installation type is known, without those that stand below one left out. */
export function rowsOfKnownTypes(rows: readonly PlacedRow[], settings: Settings): PlacedRow[] {
  const known = settings.installationTypes.map(t => t.id);
  const kept = new Set<PlacedRow>();
  for (const row of rows) {
    const above = row.parent === null || kept.has(row.parent);
    if (above && (row.content.appliesTo ?? []).every(type => known.includes(type))) kept.add(row);
  }
  return [...kept];
}

/** Rows that apply to an installation type which the settings, where they are given outright, do not list. */
export function checkRowTypes(rows: readonly PlacedRow[], settings: Settings): Finding[] {
  const known = settings.installationTypes.map(t => t.id);
  return rows.flatMap(({ row, number, content }) =>
    (content.appliesTo ?? [])
      .filter(type => !known.includes(type))
      .map(type => ({
        rule: 'unknown-type',
        severity: 'error' as const,
        subject: row.file,
        message: `${number || content.title} applies to ${type}, which is not an installation type of the catalog (${known.join(', ')}).`,
        place: { file: row.file, line: row.line },
      })),
  );
}
