import type { Schedule } from './schedule.ts';

/**
 * Schedules as a calendar (RFC 5545): an all-day event for each milestone that has a day. The same milestone keeps its
 * name, so that a calendar program that reads the file again moves its event and makes no second one.
 *
 * @param title of the catalog
 * @param stamp when the calendar is written
 */
export function scheduleIcs(title: string, schedules: readonly Schedule[], stamp: Date): string {
  const at = `${stamp.toISOString().replace(/[-:]/g, '').slice(0, 15)}Z`;
  const place = title.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  const events = schedules.flatMap(({ edition, milestones }) =>
    milestones.flatMap(({ name, words, date, needs }) => {
      if (date === undefined) return [];
      return [
        'BEGIN:VEVENT',
        `UID:${encodeURIComponent(edition)}-${name}@${place}`,
        `DTSTAMP:${at}`,
        `DTSTART;VALUE=DATE:${date.replaceAll('-', '')}`,
        `SUMMARY:${escaped(`${edition}: ${words}`)}`,
        ...(needs.length > 0 ? [`DESCRIPTION:${escaped(`Needs: ${needs.join('; ')}.`)}`] : []),
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
      ];
    }),
  );
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Fishplate//Schedule//EN',
    `NAME:${escaped(title)}`,
    ...events,
    'END:VCALENDAR',
  ];
  return lines.map(line => `${folded(line)}\r\n`).join('');
}

/** TEXT of RFC 5545, 3.3.11. */
function escaped(text: string): string {
  return text.replace(/[\\;,]/g, c => `\\${c}`).replace(/\r\n|\r|\n/g, '\\n');
}

/** Lines of at most 75 bytes, a further line begun by a blank (RFC 5545, 3.1); no character is cut in two. */
function folded(line: string): string {
  const pieces: string[] = [];
  let [piece, bytes] = ['', 0];
  for (const char of line) {
    const size = new TextEncoder().encode(char).length;
    if (bytes + size > 75) {
      pieces.push(piece);
      [piece, bytes] = [' ', 1];
    }
    piece += char;
    bytes += size;
  }
  return [...pieces, piece].join('\r\n');
}
