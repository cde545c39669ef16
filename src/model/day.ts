/** Whether a text is a calendar day as files keep it: year-month-day and no other order, since 03/04 is two dates. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const parsed = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(parsed.getTime()) && parsed.toISOString().startsWith(text);
}

/** The calendar day of a moment in universal time, as files keep it. Elsewhere it may be another day already. */
export function dayOf(moment: Date): string {
  return moment.toISOString().slice(0, 10);
}
