import type { Command } from 'commander';
import { dayOf } from '../model/day.ts';
import { CatalogError } from '../model/errors.ts';
import type { Milestone, Schedule } from '../release/schedule.ts';
import { portsOf, readingCatalog, writingCatalog } from './context.ts';
import { isoDate } from './dates.ts';
import { printJson, printLines, reportFindings } from './print.ts';

interface ScheduleOptions {
  readonly date?: string;
  readonly set?: readonly string[];
  readonly out?: string;
  readonly json?: boolean;
}

export function addSchedule(program: Command): void {
  program
    .command('schedule')
    .description('The days of a draft and of the editions in force: what is late, and what each still needs')
    .argument('[edition]', 'a draft or an edition (default: all drafts, and what nothing has replaced)')
    .option('--date <date>', 'as it stands on this day (default: today)')
    .option(
      '--set <name=date...>',
      'days of a draft: comment-opens, comment-closes, finalised, published, effective, transition-ends, next-review',
    )
    .option('--out <file.ics>', 'as a calendar, to be subscribed to or imported')
    .option('--json', 'as JSON')
    .addHelpText(
      'after',
      `
Examples:
  fishplate schedule 2030 --set comment-opens=2029-01-10 comment-closes=2029-03-10 finalised=2029-05-01
  fishplate schedule 2030
  fishplate schedule --out editions.ics

Exit code 1: done, and something is late or out of order.`,
    )
    .action(async (edition: string | undefined, options: ScheduleOptions, command: Command) => {
      const { calendarOf, readSchedules, setDates } = await import('../commands/releasing/schedule.ts');
      const ports = portsOf(command);
      const { set, out, json } = options;
      const catalog = set === undefined ? await readingCatalog(command) : await writingCatalog(command);
      if (set !== undefined) {
        if (edition === undefined) {
          throw new CatalogError('BadArgument', 'Name the draft whose days are set: fishplate schedule DRAFT --set …');
        }
        await setDates(ports, catalog, edition, set);
      }
      const date = options.date === undefined ? dayOf(ports.now()) : isoDate(options.date);
      const schedules = await readSchedules(ports, catalog, { date, ...(edition === undefined ? {} : { edition }) });
      if (out !== undefined) await ports.files.write(out, await calendarOf(ports, catalog, schedules));
      if (json) printJson(schedules);
      else printLines([...schedules.flatMap(linesOf), ...(out === undefined ? [] : [`Written to ${out}.`])]);
      reportFindings(schedules.flatMap(s => s.findings));
    });
}

function linesOf({ edition, state, milestones }: Schedule): string[] {
  return [
    `${edition}, ${state}`,
    ...milestones.map(m => `  ${m.words.padEnd(16)} ${m.date ?? 'not set   '}  ${said(m)}`.trimEnd()),
  ];
}

function said({ state, needs, inDays = 0 }: Milestone): string {
  const still = needs.length > 0 ? `needs: ${needs.join('; ')}` : '';
  const days = (n: number) => `${n} ${n === 1 ? 'day' : 'days'}`;
  switch (state) {
    case 'done':
      return 'done';
    case 'late':
      return `late by ${days(-inDays)}; ${still}`;
    case 'ahead':
      return [inDays === 0 ? 'today' : `in ${days(inDays)}`, still || 'nothing is needed'].join('; ');
    case 'unset':
      return still;
  }
}
