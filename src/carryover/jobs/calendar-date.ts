/** Which of the three figures of a date is the day: `03/04/2024` alone cannot tell. */
export type DateOrder = 'dmy' | 'mdy' | 'ymd';

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const FIGURES = /^(\d{1,4})\s*[-/.]\s*(\d{1,2})\s*[-/.]\s*(\d{1,4})\.?(?:[T ,]\s*(.+))?$/;
const DAY_MONTH = /^(\d{1,2})(?:st|nd|rd|th|\.)?[\s-]+([a-z]{3,9})\.?[\s,-]+(\d{2,4})$/i;
const MONTH_DAY = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{2,4})$/i;
const TIME = /^\d{1,2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:\s*[ap]m)?\s*(Z|[+-]\d{2}:?\d{2})?$/i;

/**
 * The orders in which a cell can be read as a date; empty where it is none. `2024-05-03` and `3 May 2024` have one
 * meaning in every order and so give all three.
 */
export function possibleOrders(cell: string): readonly DateOrder[] {
  return (['dmy', 'mdy', 'ymd'] as const).filter(order => readDate(cell, order) !== undefined);
}

/**
 * The calendar day that a cell names, as 2024-05-03. A time with a zone is a moment, and the day of a moment depends on
 * where one stands: it is told in `zone` where one is given, else as it is written.
 *
 * @param zone an IANA name, `Europe/Madrid`
 */
export function readDate(cell: string, order: DateOrder, zone?: string): string | undefined {
  const text = cell.trim();
  const figures = FIGURES.exec(text);
  if (figures) {
    const [, a, b, c, rest] = figures as unknown as [string, string, string, string, string | undefined];
    const time = rest === undefined ? null : TIME.exec(rest.trim());
    if (rest !== undefined && !time) return undefined;
    const day =
      a.length >= 3 ? dayOf(a, b, c) : order === 'ymd' && c.length <= 2 ? dayOf(a, b, c) : yearLast(a, b, c, order);
    return day !== undefined && time?.[1] && zone ? dayThere(`${day}T${isoTime(rest!)}`, zone) : day;
  }
  const [dayFirst, monthFirst] = [DAY_MONTH.exec(text), MONTH_DAY.exec(text)];
  if (dayFirst) return dayOf(dayFirst[3]!, monthNumber(dayFirst[2]!), dayFirst[1]!);
  return monthFirst ? dayOf(monthFirst[3]!, monthNumber(monthFirst[1]!), monthFirst[2]!) : undefined;
}

function yearLast(a: string, b: string, year: string, order: DateOrder): string | undefined {
  if (order === 'ymd') return undefined;
  return order === 'dmy' ? dayOf(year, b, a) : dayOf(year, a, b);
}

function dayOf(year: string, month: string, day: string): string | undefined {
  if ((year.length !== 2 && year.length !== 4) || day.length > 2) return undefined;
  const full = year.length === 2 ? 2000 + Number(year) : Number(year);
  const [m, d] = [Number(month), Number(day)];
  if (m < 1 || m > 12 || d < 1 || d > new Date(Date.UTC(full, m, 0)).getUTCDate()) return undefined;
  return `${full}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`;
}

function monthNumber(word: string): string {
  return String(MONTHS.indexOf(word.slice(0, 3).toLowerCase()) + 1);
}

function isoTime(time: string): string {
  const [, hours, rest, half, zone] =
    /^(\d{1,2})(:\d{2}(?::\d{2})?)(?:\.\d+)?\s*([ap]m)?\s*(.*)$/i.exec(time.trim()) ?? [];
  const hour = (Number(hours) % (half ? 12 : 24)) + (half?.toLowerCase() === 'pm' ? 12 : 0);
  return `${String(hour).padStart(2, '0')}${rest}${zone?.toUpperCase().replace(/^([+-]\d{2})(\d{2})$/, '$1:$2')}`;
}

function dayThere(moment: string, zone: string): string | undefined {
  const at = new Date(moment);
  if (Number.isNaN(at.getTime())) return undefined;
  // The Swedish way of writing a date is the international one.
  return new Intl.DateTimeFormat('sv-SE', { timeZone: zone }).format(at);
}

/** Collects what a whole column says of the order of its dates. */
export class DateOrderEvidence {
  readonly #only = new Map<DateOrder, { cell: string; record: number }>();
  #doubtful: { cell: string; record: number } | undefined;

  add(cell: string, record: number): void {
    const orders = possibleOrders(cell);
    if (orders.length === 1) {
      if (!this.#only.has(orders[0]!)) this.#only.set(orders[0]!, { cell: cell.trim(), record });
    } else if (new Set(orders.map(o => readDate(cell, o))).size > 1) this.#doubtful ??= { cell: cell.trim(), record };
  }

  /**
   * The order of the column with the cell that proves it; `doubt` says in a sentence why it cannot be told. A column
   * whose dates mean the same in every order needs no proof.
   */
  order(): { readonly order: DateOrder; readonly proof?: string } | { readonly doubt: string } {
    const proven = [...this.#only];
    if (proven.length > 1) {
      const [a, b] = proven as [(typeof proven)[0], (typeof proven)[0]];
      return {
        doubt: `${a[1].cell} in record ${a[1].record} can only be ${WORDS[a[0]]}, ${b[1].cell} in record ${b[1].record} only ${WORDS[b[0]]}`,
      };
    }
    if (proven[0]) return { order: proven[0][0], proof: `${proven[0][1].cell} in record ${proven[0][1].record}` };
    // 05/05/2024 has no year in front; whatever can be read and is in no doubt can be read so.
    if (!this.#doubtful) return { order: 'dmy' };
    const { cell, record } = this.#doubtful;
    return { doubt: `nothing in it tells whether ${cell} in record ${record} begins with the day or the month` };
  }
}

const WORDS: Record<DateOrder, string> = {
  dmy: 'day, month, year',
  mdy: 'month, day, year',
  ymd: 'year, month, day',
};
