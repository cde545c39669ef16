import type { IntakeLine } from '../../release/intake.ts';
import { writeCsv } from '../../tables/write-csv.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';
import type { CountReport } from './intake-count.ts';

const MOST = 15;

/** The counts as lines for a terminal: causes first, then the items with the most reports. */
export function tellCounts({ edition, reports, lines, causes }: CountReport): string[] {
  const standing = lines.filter(l => l.endedAfter === undefined);
  const ended = lines.filter(l => l.endedAfter !== undefined);
  const told = ({ number, title, id, reports: n, causes: own, shared }: IntakeLine) =>
    `${String(n).padStart(3)}  ${[number || id, title].filter(Boolean).join(' ')}: ${inWords(own)}${shared > 0 ? ` (${shared} shared with other items)` : ''}`;
  return [
    `${reports === 1 ? '1 report' : `${reports} reports`} counted under ${edition}${causes.length > 0 ? `: ${inWords(causes)}` : ''}.`,
    ...standing.slice(0, MOST).map(told),
    ...(standing.length > MOST ? [`… and ${standing.length - MOST} more items; all of them with --out or --json`] : []),
    ...(ended.length > 0 ? [`Of items that ${edition} does not have:`] : []),
    ...ended
      .slice(0, MOST)
      .map(l => `${told({ ...l, number: `${l.endedAfter} ${l.number}` })}${l.why ? `; withdrawn: ${l.why}` : ''}`),
    ...(ended.length > MOST ? [`… and ${ended.length - MOST} more`] : []),
  ];
}

/** A row an item, a column a cause. */
export function countTable({ lines, causes, edition }: CountReport, file: string): string | Uint8Array {
  const names = causes.map(c => c.cause);
  const header = ['edition', 'number', 'title', 'reports', 'shared', ...names, 'ended'];
  const rows = lines.map(l => [
    l.endedAfter ?? edition,
    l.number,
    l.title,
    l.reports,
    l.shared,
    ...names.map(name => l.causes.find(c => c.cause === name)?.reports ?? 0),
    l.endedAfter === undefined ? '' : (l.why ?? 'no reason on record'),
  ]);
  if (!file.endsWith('.xlsx')) return writeCsv([header, ...rows.map(r => r.map(String))]);
  const bars = { title: 'Reports', labels: 1, values: 3, rows: Math.min(rows.length, 20) };
  return writeXlsx([{ name: `Intake ${edition}`, header, rows, ...(rows.length > 0 ? { bars } : {}) }]);
}

function inWords(causes: IntakeLine['causes']): string {
  return causes.map(c => `${c.cause} ${c.reports}`).join(', ');
}
