import { jobAnswerPath, jobAnswersFolder, parseJobAnswers, writeJobAnswer } from '../../format/job-answers.ts';
import { dayOf } from '../../model/day.ts';
import type { Finding } from '../../model/finding.ts';
import type { JobAnswer } from '../../model/job-answer.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';
import { type BesideChange, changeBeside } from '../../store/write-beside.ts';
import { type Ports, person } from '../ports/ports.ts';

/** What the catalog keeps of an agency's answers between two editions. */
export async function keptDecisions(
  catalog: Catalog,
  agency: string,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<{ readonly answers: readonly JobAnswer[]; readonly findings: readonly Finding[] }> {
  const { answers, findings } = parseJobAnswers(await readBeside(catalog, jobAnswersFolder(agency)));
  return { answers: answers.filter(a => a.from === from && a.to === to), findings };
}

/**
 * Keeps answers for an agency, as one commit on main; how many of them the catalog did not have already.
 *
 * @throws CatalogError Changed: somebody answered the same question meanwhile
 */
export async function keepDecisions(
  ports: Ports,
  catalog: Catalog,
  agency: string,
  given: readonly Omit<JobAnswer, 'date'>[],
): Promise<number> {
  const before = await readBeside(catalog, jobAnswersFolder(agency));
  const known = new Map(parseJobAnswers(before).answers.map(a => [jobAnswerPath(agency, a), a]));
  const date = dayOf(ports.now());
  const changes = new Map<string, BesideChange>();
  for (const one of given) {
    const answer = { ...one, date };
    const path = jobAnswerPath(agency, answer);
    const same = known.get(path);
    // Said again on another day it stays under the day on which it was said first.
    if (same && writeJobAnswer({ ...same, date }) === writeJobAnswer(answer)) continue;
    changes.set(path, { path, before: before.get(path) ?? null, after: writeJobAnswer(answer) });
  }
  if (changes.size === 0) return 0;
  await changeBeside(catalog, [...changes.values()], person(ports), `Decisions of ${agency}: ${changes.size} kept`);
  return changes.size;
}
