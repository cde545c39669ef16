import type { Adoption, JobPolicy } from './job-policy.ts';

/** Which edition a line of a job follows, and the one rule that says so. */
export interface Governing {
  /** Absent where the policy leaves it to a person. */
  readonly edition: string | undefined;
  readonly rule: 'closed' | 'early' | 'date' | 'transition' | 'undated' | 'unreadable-day' | 'before-all' | 'no-rule';
  /** One sentence. */
  readonly why: string;
}

/** What a line says that a policy asks for. */
export interface LineFacts {
  readonly job: string;
  /** The word for the way in which it is closed; absent while it is open. */
  readonly closed?: string;
  /** The edition that it cites. */
  readonly readIn: string;
  /** Absent where every cell that could say it is empty. */
  readonly day?: DecidingDay;
}

/** The day that decides, or what stands in its place and is no day, with the header of its column. */
export type DecidingDay = { readonly header: string } & ({ readonly day: string } | { readonly unreadable: string });

/**
 * Applies a policy to one line. The rules in order: finished work stays where it was done; a cell that should say the day
 * and does not is for a person, whatever the policy says of lines without one; named jobs follow an edition from its early
 * date on, through its transition; then the line's day against the days of adoption, with transitions; what no rule
 * reaches is left to a person.
 */
export function governingEdition(policy: JobPolicy, line: LineFacts): Governing {
  const { agency, adoptions } = policy;
  if (line.closed !== undefined) {
    return {
      edition: line.readIn,
      rule: 'closed',
      why: `The line is ${line.closed} under ${line.readIn} and stays there.`,
    };
  }
  if (!line.day) {
    const newest = adoptions.at(-1)!.edition;
    const edition = { older: line.readIn, newer: newest, ask: undefined }[policy.undated];
    const then = edition === undefined ? 'a person decides' : `such lines follow ${edition}`;
    const why = `The line has none of the dates by which ${agency} decides; ${then}.`;
    return { edition, rule: 'undated', why };
  }
  if ('unreadable' in line.day) {
    const { unreadable, header } = line.day;
    const why = `${header} says “${unreadable}”, which is no day that can be read; a person decides.`;
    return { edition: undefined, rule: 'unreadable-day', why };
  }
  const { day, header } = line.day;
  const at = adoptions.findLastIndex(a => a.from <= day);
  const [now, next] = [adoptions[at], adoptions[at + 1]] as (Adoption | undefined)[];
  const dated = `${header} ${day}`;
  const before = adoptions[at - 1];
  const inTransition = now?.transitionEnds !== undefined && day < now.transitionEnds && before !== undefined;
  const early = [next, inTransition ? now : undefined].find(a => a?.early !== undefined && a.early <= day);
  if (early && policy.earlyJobs.includes(line.job)) {
    const why = `${agency} lets job ${line.job} follow ${early.edition} early, from ${early.early} on; ${dated}.`;
    return { edition: early.edition, rule: 'early', why };
  }
  if (!now) {
    const why = `${dated} is before ${adoptions[0]!.from}, when ${agency} first adopted an edition, ${adoptions[0]!.edition}.`;
    return { edition: undefined, rule: 'before-all', why };
  }
  if (inTransition) {
    const edition = { older: before!.edition, newer: now.edition, ask: undefined }[policy.inTransition];
    const then = edition === undefined ? 'a person decides' : `the ${policy.inTransition} one is followed until then`;
    const why = `${dated} is in the transition from ${before!.edition} to ${now.edition}, which ends on ${now.transitionEnds}; ${then}.`;
    return { edition, rule: 'transition', why };
  }
  const until = next ? ` and before ${next.from}, when ${next.edition} follows` : '';
  const why = `${dated} is on or after ${now.from}, when ${agency} adopted ${now.edition}${until}.`;
  return { edition: now.edition, rule: 'date', why };
}
