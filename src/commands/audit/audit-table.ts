import { writeCsv } from '../../tables/write-csv.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';
import type { AuditLine, AuditReport } from './audit-editions.ts';

const HEADER = [
  'key',
  'state',
  'number',
  'title',
  'types',
  'heirs',
  'kind',
  'words',
  'becomes',
  'verdict',
  'because',
  'by',
  'date',
  'decision',
  'old_text',
  'heir_text',
];

/**
 * The lines of an audit as a table that can be filled in and settled; `verdict` and `because` are the columns to fill.
 * A line asked again has them empty: what was said of other words is no answer.
 */
export function auditRows(lines: readonly AuditLine[]): string[][] {
  return lines.map(line => {
    const { answer, state } = line;
    const held = state === 'settled' ? answer : undefined;
    return [
      line.key,
      state,
      line.number,
      line.title,
      line.types.join('|'),
      line.heirs.map(h => h.number || h.id).join('|'),
      line.kind,
      line.text,
      line.becomes,
      held?.verdict ?? '',
      held?.because ?? '',
      held?.by ?? '',
      held?.date ?? '',
      line.decision,
      line.oldText,
      line.heirText,
    ];
  });
}

export function auditCsv({ lines }: AuditReport): string {
  return writeCsv([HEADER, ...auditRows(lines)]);
}

export function auditXlsx({ lines, from, to }: AuditReport): Uint8Array {
  const widths = [18, 10, 10, 28, 14, 14, 11, 34, 24, 12, 34, 22, 12, 16, 60, 60];
  return writeXlsx([{ name: `${from} to ${to}`, header: HEADER, rows: auditRows(lines), widths }]);
}
