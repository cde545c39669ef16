import type { JobsReport } from '../commands/jobs/carry-jobs.ts';
import { OUTCOMES } from '../model/citation.ts';
import { count, thousands } from './print.ts';

/** What came of the lines of a job table, below the sentence that names it; of a file and of a database the same. */
export function toldOutcomes({
  totals,
  columns,
  cases,
  editions,
  from,
}: Pick<JobsReport, 'totals' | 'columns' | 'cases' | 'editions' | 'from'>): string[] {
  const found = Object.entries(columns).map(([role, c]) => `${role} = ${c?.header}`);
  const open = cases.filter(c => c.outcome === 'choose');
  const cited = Object.entries(editions);
  return [
    `  ${OUTCOMES.map(o => `${o} ${thousands(totals.outcomes[o])}`).join(', ')}; together ${thousands(totals.lines)}${totals.agree ? '' : ' (THE TOTALS DO NOT AGREE)'}.`,
    `  ${count(totals.added, 'line')} added, ${thousands(totals.folded)} folded into another, ${thousands(totals.closed)} closed and left under ${from}.`,
    `  Columns: ${found.join(', ')}.`,
    ...(cited.length > 0
      ? [`  Editions cited: ${cited.map(([name, n]) => `${name} (${count(n, 'line')})`).join(', ')}.`]
      : []),
    ...(open.length > 0
      ? [
          `  To decide: ${count(open.length, 'case')}; the largest: ${open
            .slice(0, 3)
            .map(c => `${c.number}${c.type ? ` ${c.type}` : ''} (${count(c.lines, 'line')})`)
            .join(', ')}.`,
        ]
      : []),
  ];
}
