import { CatalogError } from '../../model/errors.ts';

/** When an agency took up an edition. Dates are days, 2024-05-03. */
export interface Adoption {
  readonly edition: string;
  readonly from: string;
  /** Until this day, exclusive, jobs may still follow the edition before. */
  readonly transitionEnds?: string;
  /** From this day on, jobs that are named in `earlyJobs` may follow it already. */
  readonly early?: string;
}

export const SETTLED = ['ask', 'carry'] as const;

/** What becomes of a line without asking a person each time; whatever is not named is asked. */
export const FATES = [
  'stricter',
  'relaxed',
  'mixed',
  'unclear',
  'several-heirs',
  'part-withdrawn',
  'inferred',
] as const;
export type PolicyFate = (typeof FATES)[number];

/** Which edition governs the jobs of one agency, and what is settled without asking. Kept as data beside the catalog. */
export interface JobPolicy {
  readonly agency: string;
  /** By day, oldest first. */
  readonly adoptions: readonly Adoption[];
  /** The dates that decide, as headers of the job table, in order: the first one filled in a line counts. */
  readonly decidedBy: readonly string[];
  /** Of a job dated in the transition of an edition. */
  readonly inTransition: 'older' | 'newer' | 'ask';
  /** Of a job without any of the dates. */
  readonly undated: 'older' | 'newer' | 'ask';
  readonly earlyJobs: readonly string[];
  readonly fates: Readonly<Partial<Record<PolicyFate, 'ask' | 'carry'>>>;
  /** Installation types by names of earlier days: old name to the name or code of now. */
  readonly types: Readonly<Record<string, string>>;
  /** IANA name; days of moments with a time zone are told there. */
  readonly timeZone?: string;
}

const DAY = /^\d{4}-\d{2}-\d{2}$/;

/**
 * Reads a policy. Every mistake is said at once: a policy with one of its rules dropped would govern jobs wrongly.
 *
 * @throws CatalogError BadArgument
 */
export function parsePolicy(text: string, file: string): JobPolicy {
  const wrong: string[] = [];
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw refused(file, ['it is not valid JSON']);
  }
  if (!isObject(value)) throw refused(file, ['it is not one JSON object']);
  const known = [
    'agency',
    'adoptions',
    'decidedBy',
    'inTransition',
    'undated',
    'earlyJobs',
    'fates',
    'types',
    'timeZone',
  ];
  for (const key of Object.keys(value))
    if (!known.includes(key)) wrong.push(`it has a field ${key} that means nothing here`);
  const { agency, timeZone } = value;
  if (typeof agency !== 'string' || agency.trim() === '') wrong.push('agency is missing');
  const adoptions = Array.isArray(value.adoptions) ? value.adoptions : [];
  if (adoptions.length === 0) wrong.push('adoptions lists no edition');
  for (const a of adoptions) {
    if (!isObject(a) || typeof a.edition !== 'string' || !isDay(a.from)) {
      wrong.push('an adoption lacks its edition, or its day as 2024-05-03');
      continue;
    }
    for (const key of ['transitionEnds', 'early'] as const) {
      if (a[key] !== undefined && !isDay(a[key])) wrong.push(`${key} of ${a.edition} is no day as 2024-05-03`);
    }
  }
  const words = (key: string, allowed: readonly string[]) => {
    if (value[key] !== undefined && !allowed.includes(String(value[key])))
      wrong.push(`${key} is none of ${allowed.join(', ')}`);
  };
  words('inTransition', ['older', 'newer', 'ask']);
  words('undated', ['older', 'newer', 'ask']);
  const list = (key: string) => {
    const given = value[key] ?? [];
    if (Array.isArray(given) && given.every(x => typeof x === 'string')) return given as string[];
    wrong.push(`${key} is no list of words`);
    return [];
  };
  const map = (key: string) => {
    const given = value[key] ?? {};
    if (isObject(given) && Object.values(given).every(x => typeof x === 'string'))
      return given as Record<string, string>;
    wrong.push(`${key} does not say one word for each name`);
    return {};
  };
  const [decidedBy, earlyJobs, fates, types] = [list('decidedBy'), list('earlyJobs'), map('fates'), map('types')];
  for (const [fate, what] of Object.entries(fates)) {
    if (!FATES.includes(fate as PolicyFate)) wrong.push(`fates names ${fate}, which is none of ${FATES.join(', ')}`);
    if (!SETTLED.includes(what as 'ask')) wrong.push(`fates says ${what} of ${fate}; say ask or carry`);
  }
  if (timeZone !== undefined && !isZone(timeZone)) wrong.push(`timeZone ${String(timeZone)} is no IANA name`);
  if (wrong.length > 0) throw refused(file, wrong);
  return {
    agency: agency as string,
    adoptions: (adoptions as Adoption[]).toSorted((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0)),
    decidedBy,
    inTransition: (value.inTransition as JobPolicy['inTransition']) ?? 'ask',
    undated: (value.undated as JobPolicy['undated']) ?? 'ask',
    earlyJobs,
    fates: fates as JobPolicy['fates'],
    types,
    ...(timeZone === undefined ? {} : { timeZone: timeZone as string }),
  };
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isDay(value: unknown): value is string {
  return typeof value === 'string' && DAY.test(value) && !Number.isNaN(Date.parse(value));
}

function isZone(value: unknown): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: String(value) });
    return true;
  } catch {
    return false;
  }
}

function refused(file: string, wrong: readonly string[]): CatalogError {
  const more = wrong.length > 1 ? `; and ${wrong.length - 1} more` : '';
  return new CatalogError(
    'BadArgument',
    `The policy ${file} cannot be used: ${wrong[0]}${more}; mend it and run again.`,
    {
      file,
      wrong,
    },
  );
}
