import type { JobsReport } from '../commands/jobs/carry-jobs.ts';
import { OUTCOMES } from '../model/citation.ts';
import { count, thousands } from './print.ts';

/** What a person has to look at, and a word for it: of one heir there is nothing to choose. */
const TO_DO: Readonly<Record<string, string>> = {
  choose: 'to compare or choose',
  withdrawn: 'withdrawn',
  unknown: 'unknown',
};

/** What came of the lines of a job table, below the sentence that names it; of a file and of a database the same. */
export function toldOutcomes({
  totals,
  columns,
  cases,
  editions,
  from,
}: Pick<JobsReport, 'totals' | 'columns' | 'cases' | 'editions' | 'from'>): string[] {
  const found = Object.entries(columns).map(([role, c]) => `${role} = ${c?.header}`);
  // As many as are asked with --decisions-out: what was withdrawn or is unknown is a question as well.
  const open = cases.filter(c => (c.outcome in TO_DO && c.lines > c.closed) || c.ungoverned > 0);
  const kinds = Object.entries(TO_DO).flatMap(([kind, what]) => {
    const n = open.filter(c => c.outcome === kind).length;
    return n > 0 ? [`${thousands(n)} ${what}`] : [];
  });
  const waiting = open.filter(c => !(c.outcome in TO_DO)).length;
  if (waiting > 0) kinds.push(`${thousands(waiting)} to say which edition governs`);
  const cited = Object.entries(editions);
  return [
    `  ${OUTCOMES.map(o => `${o} ${thousands(totals.outcomes[o])}`).join(', ')}; together ${thousands(totals.lines)}${totals.agree ? '' : ' (THE TOTALS DO NOT AGREE)'}.`,
    `  ${count(totals.added, 'line')} added, ${thousands(totals.folded)} folded into another, ${thousands(totals.closed)} closed and left under ${from}.`,
    ...(totals.ungoverned > 0
      ? [
          `  Of ${count(totals.ungoverned, 'open line')} nobody has said which edition governs (governed_by is ask); they stay as they stand until somebody does.`,
        ]
      : []),
    `  Columns: ${found.join(', ')}.`,
    ...(cited.length > 0
      ? [`  Editions cited: ${cited.map(([name, n]) => `${name} (${count(n, 'line')})`).join(', ')}.`]
      : []),
    ...(open.length > 0
      ? [
          `  To look at: ${count(open.length, 'case')} (${kinds.join(', ')}); the largest: ${open
            .slice(0, 3)
            .map(
              c =>
                `${c.number}${c.type ? ` ${c.type}` : ''} (${count(c.outcome in TO_DO ? c.lines : c.ungoverned, 'line')})`,
            )
            .join(', ')}.`,
        ]
      : []),
  ];
}
