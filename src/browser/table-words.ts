import type { JobsReport } from '../commands/jobs/carry-jobs.ts';
import { capital, counted, inWords } from '../model/said-words.ts';

/** What was found in a table, in a sentence or two. */
export function foundInTable(name: string, { totals, columns, editions, from }: JobsReport): string {
  const stands = Object.entries(columns).map(([role, c]) => `the ${role} in column ${c.header}`);
  const cited = Object.entries(editions).map(([edition, n]) => `${edition} (${counted(n, 'line')})`);
  const edition = cited.length > 0 ? inWords(cited) : from;
  return `${name} is a table of ${counted(totals.lines, 'line')}: ${inWords(stands)}. It is read in edition ${edition}.`;
}

/** What becomes of its lines, counted. */
export function saidOfTable({ totals, to }: JobsReport): string {
  const { kept, carried, choose, withdrawn, unknown } = totals.outcomes;
  const told = [
    [kept, 'stay as they are', 'stays as it is'],
    [carried, 'get a new number', 'gets a new number'],
    [choose, 'wait for a decision', 'waits for a decision'],
    [withdrawn, 'have no successor', 'has no successor'],
    [unknown, 'name no one item', 'names no one item'],
  ] as const;
  const parts = told
    .filter(([n]) => n > 0)
    .map(([n, many, one]) => `${n.toLocaleString('en')} ${n === 1 ? one : many}`);
  const more = [
    ...(totals.closed > 0
      ? [`${totals.closed.toLocaleString('en')} of them ${totals.closed === 1 ? 'is' : 'are'} finished and left alone`]
      : []),
    ...(totals.ungoverned > 0
      ? [
          `of ${totals.ungoverned.toLocaleString('en')} a person has to say first which edition governs ${totals.ungoverned === 1 ? 'it' : 'them'}`,
        ]
      : []),
    ...(totals.folded > 0
      ? [`${counted(totals.folded, 'line does', 'lines do')} the same work as an earlier one`]
      : []),
    ...(totals.added > 0
      ? [`${counted(totals.added, 'line is', 'lines are')} added that jobs have to meet for the first time`]
      : []),
  ];
  const sum = `Of ${counted(totals.lines, 'line')} carried to ${to}, ${inWords(parts)}.`;
  const agree = totals.agree ? '' : ' THE TOTALS DO NOT AGREE.';
  return `${sum}${more.length > 0 ? ` ${capital(inWords(more))}.` : ''}${agree}`;
}
