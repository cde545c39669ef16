import type { Joint } from '../../crosswalk/joint.ts';

const MONTHS = 'jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec';
const DATES = [
  /^\d{4}-\d{1,2}-\d{1,2}(?:[T ].*)?$/,
  /^\d{1,4}[-/]\d{1,2}[-/]\d{1,4}$/,
  new RegExp(`^(?:${MONTHS})[a-z]*[-. ]\\d{1,4}$`, 'i'),
  new RegExp(`^\\d{1,2}[-. ](?:${MONTHS})[a-z]*(?:[-. ]\\d{2,4})?$`, 'i'),
];

/** Whether a cell looks like a number that a spreadsheet took for a date: 4-5-1, May-01, 2001-05-04. */
export function looksLikeDate(cell: string): boolean {
  return DATES.some(date => date.test(cell));
}

/**
 * The numbers that a spreadsheet may have turned into this date, where the edition has them. 2001-05-04 may have been
 * 4.5.1, 5.4.1 or 1.5.4: the order of day, month and year differs by country, so all are offered and none is taken.
 */
export function numbersBehindDate(joint: Joint, cell: string): readonly string[] {
  const parts = cell.slice(0, 10).match(/\d+/g) ?? [];
  if (parts.length !== 3) return [];
  const [a, b, c] = parts.map(p => String(p.length === 4 ? Number(p) % 100 : Number(p))) as [string, string, string];
  const orders = [
    [a, b, c],
    [c, b, a],
    [b, c, a],
  ];
  return [...new Set(orders.map(o => o.join('.')))].filter(n => joint.old.withNumber(n).length > 0);
}
