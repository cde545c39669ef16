import type { Command } from 'commander';
import { keepDecisions } from '../commands/carrying/kept-decisions.ts';
import type { JobAnswer } from '../model/job-answer.ts';
import { portsOf, writingCatalog } from './context.ts';
import { count, printLines } from './print.ts';

interface KeepOptions {
  readonly agency?: string;
  readonly keepDecisions?: boolean;
  readonly dryRun?: boolean;
  readonly json?: boolean;
}

/** Keeps the answers that a run used, where that is asked for, and says how many were new. */
export async function keepAnswered(
  command: Command,
  { agency, keepDecisions: keep, dryRun, json }: KeepOptions,
  answered: readonly Omit<JobAnswer, 'date'>[],
): Promise<void> {
  if (!keep || agency === undefined) return;
  const added = dryRun ? 0 : await keepDecisions(portsOf(command), await writingCatalog(command), agency, answered);
  const why = dryRun ? ': a dry run writes nothing' : '';
  if (!json) printLines([`${count(added, 'decision')} kept for ${agency}${why}.`]);
}
