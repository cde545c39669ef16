import { counted } from '../../model/counted.ts';
import type { Finding } from '../../model/finding.ts';

/** Lines that are told of one trouble, at most. */
const SHOWN = 5;

/** Ids by which a result cannot be traced to its row: those that stand on several lines, and empty ones. */
export function rowIdFindings(
  file: string,
  rows: readonly { readonly id: string; readonly line: number }[],
): Finding[] {
  const lines = new Map<string, number[]>();
  for (const { id, line } of rows) {
    const key = id.trim();
    const known = lines.get(key);
    if (known) known.push(line);
    else lines.set(key, [line]);
  }
  return [...lines].flatMap(([id, at]): Finding[] => {
    const place = { file, line: at[0]! };
    const where = `${at.slice(0, SHOWN).join(', ')}${at.length > SHOWN ? ` and ${at.length - SHOWN} more` : ''}`;
    if (id === '') {
      const message = `${counted(at.length, 'row has', 'rows have')} no id (${at.length === 1 ? 'line' : 'lines'} ${where}); give each its own, or nobody can tell what is said of which.`;
      return [{ rule: 'no-id', severity: 'warning', subject: file, message, place }];
    }
    if (at.length === 1) return [];
    const message = `The id ${id} stands on the lines ${where}; give each row its own, or nobody can tell what is said of which.`;
    return [{ rule: 'id-twice', severity: 'warning', subject: id, message, place }];
  });
}
