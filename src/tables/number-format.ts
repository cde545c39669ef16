/** The formats that a workbook does not list, as far as they matter here. */
const BUILT_IN: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
};
const BUILT_IN_DATES = [
  [14, 22],
  [27, 36],
  [45, 47],
  [50, 58],
] as const;

/** How numbers of one format are shown. */
export type NumberFormat =
  | { readonly kind: 'date' }
  | { readonly kind: 'plain' }
  | { readonly kind: 'decimals'; readonly decimals: number; readonly percent: boolean };

/** Longer formats no spreadsheet writes (Excel's limit, from memory); reading one could take minutes. */
const LONGEST = 255;

/** Reads a format by its number, and its code where the workbook lists one. */
export function numberFormat(id: number, code: string | undefined): NumberFormat {
  if (code === undefined && BUILT_IN_DATES.some(([from, to]) => id >= from && id <= to)) return { kind: 'date' };
  if ((code?.length ?? 0) > LONGEST) return { kind: 'plain' };
  // Of positive; negative; zero; text. What stands in quotes, brackets or behind a backslash is shown as it is.
  const bare = (code ?? BUILT_IN[id] ?? '').replace(/"[^"]*"|\\.|_.|\*.|\[[^\]]*\]/g, '').split(';')[0]!;
  if (/[ymdhs]/i.test(bare.replace(/general|standard/i, ''))) return { kind: 'date' };
  const digits = /^\s*[#0,]*(?:\.(0+))?\s*(%?)\s*$/.exec(bare);
  if (!digits || !/0/.test(bare)) return { kind: 'plain' };
  return { kind: 'decimals', decimals: digits[1]?.length ?? 0, percent: digits[2] === '%' };
}

/** A number as its cell shows it, without separators of thousands: 3.1 formatted 0.00 is 3.10. */
export function shownNumber(stored: string, format: NumberFormat): string {
  const value = Number(stored);
  if (!Number.isFinite(value)) return stored;
  if (format.kind !== 'decimals') return String(value);
  const shown = (format.percent ? value * 100 : value).toFixed(Math.min(format.decimals, 20));
  return format.percent ? `${shown}%` : shown;
}

/**
 * The moment that a day number means: `2024-05-04`, `2024-05-04T13:30`, or `13:30` for a time alone.
 *
 * @param since1904 whether the workbook counts from 1904, as old ones of one system do
 */
export function shownDate(stored: string, since1904: boolean): string {
  const serial = Number(stored);
  if (!Number.isFinite(serial)) return stored;
  // The first two months of 1900 are a day off, since the format counts a 29 February that there never was.
  const days = since1904 ? serial + 1462 : serial < 60 ? serial + 1 : serial;
  const minutes = Math.round(days * 24 * 60);
  const moment = new Date(Date.UTC(1899, 11, 30) + minutes * 60_000);
  if (Number.isNaN(moment.getTime())) return stored;
  const iso = moment.toISOString();
  if (serial > 0 && serial < 1) return iso.slice(11, 16);
  return iso.slice(11, 16) === '00:00' ? iso.slice(0, 10) : iso.slice(0, 16);
}
